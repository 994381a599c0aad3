/** The page of unloading: what it shows of a load, and what it writes of each tile. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import type { Written } from "../../src/desk/types.ts";
import type { OutcomeRequest, OutcomeWritten, UnloadView } from "../../src/desk/unload/types.ts";
import { sumsOf } from "../commands/site-files.ts";
import { photograph } from "../support/archive-folder.ts";
import { type OpenedDesk, openSmallDesk } from "./desk-opened.ts";

const tile = (...more: readonly string[]) =>
  [
    "---",
    "clay: buff # the sack",
    "layers: [{fired: bisque}, {glaze: soot}]",
    ...more,
    "---",
    "Notes.",
    "",
  ].join("\n");

const more = {
  "tiles/evening/W-1.md": tile(),
  "tiles/evening/W-2.md": tile("result: {surface: dry}"),
  "tiles/evening/W-3.md": tile("fate: broken"),
  "tiles/firings/g-2.md":
    "---\non: 2026-11-20\nkind: glaze\ntiles: {low: W-3, top: [W-1, W-2]}\n---\n",
  "tiles/firings/b-1.md": "---\non: 2026-11-01\nkind: bisque\ntiles: {top: EV-3}\n---\n",
  "tiles/firings/g-9.md": "---\nkind: glaze\ntiles: {top: EV-3}\n---\n",
};

const open = {
  surface: [],
  effects: [],
  faults: [],
  run: null,
  again: null,
  nextTime: null,
  fate: null,
};

async function viewOf({ ask }: OpenedDesk, id = "g-2"): Promise<UnloadView> {
  const { text } = await ask("GET", `/desk/unload/${id}`);
  const data = /data-view="([^"]*)"/u.exec(text)?.[1] ?? "";
  return JSON.parse(
    data.replaceAll("&quot;", '"').replaceAll("&amp;", "&").replaceAll("&lt;", "<"),
  );
}

async function post<T>({ ask }: OpenedDesk, action: string, body: unknown): Promise<T> {
  const { status, text } = await ask("POST", `/desk/unload/${action}`, { body });
  expect({ status, text }).toMatchObject({ status: 200 });
  return JSON.parse(text) as T;
}

async function write(
  desk: OpenedDesk,
  code: string,
  outcome: Partial<OutcomeRequest["outcome"]>,
  { firing = "g-2", said }: { readonly firing?: string; readonly said?: string } = {},
): Promise<OutcomeWritten> {
  const { tiles } = await viewOf(desk, firing);
  const seen = tiles.find((each) => each.code === code)?.seen ?? "";
  return post(desk, "outcome", { firing, code, seen, said, outcome: { ...open, ...outcome } });
}

const recordOf = ({ archive }: OpenedDesk, code: string) =>
  readFile(join(archive, `tiles/evening/${code}.md`), "utf8");

test("the load is shown in its order, with what each tile lacks", async () => {
  const desk = await openSmallDesk(more);
  const { tiles, on, isBisque } = await viewOf(desk);
  expect({ on, isBisque }).toEqual({ on: "2026-11-20", isBisque: false });
  expect(
    tiles.map(({ code, shelf, words, missing }) => [
      code,
      shelf,
      words,
      missing.result,
      missing.photograph,
    ]),
  ).toEqual([
    ["W-3", "low", "Soot, on Buff stoneware (cones 5–9)", false, false],
    ["W-1", "top", "Soot, on Buff stoneware (cones 5–9)", true, true],
    ["W-2", "top", "Soot, on Buff stoneware (cones 5–9)", false, true],
  ]);
  expect((await desk.ask("GET", "/desk/unload/nowhere")).status).toBe(404);
  const { text } = await desk.ask("GET", "/desk/unload");
  expect(text).toContain(
    "glaze, 20 November 2026: 3 tiles, 1 without a result, 2 without a photograph",
  );
});

describe("what came of a tile", () => {
  test("is written into its record, and no other letter changes; then it is taken back", async () => {
    const desk = await openSmallDesk(more);
    const outcome: Partial<OutcomeRequest["outcome"]> = {
      surface: ["satin", "matte"],
      faults: ["none"],
      ...{ run: "2.5", again: "changed" },
      nextTime: 'one coat: "thin", #2 {brush}\u202e\n',
    };
    const written = await write(desk, "W-1", outcome);
    expect(written).toMatchObject({
      written: true,
      words: "Written into tiles/evening/W-1.md, line 4.",
      tile: { missing: { result: false }, outcome: { nextTime: 'one coat: "thin", #2 {brush}' } },
    });
    expect(await recordOf(desk, "W-1")).toBe(
      tile(
        'result: {surface: [satin, matte], faults: none, run: 2.5, again: changed, next-time: "one coat: \\"thin\\", #2 {brush}"}',
      ),
    );
    const back = await post<OutcomeWritten>(desk, "undo", { firing: "g-2", code: "W-1" });
    expect(back).toMatchObject({
      words: "Taken back: tiles/evening/W-1.md is as it was before.",
      tile: { missing: { result: true } },
    });
    expect(await recordOf(desk, "W-1")).toBe(tile());
    const twice = await post<OutcomeWritten>(desk, "undo", { firing: "g-2", code: "W-1" });
    expect(twice.written).toBe(false);
  });

  test("changes only what is other than before, and may be a fate alone", async () => {
    const desk = await openSmallDesk(more);
    const same = await write(desk, "W-2", { surface: ["dry"] });
    expect(same.words).toBe("tiles/evening/W-2.md says so already: nothing was written.");
    await write(desk, "W-2", { faults: ["pinholing"], fate: "stuck" });
    expect(await recordOf(desk, "W-2")).toBe(tile("result: {faults: pinholing}", "fate: stuck"));
    await write(desk, "W-1", { fate: "lost" });
    expect(await recordOf(desk, "W-1")).toBe(tile("fate: lost"));
  });

  test("is left alone where somebody wrote into the record meanwhile", async () => {
    const desk = await openSmallDesk(more);
    const { tiles } = await viewOf(desk);
    const now = tile("result: {surface: gloss}");
    await writeFile(join(desk.archive, "tiles/evening/W-1.md"), now);
    desk.changed();
    const seen = tiles[1]?.seen ?? "";
    const asked = { firing: "g-2", code: "W-1", seen, outcome: { ...open, surface: ["dry"] } };
    const refused = await post<OutcomeWritten>(desk, "outcome", asked);
    expect(refused.written).toBe(false);
    expect(refused.words).toContain("was changed after this page read it");
    expect(await recordOf(desk, "W-1")).toBe(now);
  });

  test("is not taken back where the record was changed since", async () => {
    const desk = await openSmallDesk(more);
    await write(desk, "W-1", { surface: ["dry"] });
    await writeFile(join(desk.archive, "tiles/evening/W-1.md"), tile("fate: lost"));
    const back = await post<OutcomeWritten>(desk, "undo", { firing: "g-2", code: "W-1" });
    expect(back.words).toBe(
      "tiles/evening/W-1.md was changed since, so nothing was taken back. Open the file and mend it there.",
    );
    expect(await recordOf(desk, "W-1")).toBe(tile("fate: lost"));
  });

  test("names its firing where the tile was in two, once somebody says of which the first is", async () => {
    const desk = await openSmallDesk({
      ...more,
      "tiles/firings/g-3.md": "---\non: 2026-11-25\nkind: glaze\ntiles: {top: [W-2]}\n---\n",
    });
    const [only] = (await viewOf(desk, "g-3")).tiles;
    expect(only).toMatchObject({ unclear: ["g-2", "g-3"], outcome: open });
    const asked = await write(desk, "W-2", { surface: ["gloss"] }, { firing: "g-3" });
    expect(asked.words).toBe("W-2 has a result that names no firing: say of which one it is.");
    await write(desk, "W-2", { surface: ["gloss"] }, { firing: "g-3", said: "g-2" });
    expect(await recordOf(desk, "W-2")).toBe(
      tile("result: [{surface: dry, after: g-2}, {after: g-3, surface: gloss}]"),
    );
  });

  test.each([
    ["W-1", "g-2", { run: "far" }, "“far” is no length: write millimetres, as in 12 or 2.5."],
    ["W-1", "g-2", { run: "2,5" }, "“2,5” is no length: write millimetres, as in 12 or 2.5."],
    [
      "W-1",
      "g-2",
      { faults: ["none", "running"] as const },
      "There are faults, or none: not both.",
    ],
    [
      "EV-3",
      "b-1",
      { surface: ["dry"] as const },
      "A bisque has no result: only what did not come back whole is written down.",
    ],
    [
      "EV-3",
      "g-9",
      { surface: ["dry"] as const },
      "Nobody wrote down when g-9 was lit: write its day first.",
    ],
    [
      "EV-1",
      "g-2",
      { surface: ["dry"] as const },
      "EV-1 is not in g-2 any more. Load this page again.",
    ],
    [
      "EV-1",
      "g-8",
      { surface: ["dry"] as const },
      "There is no firing “g-8” that can be read any more.",
    ],
  ] as const)("%s in %s with %j is refused, and says why", async (code, firing, outcome, words) => {
    const desk = await openSmallDesk(more);
    const before = await sumsOf(desk.archive);
    const asked = { firing, code, seen: "", outcome: { ...open, ...outcome } };
    expect(await post<OutcomeWritten>(desk, "outcome", asked)).toMatchObject({
      written: false,
      words,
    });
    expect(await sumsOf(desk.archive)).toEqual(before);
  });
});

test("the day a kiln was lit is written first", async () => {
  const desk = await openSmallDesk(more);
  const { seen } = await viewOf(desk, "g-9");
  const wrong = await post<Written>(desk, "lit", { firing: "g-9", seen, on: "2026-02-31" });
  expect(wrong.words).toBe(
    "“2026-02-31” is no day. Write it as year-month-day, such as 2026-11-30.",
  );
  await post<Written>(desk, "lit", { firing: "g-9", seen, on: "2026-11-29" });
  expect(await readFile(join(desk.archive, "tiles/firings/g-9.md"), "utf8")).toBe(
    "---\nkind: glaze\ntiles: {top: EV-3}\non: 2026-11-29\n---\n",
  );
});

test.each([
  [null],
  [{ firing: "g-2", code: "W-1", seen: "" }],
  [{ firing: "g-2", code: "W-1", seen: "", outcome: { ...open, surface: ["shiny"] } }],
  [{ firing: "g-2", code: "W-1", seen: "", outcome: { ...open, surface: "dry" } }],
  [{ firing: "g-2", code: "W-1", seen: "", outcome: { ...open, fate: "<script>" } }],
  [{ firing: "g-2", code: "W-1", seen: "", outcome: { ...open, nextTime: "x".repeat(10_000) } }],
])("what no page would send is refused: %j", async (body) => {
  const { ask, failures } = await openSmallDesk(more);
  expect((await ask("POST", "/desk/unload/outcome", { body })).status).toBe(400);
  expect(failures).toEqual([]);
});

describe("a photograph", () => {
  const send = async (desk: OpenedDesk, code: string, body: Uint8Array | string, more = {}) => {
    const headers = { "content-type": "application/octet-stream", ...more };
    return desk.ask("POST", `/desk/unload/photograph/${code}`, { headers, body });
  };
  const told = async (answer: ReturnType<typeof send>) =>
    JSON.parse((await answer).text) as Written;

  test("is named after its tile, and nothing is written over it", async () => {
    const desk = await openSmallDesk(more);
    const picture = await photograph("#6b7f86", 300, 200);
    expect(await told(send(desk, "w-1", picture))).toMatchObject({
      ...{ written: true, words: "Written: tiles/evening/W-1.jpg." },
    });
    expect(await readFile(join(desk.archive, "tiles/evening/W-1.jpg"))).toEqual(picture);
    const other = await photograph("#ffffff", 300, 200);
    expect(await told(send(desk, "W-1", other))).toEqual({
      ...{ written: false, files: [] },
      words: "W-1 has a photograph, tiles/evening/W-1.jpg. Nothing was written over it.",
    });
    expect(await readFile(join(desk.archive, "tiles/evening/W-1.jpg"))).toEqual(picture);
    expect((await viewOf(desk)).tiles[1]?.missing).toEqual({ result: true, photograph: false });
  });

  test("loses the place and the device that it was taken with", async () => {
    const desk = await openSmallDesk(more);
    const picture = await sharp(await photograph("#6b7f86", 300, 200))
      .withExif({ IFD0: { Model: "Phone" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
      .toBuffer();
    expect(picture.toString("latin1")).toContain("Phone");
    await send(desk, "W-1", picture);
    const written = await readFile(join(desk.archive, "tiles/evening/W-1.jpg"), "latin1");
    expect(written).not.toContain("Phone");
    expect(written).not.toContain("Exif");
  });

  test.each([
    ["no picture", "<svg onload='alert(1)'/>", "W-1", /^That photograph was not taken\. /u],
    ["nothing", "", "W-1", /^That photograph was not taken\. /u],
    ["a tile that is none", "x", "W-99", /^There is no tile “W-99” that can be read\.$/u],
  ])("of %s is refused in plain words", async (_, body, code, words) => {
    const desk = await openSmallDesk(more);
    const before = await sumsOf(desk.archive);
    const answer = await told(send(desk, code, new TextEncoder().encode(body)));
    expect(answer.written).toBe(false);
    expect(answer.words).toMatch(words);
    expect(await sumsOf(desk.archive)).toEqual(before);
  });

  test("is taken from no page but the desk's own", async () => {
    const desk = await openSmallDesk(more);
    const picture = await photograph("#6b7f86", 300, 200);
    for (const wrong of [
      { "x-tilebook-token": "" },
      { origin: "https://evil.example" },
      { host: "evil.example" },
    ])
      expect((await send(desk, "W-1", picture, wrong)).status).toBe(403);
    expect((await send(desk, "W-1", picture, { "content-type": "image/jpeg" })).status).toBe(415);
    const { status } = await desk.ask("POST", "/desk/load/photograph/W-1", {
      headers: { "content-type": "application/octet-stream" },
      body: picture,
    });
    expect(status).toBe(404);
  });
});
