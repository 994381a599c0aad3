import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Placed, placeAll, type Receiver } from "../../src/receive/give-codes.ts";
import { withMark } from "../../src/receive/marks.ts";
import type { SettledClaim } from "../../src/receive/settled.ts";
import { findCodes, idKey } from "../../src/terms/ids.ts";

const claim = (stem: string, more: Partial<SettledClaim> = {}): SettledClaim => ({
  ...{
    from: `${stem}.zip`,
    stem,
    set: "autumn",
    text: "---\n---\n",
    pictures: [],
    sum: `sum of ${stem}`,
  },
  ...more,
});

const set = (id: string, name: string, codes?: string) => [
  idKey(id),
  {
    ...{ id, file: `tiles/${id}/set.md` },
    record: { name, codes: codes && [findCodes(codes)], control: "TB-102" },
  },
];

function receiver(
  tiles: Readonly<Record<string, string>> = {},
  more: Partial<Receiver> = {},
): Receiver {
  const ids = Object.keys(tiles);
  const files = ids.map((id) => ({ kind: "tile", id, file: `tiles/autumn/${id}.md` }));
  return {
    archive: {
      sets: new Map([
        set("autumn", "Autumn class", "TB-101..TB-105"),
        set("spring", "Spring class", "TB-201..TB-202"),
        set("loose", "Loose ends"),
      ] as unknown as []),
      tiles: new Map(ids.map((id) => [idKey(id), { id, record: {} }]) as []),
    } as unknown as Receiver["archive"],
    recordFiles: files,
    texts: new Map(files.map(({ id, file }) => [file, tiles[id] ?? ""])),
    set: null,
    isOther: () => false,
    ...more,
  };
}

/** What became of each, in short. */
const place = (claims: readonly SettledClaim[], to = receiver()) => placeAll(claims, to).map(short);

function short(placed: Placed) {
  if (placed.kind === "new") return [placed.code, placed.set, ...placed.why];
  if (placed.kind === "known") return ["known", placed.tile];
  return placed.kind === "same" ? ["same", placed.from] : ["refused", placed.refusal.why];
}

describe("a tile that is handed in", () => {
  test("keeps a code that is free, and one without gets the next free one behind all that are claimed", () => {
    const found = place([claim("no-code-aaaa1111"), claim("TB-101"), claim("no-code-bbbb2222")]);
    // TB-102 is the control tile's.
    expect(found).toEqual([
      ["TB-103", "autumn"],
      ["TB-101", "autumn"],
      ["TB-104", "autumn"],
    ]);
  });

  test("that claims the code of one before it gets the next free one, and that is told", () => {
    const found = place([claim("TB-101"), claim("tb-101", { from: "ben.zip", sum: "other" })]);
    expect(found[1]).toEqual([
      ...["TB-103", "autumn", "It came as tb-101, and so did TB-101.zip, which keeps it."],
    ]);
  });

  test("is taken once where it is the same to the letter", () => {
    const again = claim("TB-101", { from: "again.zip" });
    expect(place([claim("TB-101"), again])[1]).toEqual(["same", "TB-101.zip"]);
  });

  test("without a code is the same tile in another hand-in, and so waits its turn", () => {
    const later = claim("no-code-aaaa1111", { from: "later.zip", sum: "other" });
    expect(place([claim("no-code-aaaa1111"), later])[1]).toEqual([
      "refused",
      "It is the same tile as in no-code-aaaa1111.zip, handed in once more with something else. Take that one in first, and then receive this again: what it adds is shown then.",
    ]);
  });

  test("is known again by its code, and by what its record says where it was given another", () => {
    const here = receiver({
      "TB-101": "---\nlayers: []\n---\n",
      "TB-104": withMark("---\nlayers: []\n---\n", "no-code-aaaa1111"),
      "TB-105": withMark("---\r\nlayers: []\r\n---\r\n", "TB-101 (sum of other)"),
    });
    const other = claim("TB-101", { sum: "sum of neither" });
    expect(place([claim("TB-101"), claim("no-code-AAAA1111"), other], here)).toEqual([
      ["known", "TB-101"],
      ["known", "TB-104"],
      ["known", "TB-101"],
    ]);
    expect(place([{ ...other, sum: "sum of other" }], here)).toEqual([["known", "TB-105"]]);
  });

  test("gets another code where it is plainly not the tile that has it", () => {
    const here = receiver({ "TB-101": "" }, { isOther: () => true });
    expect(place([claim("TB-101")], here)).toEqual([
      ["TB-103", "autumn", "It came as TB-101: it is on tiles/autumn/TB-101.md."],
    ]);
  });

  test("goes into the set that it names by its id or its name, else that of its code, else the one that was said", () => {
    const said = receiver({}, { set: "loose" });
    const found = place(
      [
        claim("A-1", { set: "Spring CLASS" }),
        claim("TB-201", { set: null }),
        claim("A-2", { set: null }),
        claim("A-3", { set: "winter" }),
      ],
      said,
    );
    expect(found).toEqual([
      ["A-1", "spring"],
      ["TB-201", "spring"],
      ["A-2", "loose"],
      ["A-3", "loose", "It was handed in for a set “winter”, which is not in the archive."],
    ]);
    expect(place([claim("A-2", { set: null })])).toEqual([["A-2", null]]);
  });

  test.each([
    [
      claim("A-3", { set: "winter" }),
      "It was handed in for a set “winter”, which is not in the archive. Make that set first, or say with --set which one it is for.",
    ],
    [
      claim("no-code-aaaa1111", { set: null }),
      "It has no code. Say with --set which set it is for: its block has the codes.",
    ],
    [
      claim("no-code-aaaa1111", { set: "loose" }),
      "It has no code. The set loose reserves no codes: write some into tiles/loose/set.md, as in “codes: TB-101..TB-140”, or give the tile one.",
    ],
    [
      claim("con"),
      "“con” cannot be a tile's code: Windows cannot store a file named “con”. Give it another one.",
    ],
    [
      claim("TB-201", { set: "loose" }),
      "It came as TB-201: it is kept for the set spring. The set loose reserves no codes: write some into tiles/loose/set.md, as in “codes: TB-101..TB-140”, or give the tile one.",
    ],
  ])("is refused, and told what to do: %#", (one, why) => {
    expect(place([one])).toEqual([["refused", why]]);
  });

  test("is refused where its block has no code left", () => {
    const full = receiver({ "TB-201": "", "TB-202": "" });
    expect(place([claim("no-code-aaaa1111", { set: "spring" })], full)).toEqual([
      [
        "refused",
        "It has no code. The set spring has no free code left: reserve more in tiles/spring/set.md.",
      ],
    ]);
  });
});

test("No two tiles get one code, none gets one that is taken, and every hand-in is told of, whatever comes", () => {
  const stem = fc.oneof(
    fc.integer({ min: 100, max: 106 }).map((number) => `TB-${number}`),
    fc.integer({ min: 0, max: 3 }).map((number) => `no-code-aaaa000${number}`),
  );
  const claims = fc.array(
    fc.tuple(stem, fc.constantFrom("autumn", "spring", null), fc.constantFrom("one", "two")),
  );
  const here = fc.subarray(["TB-100", "TB-103", "TB-105", "TB-201"]);
  fc.assert(
    fc.property(claims, here, fc.boolean(), (all, tiles, isOther) => {
      const to = receiver(Object.fromEntries(tiles.map((id) => [id, ""])), {
        isOther: () => isOther,
      });
      const given = all.map(([code, id, sum]) => claim(code, { set: id, sum }));
      const placed = placeAll(given, to);
      expect(placed.length).toBe(all.length);
      const codes = placed.flatMap((each) => (each.kind === "new" ? idKey(each.code) : []));
      expect(new Set(codes).size).toBe(codes.length);
      for (const id of tiles) expect(codes).not.toContain(idKey(id));
    }),
  );
});
