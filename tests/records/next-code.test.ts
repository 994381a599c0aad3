import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { freeCodes, whyTaken } from "../../src/records/next-code.ts";
import type { SetRecord } from "../../src/records/set.ts";
import { findCodes, idKey } from "../../src/terms/ids.ts";

type Given = Parameters<typeof whyTaken>[0];

const set = (id: string, codes: string) => [
  idKey(id),
  {
    ...{ id, file: `tiles/${id}/set.md`, notes: "" },
    record: { name: id, codes: [findCodes(codes) ?? []] } as unknown as SetRecord,
  },
];

const tile = (id: string, ...formerly: readonly string[]) => [
  idKey(id),
  { id, record: { formerly } },
];

const file = (id: string) => ({ kind: "tile", id, file: `tiles/${id}.md` });

function archiveOf(sets: readonly unknown[], tiles: readonly unknown[] = []): Given {
  return { sets: new Map(sets as []), tiles: new Map(tiles as []) } as unknown as Given;
}

const archive = archiveOf(
  [set("autumn", "TB-099..TB-103"), set("spring", "TB-102..TB-108")],
  [tile("TB-100", "TB-099")],
);
const files = [file("tb-100"), file("TB-104"), { ...file("TB-101"), kind: "glaze" }];

describe("a code is taken", () => {
  test.each([
    [
      "by the tile that has it, read or not, however it is spelt",
      "Tb-104",
      "it is on tiles/TB-104.md",
    ],
    ["by the tile that had it", "TB-099", "it was on TB-100 before, and leads on to it"],
    ["by the set that reserved it first", "TB-102", "it is kept for the set autumn"],
  ])("%s", (_, code, why) => {
    expect(whyTaken(archive, files, "spring")(code)).toBe(why);
  });

  test("by nobody where its own set keeps it, no set does, or something else than a tile has it", () => {
    const taken = whyTaken(archive, files, "Autumn");
    expect(["TB-102", "ZZ-1", "TB-101"].map(taken)).toEqual([undefined, undefined, undefined]);
    expect(whyTaken(archive, files, null)("TB-105")).toBe("it is kept for the set spring");
  });
});

describe("the codes of a block that new tiles can have", () => {
  test("are those that are free, in their order, and never the control tile's", () => {
    const record = { codes: [["TB-108"], findCodes("TB-102..TB-108") ?? []], control: "tb-106" };
    expect(freeCodes(record, whyTaken(archive, files, "spring"))).toEqual([
      ...["TB-108", "TB-105", "TB-107"],
    ]);
  });

  test("are none where the set keeps none", () => {
    expect(freeCodes({}, () => undefined)).toEqual([]);
  });

  test("leave out a code that no file can be called", () => {
    expect(freeCodes({ codes: [["con", "in dex", "TB-1"]] }, () => undefined)).toEqual(["TB-1"]);
  });

  test("are each reserved, each there once and not one taken, whatever is taken", () => {
    const code = fc.integer({ min: 1, max: 30 }).map((number) => `TB-${number}`);
    fc.assert(
      fc.property(fc.array(fc.array(code)), fc.array(code), (codes, tiles) => {
        const free = freeCodes({ codes }, whyTaken(archiveOf([]), tiles.map(file), "any"));
        const expected = new Set(codes.flat().filter((each) => !tiles.includes(each)));
        expect(free).toEqual([...expected]);
      }),
    );
  });
});
