/** Where glaze and grey card lie in a photograph: said by the tile, its set, or the studio. */
import { describe, expect, it } from "vitest";
import { findById } from "../../src/records/archive.ts";
import { least, readWith, record, sound, tellOf } from "./archives.ts";

const box = (left: number, top: number, right: number, bottom: number) => ({
  left,
  top,
  right,
  bottom,
});

const studio = `${least["studio.yaml"]}photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}\n`;
const tile = (photo: string) => record(`layers: [{glaze: soot}]\n${photo}`);

/** The photo settings that a tile of the evening set has in the end. */
async function photoOf(set: string, photo: string, top = studio) {
  const read = await readWith({
    "studio.yaml": top,
    "tiles/evening/set.md": record(`name: Evening\n${set}`),
    "tiles/evening/EV-1.md": tile(photo),
  });
  return findById(sound(read).tiles, "EV-1")?.record.photo;
}

describe("the frames of a photograph", () => {
  it("are the studio's where neither tile nor set says otherwise", async () => {
    expect(await photoOf("", "")).toEqual({
      crop: box(20, 14, 80, 68),
      grey: box(6, 90, 15, 95.5),
    });
  });

  it("are the set's before the studio's, each by itself", async () => {
    expect(await photoOf("defaults: {photo: {crop: [1, 2, 3, 4]}}", "")).toEqual({
      crop: box(1, 2, 3, 4),
      grey: box(6, 90, 15, 95.5),
    });
  });

  it("are the tile's before all others, each by itself", async () => {
    const set = "defaults: {photo: {crop: [1, 2, 3, 4], alt: Three tiles}}";
    expect(await photoOf(set, "photo: {grey: [5, 6, 7, 8]}")).toEqual({
      alt: "Three tiles",
      crop: box(1, 2, 3, 4),
      grey: box(5, 6, 7, 8),
    });
  });

  it("stay what set and studio say where a tile says only what its photograph shows", async () => {
    const set = "defaults:\n  photo:\n    crop: [1, 2, 3, 4]";
    expect(await photoOf(set, "photo: {alt: A blue tile}")).toEqual({
      alt: "A blue tile",
      crop: box(1, 2, 3, 4),
      grey: box(6, 90, 15, 95.5),
    });
  });

  it("hold no card where the tile, or its set, says that there is none", async () => {
    expect(await photoOf("", "photo: {grey: no}")).toMatchObject({ grey: false });
    expect(await photoOf("defaults: {photo: {grey: no}}", "")).toMatchObject({ grey: false });
    expect(await photoOf("defaults: {photo: {grey: no}}", "photo: {grey: [5, 6, 7, 8]}")).toEqual({
      crop: box(20, 14, 80, 68),
      grey: box(5, 6, 7, 8),
    });
  });

  it("are nobody's where nobody says anything", async () => {
    expect(await photoOf("", "", least["studio.yaml"] as string)).toBeUndefined();
  });

  it("are told to be wrong where they are written", async () => {
    expect(
      await tellOf({
        "studio.yaml": `${least["studio.yaml"]}photo:\n  crop: [80, 14, 20, 68]\n  alt: A tile\n`,
        "tiles/WL-002.md": tile("photo: {grey: perhaps}"),
      }),
    ).toMatchInlineSnapshot(`
      "
      studio.yaml:5:9 error: A part of a picture is four numbers, the right edge beyond the left and the bottom below the top [bad-box]
        5 |   crop: [80, 14, 20, 68]
          |         ^
        Write left, top, right and bottom in per cent, as in [8, 8, 92, 92]; between brackets, decimals need a point: 8.5.

      studio.yaml:6:3 error: There is no field “alt” here [unknown-field]
        6 |   alt: A tile
          |   ^
        Choose from: crop, grey.

      tiles/WL-002.md:3:15 error: “perhaps” does not name a part of a picture [bad-box]
        3 | photo: {grey: perhaps}
          |               ^
        Write left, top, right and bottom in per cent, as in [2, 2, 6, 6], or no where there is none.
      "
    `);
  });

  it("lead a check to the file and line that they come from", async () => {
    const { locate } = await readWith({
      "studio.yaml": studio,
      "tiles/evening/set.md": record("name: Evening\ndefaults:\n  photo: {grey: no}"),
      "tiles/evening/EV-1.md": tile("photo: {alt: A blue tile}"),
    });
    const at = (file: string, field: "alt" | "crop" | "grey") => {
      const { line, ...found } = locate({
        ...{ file, path: ["photo", field], severity: "warning" },
        ...{ code: "a-check", message: "Something is wrong", hint: "Mend it." },
      });
      return `${found.file}:${line}${found.takenBy === null ? "" : `, taken by ${found.takenBy}`}`;
    };
    const file = "tiles/evening/EV-1.md";
    expect(at(file, "crop")).toBe(`studio.yaml:4, taken by ${file}`);
    expect(at(file, "grey")).toBe(`tiles/evening/set.md:4, taken by ${file}`);
    expect(at(file, "alt")).toBe(`${file}:3`);
    expect(at("tiles/WL-001.md", "grey")).toBe("studio.yaml:4, taken by tiles/WL-001.md");
    expect(at("tiles/WL-001.md", "alt")).toBe("tiles/WL-001.md:2");
  });
});
