import { describe, expect, it } from "vitest";
import { findById, type TileStep } from "../../src/records/archive.ts";
import { read, readWith, record, sound } from "./archives.ts";

const archive = sound(await read("tests/archives/sound"));
const tile = (id: string) => {
  const found = findById(archive.tiles, id);
  if (!found) throw new Error(`no tile ${id}`);
  return found;
};

describe("a sound archive", () => {
  it("is read without a word", async () => {
    const { problems, counts } = await read("tests/archives/sound");
    expect(problems).toEqual([]);
    expect(counts).toEqual({
      tiles: 4,
      sets: 1,
      firings: 2,
      glazes: 3,
      clays: 1,
      materials: 1,
      pictures: 1,
    });
  });

  it("holds every record under its id, in the order a reader expects", () => {
    expect([...archive.tiles.values()].map(({ id, file }) => [id, file])).toEqual([
      ["WL-001", "tiles/WL-001.md"],
      ["WL-101", "tiles/evening/WL-101.md"],
      ["WL-102", "tiles/evening/WL-102.md"],
      ["WL-103", "tiles/evening/WL-103.md"],
    ]);
    expect([...archive.glazes.keys()]).toEqual(["half-and-half", "soot", "tidewrack"]);
    expect(archive.studio.studio).toBe("Weir Lane Pottery");
    expect(tile("wl-001").notes).toBe("The motif stayed bare.");
  });

  it("keeps every layer in its order, with what was left out filled in", () => {
    expect(tile("WL-001").steps).toEqual([
      { step: "fired", at: 0, kind: "bisque", firing: "b-0920", shelf: null },
      coat(1, ["soot"], { coats: 1, by: "brush", where: ["raised"] }),
      { step: "resist", at: 2, resist: "wax", where: ["motif"], detail: null },
      coat(3, ["tidewrack"], { coats: 2, thickness: "thin" }),
      coat(4, ["soot", "tidewrack"], { along: "rim to centre", coats: 2, over: ["soot"] }),
      { step: "remove", at: 5, remove: "wipe", where: ["raised"], detail: null },
      coat(6, ["soot"], { touchUp: true, where: ["motif"] }),
      { step: "fired", at: 7, kind: "glaze", firing: "g-1101", shelf: "top" },
    ]);
  });

  it("finds the glaze behind the number of a jar", () => {
    expect(tile("WL-101").steps[1]).toMatchObject({ glazes: ["tidewrack"] });
    expect(tile("WL-102").steps[0]).toMatchObject({ glazes: ["soot"] });
  });

  it("gives a tile what its set says and it does not say itself", () => {
    expect(tile("WL-101")).toMatchObject({ set: "evening", clay: "buff", maker: "m02" });
    expect(tile("WL-102")).toMatchObject({ clay: "buff", maker: "m03" });
    expect(tile("WL-101").record.photo).toEqual({
      alt: "A dark tile",
      crop: { left: 8, top: 8, right: 92, bottom: 92 },
    });
    expect(tile("WL-001")).toMatchObject({ set: null, maker: "m01" });
  });

  it("spells out a load list, without the codes that are only reserved", () => {
    expect(findById(archive.firings, "g-1101")).toMatchObject({
      load: [
        { tile: "WL-001", shelf: "top" },
        { tile: "WL-101", shelf: "top" },
        { tile: "WL-102", shelf: "top" },
        { tile: "WL-103", shelf: "top" },
      ],
      log: {
        file: "tiles/firings/g-1101.csv",
        text: expect.stringMatching(/^minutes,temperature\n0,20\n(\d+,\d+\n){32}$/u),
      },
    });
  });

  it("puts a load into the first firing of its kind that names none, or after the last layer", () => {
    expect(tile("WL-101").steps.map(inShort)).toEqual([
      "bisque",
      "coat",
      "glaze g-1101 at layer 2, top",
    ]);
    expect(tile("WL-102").steps.map(inShort)).toEqual(["coat", "glaze g-1101 of a load, top"]);
    expect(tile("WL-103").steps.map(inShort)).toEqual(["coat", "glaze g-1101 at layer 1, top"]);
  });

  it("tells the stage of each tile", () => {
    expect([...archive.tiles.values()].map(({ stage }) => stage)).toEqual([
      "recorded",
      "fired",
      "fired",
      "lost",
    ]);
  });
});

describe("load lists", () => {
  const firing = (on: string, kind: string, tiles: string) =>
    record(`${on && `on: ${on}\n`}kind: ${kind}\ntiles: {middle: [${tiles}]}`);

  it("are taken in the order of their days, those still to come last", async () => {
    const { tiles } = sound(
      await readWith({
        "tiles/WL-001.md": record("layers: [{glaze: soot}, {fired: glaze}]"),
        "tiles/firings/a.md": firing("", "onglaze", "WL-001"),
        "tiles/firings/b.md": firing("2026-11-09", "glaze", "WL-001"),
        "tiles/firings/c.md": firing("2026-11-02", "glaze", "WL-001"),
      }),
    );
    expect(tiles.get("wl-001")?.steps.map(inShort)).toEqual([
      "coat",
      "glaze c at layer 1, middle",
      "glaze b of a load, middle",
      "onglaze a of a load, middle",
    ]);
  });

  it("never add a firing that the tile names itself", async () => {
    const { tiles } = sound(
      await readWith({
        "tiles/WL-001.md": record("layers: [{fired: glaze}, {glaze: soot}, {fired: b}]"),
        "tiles/firings/b.md": firing("2026-11-09", "glaze", "wl-001"),
      }),
    );
    expect(tiles.get("wl-001")?.steps.map(inShort)).toEqual([
      "glaze",
      "coat",
      "glaze b at layer 2, middle",
    ]);
  });
});

describe("a tile's stage", () => {
  const stageOf = async (yaml: string) => {
    const archive = sound(
      await readWith({
        "tiles/WL-001.md": record(yaml),
        "tiles/firings/lit.md": record("on: 2026-11-02\nkind: glaze"),
        "tiles/firings/planned.md": record("kind: glaze"),
      }),
    );
    return archive.tiles.get("wl-001")?.stage;
  };

  it("is waiting before anything was fired", async () => {
    expect(await stageOf("layers: [{glaze: soot}]")).toBe("waiting");
  });

  it("is waiting after a bisque, and after a firing that more glaze followed", async () => {
    expect(await stageOf("layers: [{fired: lit}, {glaze: soot}]")).toBe("waiting");
  });

  it("is waiting while only the kind of the firing is known, or its day is not", async () => {
    expect(await stageOf("layers: [{glaze: soot}, {fired: glaze}]")).toBe("waiting");
    expect(await stageOf("layers: [{glaze: soot}, {fired: planned}]")).toBe("waiting");
  });

  it("is fired after the last coat was, and for a tile that was never glazed", async () => {
    expect(await stageOf("layers: [{glaze: soot}, {fired: lit}]")).toBe("fired");
    expect(await stageOf("layers: [{fired: lit}]")).toBe("fired");
  });

  it("is recorded with a result, and lost with a fate, whatever is known of its firings", async () => {
    expect(await stageOf("layers: [{glaze: soot}, {fired: glaze}]\nresult: {again: yes}")).toBe(
      "recorded",
    );
    expect(await stageOf("layers: [{glaze: soot}]\nresult: {again: yes}\nfate: broken")).toBe(
      "lost",
    );
  });

  it("is still waiting where a form was handed in with its result left blank", async () => {
    expect(await stageOf("layers: [{glaze: soot}]\nresult:\n  surface:\n  again:")).toBe("waiting");
  });
});

function inShort(step: TileStep): string {
  if (step.step !== "fired" || step.firing === null)
    return step.step === "fired" ? step.kind : step.step;
  const from = step.at === null ? "of a load" : `at layer ${step.at}`;
  return `${step.kind} ${step.firing} ${from}, ${step.shelf}`;
}

function coat(at: number, glazes: readonly string[], more: object) {
  return {
    step: "coat",
    at,
    glazes,
    along: null,
    coats: null,
    cover: null,
    by: null,
    where: ["all"],
    detail: null,
    thickness: "usual",
    seconds: null,
    gravity: null,
    dried: "touch-dry",
    over: [],
    touchUp: false,
    ...more,
  };
}
