/** The page of photographs: what is proposed, what is written, and what is left alone. */
import { mkdtemp, readdir, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, onTestFinished, test } from "vitest";
import { codeOfLabel } from "../../../src/desk/photographs/codes.ts";
import { openTray } from "../../../src/desk/photographs/tray.ts";
import type { Handed, PhotographView } from "../../../src/desk/photographs/types.ts";
import { matchWords } from "../../../src/desk/photographs/words.ts";
import type { Written } from "../../../src/desk/types.ts";
import type { Match } from "../../../src/loads/match-photographs.ts";
import { sumsOf } from "../../commands/site-files.ts";
import { photograph } from "../../support/archive-folder.ts";
import { frameWithCode } from "../../support/frame-with-code.ts";
import { removeFolder } from "../../support/remove-folder.ts";
import { type OpenedDesk, openSmallDesk } from "../desk-opened.ts";

const tile = "---\nclay: buff\nlayers: [{fired: bisque}, {glaze: soot}]\n---\n";
const more = {
  "tiles/evening/set.md":
    "---\nname: Evening class\nkind: class\ndefaults: {clay: buff}\njars: {7: soot}\ncodes: [W-1..W-9]\n---\n",
  "tiles/evening/W-1.md": tile,
  "tiles/evening/W-2.md": tile,
  "tiles/evening/W-3.md": tile,
  "tiles/firings/g-2.md":
    "---\non: 2026-11-20\nkind: glaze\ntiles: {low: EV-1, top: [W-1..W-4]}\n---\n",
};
const label = (code: string) => `https://eelgate.example/tiles/${code}.html`;

async function add(desk: OpenedDesk, name: string, body: Uint8Array | string): Promise<Handed> {
  const path = `/desk/photographs/add/name-${encodeURIComponent(encodeURIComponent(name))}`;
  const headers = { "content-type": "application/octet-stream" };
  const bytes = typeof body === "string" ? new TextEncoder().encode(body) : body;
  const { status, text } = await desk.ask("POST", path, { headers, body: bytes });
  expect({ status, text }).toMatchObject({ status: 200 });
  return JSON.parse(text) as Handed;
}

async function post<T>({ ask }: OpenedDesk, action: string, body: unknown): Promise<T> {
  const { status, text } = await ask("POST", `/desk/photographs/${action}`, { body });
  expect({ status, text }).toMatchObject({ status: 200 });
  return JSON.parse(text) as T;
}

async function sheetOf(desk: OpenedDesk, of: string | null): Promise<readonly PhotographView[]> {
  return (await post<{ photographs: readonly PhotographView[] }>(desk, "sheet", { of }))
    .photographs;
}

const write = (desk: OpenedDesk, id: string, code: string, more = {}) =>
  post<Written>(desk, "write", { id, code, role: "result", turning: 0, ...more });

const grey = () => photograph("#6b7f86", 300, 200);

test("codes are proposed by the label in the frame and by the order of the load, each with its reason", async () => {
  const desk = await openSmallDesk(more);
  await add(desk, "IMG_10.JPG", await frameWithCode({ says: [label("w-3")] }));
  await add(desk, "IMG_11.JPG", await grey());
  await add(desk, "IMG_8.JPG", await grey());
  await add(desk, "IMG_9.JPG", await grey());
  await add(desk, "IMG_12.JPG", await frameWithCode({ says: [label("W-3"), "WIFI:S:studio;;"] }));
  const told = (photographs: readonly PhotographView[]) =>
    photographs.map(({ name, code, words }) => [name, code, words]);
  expect(told(await sheetOf(desk, "g-2"))).toEqual([
    ["IMG_8.JPG", "W-1", "W-1, by the order of the load g-2."],
    ["IMG_9.JPG", "W-2", "W-2, by the order of the load g-2."],
    ["IMG_10.JPG", "W-3", "W-3, read in the frame."],
    [
      "IMG_11.JPG",
      null,
      "No code was read in the frame. It was taken between two photographs of W-3, so the order does not tell.",
    ],
    [
      "IMG_12.JPG",
      null,
      "W-3 was read in the frame, and in IMG_10.JPG before. If this shows a detail or the back, say so and give its code. Another QR code in the frame belongs to no tile here.",
    ],
  ]);
  expect(told(await sheetOf(desk, null)).map(([, code]) => code)).toEqual([
    ...[null, null, "W-3", null, null],
  ]);
  expect((await desk.ask("GET", "/desk/photographs/nowhere")).status).toBe(404);
  const { text } = await desk.ask("GET", "/desk/photographs");
  expect(text).toContain("5 tiles, 4 without a photograph");
});

test("a code whose photograph is there, or that has no record, is told and not proposed", async () => {
  const desk = await openSmallDesk(more);
  await add(desk, "a.jpg", await frameWithCode({ says: [label("ev-1")] }));
  await add(desk, "b.jpg", await frameWithCode({ says: [label("w-9")] }));
  const before = await sumsOf(desk.archive);
  const [a, b] = await sheetOf(desk, null);
  expect([a?.code, a?.words, b?.code, b?.words]).toEqual([
    null,
    "This looks like EV-1, read in the frame. tiles/evening/EV-1.jpg is there already, and nothing is written over it.",
    null,
    "This looks like W-9, read in the frame. W-9 has no record yet. Write its record first.",
  ]);
  expect((await write(desk, a?.id ?? "", "EV-1")).words).toBe(
    "tiles/evening/EV-1.jpg is there already, and nothing is written over it.",
  );
  expect((await write(desk, b?.id ?? "", "<script>")).words).toBe("There is no tile “<script>”.");
  expect(await sumsOf(desk.archive)).toEqual(before);
});

test("what is written is named after its tile, turned where asked, without place and device, and gone from the sheet", async () => {
  const desk = await openSmallDesk(more);
  const taken = await sharp(await grey())
    .withExif({ IFD0: { Model: "Phone" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
    .toBuffer();
  expect(await add(desk, "IMG_1.JPG", taken)).toEqual({ kept: true, words: "" });
  await add(desk, "IMG_2.JPG", taken);
  const [one, two] = await sheetOf(desk, null);
  expect(await write(desk, one?.id ?? "", "w-1", { turning: 90 })).toMatchObject({
    ...{ written: true, words: "Written: tiles/evening/W-1.jpg." },
  });
  expect(await write(desk, two?.id ?? "", "W-1", { role: "detail" })).toMatchObject({
    words: "Written: tiles/evening/W-1.detail.jpg.",
  });
  const written = await readFile(join(desk.archive, "tiles/evening/W-1.jpg"));
  expect(await sharp(written).metadata()).toMatchObject({ width: 200, height: 300 });
  const untouched = await readFile(join(desk.archive, "tiles/evening/W-1.detail.jpg"));
  for (const bytes of [written, untouched]) {
    expect(bytes.toString("latin1")).not.toContain("Phone");
    expect(bytes.toString("latin1")).not.toContain("Exif");
  }
  expect(await sheetOf(desk, null)).toEqual([]);
  expect((await write(desk, one?.id ?? "", "W-2")).words).toBe(
    "This photograph does not lie here any more. Choose its file again.",
  );
});

test("the order of the others is told by those that were written, until the sheet is empty", async () => {
  const desk = await openSmallDesk(more);
  for (const name of ["1", "2", "3"]) await add(desk, name, await grey());
  await add(desk, "4", await frameWithCode({ says: [label("w-1")] }));
  const before = await sheetOf(desk, "g-2");
  expect(before.map(({ code }) => code)).toEqual([null, null, null, "W-1"]);
  await write(desk, before[3]?.id ?? "", "W-1");
  // Three were taken before W-1. Were it forgotten, W-2, W-3 and W-4 behind it would want as many.
  const after = await sheetOf(desk, "g-2");
  expect(after.map(({ words }) => words)).toEqual(
    Array(3).fill(
      "No code was read in the frame. Before W-1 there are 3 photographs and 1 tile, so the order does not tell.",
    ),
  );
});

describe("what is no photograph, or comes from elsewhere,", () => {
  test.each([
    ["../../studio.yaml", "format: 1", /^This is text, whatever its name says/u],
    [
      "<script>.svg",
      "<svg onload='alert(1)'/>",
      /^This is an SVG drawing, whatever its name says/u,
    ],
    [".", "", /^The photograph is empty/u],
  ])("%s, is refused in plain words and leaves nothing", async (name, body, words) => {
    const desk = await openSmallDesk(more);
    const before = await sumsOf(desk.archive);
    const handed = await add(desk, name, body);
    expect(handed.kept).toBe(false);
    expect(handed.words).toMatch(words);
    expect(await sheetOf(desk, null)).toEqual([]);
    expect(await sumsOf(desk.archive)).toEqual(before);
  });

  test("a hostile name is only shown, and no file bears it", async () => {
    const desk = await openSmallDesk(more);
    const before = await sumsOf(desk.archive);
    await add(desk, "../<img src=x onerror=alert(1)>\u202e\u0000.jpg", await grey());
    expect((await sheetOf(desk, null))[0]?.name).toBe("../<img src=x onerror=alert(1)> .jpg");
    expect(await sumsOf(desk.archive)).toEqual(before);
  });

  test.each([
    ["sheet", "nothing", null],
    ["sheet", "a number", { of: 7 }],
    ["write", "a role that leads away", { id: "x", code: "W-1", role: "../x", turning: 0 }],
    ["write", "an eighth of a turn", { id: "x", code: "W-1", role: "result", turning: 45 }],
    ["write", "an endless code", { id: "x", code: "W".repeat(1000), role: "result", turning: 0 }],
    ["throw-away", "a word", { ids: "all" }],
  ])("%s of %s is not understood", async (action, _, body) => {
    const { ask, failures } = await openSmallDesk(more);
    expect((await ask("POST", `/desk/photographs/${action}`, { body })).status).toBe(400);
    expect(failures).toEqual([]);
  });

  test("a page without the token hands nothing over", async () => {
    const { ask } = await openSmallDesk(more);
    const headers = { "content-type": "application/octet-stream" };
    for (const wrong of [{ "x-tilebook-token": "" }, { origin: "https://evil.example" }]) {
      const sent = { headers: { ...headers, ...wrong }, body: await grey() };
      expect((await ask("POST", "/desk/photographs/add/name-a", sent)).status).toBe(403);
    }
  });

  test("a small picture is shown by its number alone", async () => {
    const desk = await openSmallDesk(more);
    await add(desk, "a.jpg", await grey());
    const [only] = await sheetOf(desk, null);
    const shown = await desk.ask("GET", `/desk/photographs/small/${only?.id}`);
    expect(shown).toMatchObject({ status: 200, headers: { "content-type": "image/webp" } });
    expect((await desk.ask("GET", "/desk/photographs/small/0")).status).toBe(404);
    expect((await desk.ask("GET", "/desk/photographs/toString/0")).status).toBe(404);
  });
});

test("nothing is left in the folder for temporary files: not of what was written or thrown away, nor at the end", async () => {
  const folder = await mkdtemp(join(tmpdir(), "tilebook-tray-"));
  onTestFinished(() => removeFolder(folder));
  const tray = openTray(folder);
  const kept = { name: "a", ending: "jpg", small: new Uint8Array(), codes: [] };
  for (let i = 0; i < 3; i += 1) await tray.keep(kept, new Uint8Array([i]));
  const [own = ""] = await readdir(folder);
  const files = async () => (await readdir(join(folder, own))).length - 1;
  expect(await files()).toBe(3);
  const [first, second] = tray.all().map(({ id }) => id);
  expect(await tray.read(first ?? "")).toEqual(Buffer.from([0]));
  await tray.takeOff(first ?? "");
  await tray.takeOff(second ?? "", "W-1");
  expect(await files()).toBe(1);
  await tray.close();
  expect(await readdir(folder)).toEqual([]);
});

test("a label means a tile by the address of its page, whatever the site", async () => {
  const of = { id: "TB-014", record: { formerly: ["OLD-1"] } };
  const archive = { tiles: new Map([["tb-014", of]]), sets: new Map() } as never;
  const meant = (text: string) => codeOfLabel(text, archive);
  expect(meant("https://eelgate.example/tiles/tb-014.html")).toBe("TB-014");
  expect(meant("http://localhost:8080/glazes/k7wq/tiles/TB-014.html?from=label#top")).toBe(
    "TB-014",
  );
  expect(meant("https://eelgate.example/tiles/old-1.html")).toBe("TB-014");
  for (const other of [
    ...[
      "TB-014",
      "https://eelgate.example/glazes/tb-014.html",
      "https://x.example/tiles/tb-015.html",
    ],
    ...[
      "https://x.example/tiles/tb-014",
      "https://x.example/tiles/%ff.html",
      "",
      "javascript:alert(1)",
    ],
  ])
    expect(meant(other), other).toBeUndefined();
});

test.each<[Match, string | null, string]>([
  [{ code: null, because: "no-list" }, null, "No code was read in the frame."],
  [
    { code: null, because: "several", codes: ["W-1", "W-2"] },
    null,
    "There are labels of W-1 and W-2 in the frame: say which tile it shows.",
  ],
  [
    { code: null, because: "uneven", photographs: 1, codes: 3, after: null, before: null },
    "the load g-2",
    "No code was read in the frame. In the load g-2 there is 1 photograph and 3 tiles, so the order does not tell.",
  ],
  [
    { code: null, because: "uneven", photographs: 2, codes: 1, after: "W-1", before: "W-3" },
    "the load g-2",
    "No code was read in the frame. Between W-1 and W-3 there are 2 photographs and 1 tile, so the order does not tell.",
  ],
  [
    { code: null, because: "crossed", after: "W-3", before: null },
    "the set Monday",
    "No code was read in the frame. After W-3 the labels that were read do not follow the order of the set Monday, so it does not tell.",
  ],
])("why none is proposed is said in a sentence: %#", (match, order, words) => {
  expect(matchWords(match, order, undefined)).toBe(words);
});
