/** What is measured and written at the copy stand, and what is told of it. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import type { MeasuredWords, StandView, WrittenWords } from "../../src/copystand/types.ts";
import { tilebook } from "../commands/tilebook.ts";
import { encodeTile, readFixture } from "../photos/pictures.ts";
import { photograph } from "../support/archive-folder.ts";
import { openStand, type Stand } from "./stand.ts";

const crop = [20, 14, 80, 68];
const grey = [6, 90, 15, 95.5];

async function write(stand: Stand, scope: string, frames: unknown, tile = "EV-1") {
  const { status, text } = await stand.ask("POST", "/write", { body: { scope, tile, frames } });
  expect(status).toBe(200);
  return JSON.parse(text) as WrittenWords;
}

async function measure(stand: Stand, frames: unknown, tile = "EV-1") {
  const { text } = await stand.ask("POST", "/measure", { body: { tile, frames } });
  return JSON.parse(text) as MeasuredWords;
}

const read = (stand: Stand, file: string) => readFile(join(stand.archive, file), "utf8");

describe("frames that are written down", () => {
  test("hold for the whole studio, each tile and set that says otherwise apart", async () => {
    const stand = await openStand({
      "tiles/hidden/set.md":
        "---\nname: Quiet class\nlisted: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja\ndefaults: {clay: buff, photo: {crop: [1, 2, 3, 4]}}\n---\n",
    });
    const told = await write(stand, "studio", { crop, grey });
    expect(told).toMatchObject({
      written: true,
      file: "studio.yaml",
      words:
        "Written into studio.yaml: where the glaze lies and where the grey card lies. HID-1 keeps its own, or its set's.",
      lines: [{ line: 8, text: "photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}" }],
    });
    expect(
      told.view.tiles.map(({ id, frames, from }) => [id, frames.crop[0], frames.grey?.[0], from]),
    ).toEqual([
      ["EV-1", 20, 6, { crop: "studio", grey: "studio" }],
      ["EV-2", 20, 6, { crop: "studio", grey: "studio" }],
      ["HID-1", 1, 6, { crop: "set", grey: "studio" }],
    ]);
    expect((await tilebook("check", "--archive", stand.archive)).code).toBe(0);
  });

  test("hold for a set, and for one tile of it where only what differs is written", async () => {
    const stand = await openStand({}, ["evening"]);
    await write(stand, "set", { crop, grey });
    expect(await read(stand, "tiles/evening/set.md")).toContain(
      "defaults: {clay: buff, photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}}\n",
    );
    const told = await write(stand, "tile", { crop, grey: null });
    expect(told.lines).toEqual([{ line: 10, text: "photo: {grey: no}" }]);
    expect(told.view.tiles[0]).toMatchObject({
      id: "EV-1",
      frames: { crop, grey: null },
      from: { crop: "set", grey: "tile" },
    });
    const again = await write(
      stand,
      "set",
      { crop: [21, 14, 80, 68], grey: [5, 90, 15, 96] },
      "EV-2",
    );
    expect(again.words).toBe(
      "Written into tiles/evening/set.md: where the glaze lies and where the grey card lies. EV-1 keeps its own, or its set's.",
    );
  });

  test("are not written twice", async () => {
    const stand = await openStand();
    await write(stand, "studio", { crop, grey });
    const before = await read(stand, "studio.yaml");
    const told = await write(stand, "studio", { crop, grey });
    expect(told).toMatchObject({
      written: false,
      words: "studio.yaml says so already: nothing was written.",
      lines: [],
    });
    expect(await read(stand, "studio.yaml")).toBe(before);
  });

  test("are not written over what somebody else wrote meanwhile, until it has been read", async () => {
    const stand = await openStand();
    const file = join(stand.archive, "tiles/evening/EV-2.md");
    const changed = (await readFile(file, "utf8")).replace("coats: 2", "coats: 3");
    await writeFile(file, changed);
    const refused = await write(stand, "tile", { crop, grey }, "EV-2");
    expect(refused).toMatchObject({
      written: false,
      words:
        "tiles/evening/EV-2.md was changed after it was read here, so nothing was written. It has been read again: look at the frames, and write once more.",
    });
    expect(await readFile(file, "utf8")).toBe(changed);
    expect((await write(stand, "tile", { crop, grey }, "EV-2")).written).toBe(true);
    expect(await readFile(file, "utf8")).toContain("coats: 3");
  });

  test("are not written into a record that repeats what would be changed", async () => {
    const photo = "photo: {crop: &part [1, 2, 3, 4], grey: *part}";
    const record = `---\nmaker: m02\n${photo}\nlayers: [{glaze: soot, coats: 2}]\nresult: {surface: gloss}\n---\n`;
    const stand = await openStand({ "tiles/evening/EV-2.md": record });
    const told = await write(stand, "tile", { crop, grey: [1, 2, 3, 4] }, "EV-2");
    expect(told.words).toBe(
      "tiles/evening/EV-2.md is written in a way that could not be changed without changing more, so nothing was written. Write it by hand: photo › crop: [20, 14, 80, 68].",
    );
    expect(await read(stand, "tiles/evening/EV-2.md")).toBe(record);
  });
});

describe("what is measured", () => {
  const halves = () =>
    sharp({ create: { width: 800, height: 600, channels: 3, background: "#8a8a86" } })
      .composite([
        {
          input: { create: { width: 400, height: 600, channels: 3, background: "#24488c" } },
          left: 0,
          top: 0,
        },
      ])
      .jpeg({ quality: 95 })
      .toBuffer();

  test("is what lies in the frame, and what became of the card is told", async () => {
    const stand = await openStand({ "tiles/evening/EV-1.jpg": await halves() });
    const blue = await measure(stand, { crop: [5, 5, 45, 95], grey: null });
    expect(blue).toMatchObject({ hex: expect.stringMatching(/^#2[0-9a-f]4[0-9a-f]8/u) });
    expect(blue).toMatchObject({
      sentence: "Blue, as photographed, with no grey card to correct it by.",
      spread: "Average variation across the glaze: 0.",
    });
    const other = await measure(stand, { crop: [55, 5, 95, 95], grey: null });
    expect(other).toMatchObject({ sentence: expect.stringMatching(/^Grey/u) });
    const corrected = await measure(stand, { crop: [5, 5, 45, 95], grey: [60, 10, 90, 90] });
    expect(corrected).toMatchObject({ sentence: expect.stringContaining("grey card") });
  });

  test("is the same as a build measures", async () => {
    const stand = await openStand({
      "tiles/evening/EV-1.jpg": await encodeTile("jpeg"),
      "studio.yaml":
        "format: 1\nstudio: Eelgate Pottery\naddress: https://eelgate.example/tests/\nmakers: {m01: {}, m02: {}, m03: {}}\nphoto: {crop: [10, 10, 60, 60]}\n",
    });
    const measured = await measure(stand, { crop: [10, 10, 60, 60], grey: null });
    const { code } = await tilebook("--quiet", "build", "--archive", stand.archive);
    expect(code).toBe(0);
    const tiles = JSON.parse(await read(stand, "site/data/tiles.json"));
    const built = tiles.find(({ id }: { id: string }) => id === "EV-1");
    expect(measured).toMatchObject({ hex: built.colour.hex });
  });

  test("is measured on a HEIC too, and nothing is where a photograph is damaged", async () => {
    const whole = await photograph("#6b7f86");
    const stand = await openStand({
      "tiles/evening/EV-4.md":
        "---\nlayers: [{glaze: soot, coats: 2}]\nresult: {surface: gloss}\n---\n",
      "tiles/evening/EV-4.heic": readFixture("plain.heic"),
      "tiles/evening/EV-2.jpg": whole.subarray(0, whole.length - 200),
    });
    const found = await measure(stand, { crop: [5, 5, 40, 40], grey: null }, "EV-4");
    expect(found).toMatchObject({
      hex: expect.stringMatching(/^#(9f|a0|a1)(51|52|53)(2c|2d|2e)$/u),
      sentence: expect.stringMatching(/^Between brown and red/u),
    });
    expect((await stand.ask("GET", "/large/EV-4")).status).toBe(200);
    expect(await measure(stand, { crop, grey: null }, "EV-2")).toEqual({
      fault: expect.stringMatching(/^The photograph breaks off before its end.+ /u),
    });
    expect((await stand.ask("GET", "/large/EV-2")).status).toBe(404);
  });
});

describe("the photographs that are shown", () => {
  const idsOf = async (names: readonly string[]) => {
    const { ask } = await openStand({}, names);
    const view = JSON.parse((await ask("GET", "/stand.json")).text) as StandView;
    return [view.scope, ...view.tiles.map(({ id }) => id)];
  };

  test("are all of them, those of a set, or those that were named", async () => {
    expect(await idsOf([])).toEqual(["studio", "EV-1", "EV-2", "HID-1"]);
    expect(await idsOf(["Evening"])).toEqual(["set", "EV-1", "EV-2"]);
    expect(await idsOf(["ev-2", "HID-1"])).toEqual(["tile", "EV-2", "HID-1"]);
  });

  test.each([
    ["EV-3", "The tile “EV-3” has no photograph of its result yet."],
    ["evning", "There is no set or tile “evning” in this archive. Did you mean “evening”?"],
  ])("are none of %s", async (name, said) => {
    await expect(openStand({}, [name])).rejects.toThrow(said);
  });
});
