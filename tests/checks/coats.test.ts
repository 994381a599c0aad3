import { describe, expect, it } from "vitest";
import type { TileStep } from "../../src/records/archive.ts";
import { coat, codesIn, fired, glaze, removed, resist, tell, tile } from "./support.ts";

const glazes = [
  glaze("soot", { name: "Soot", tone: "dark", cover: "opaque", moves: "little" }),
  glaze("chalk", { name: "Chalk", tone: "light", cover: "opaque", moves: "none" }),
  glaze("milk", { name: "Milk", tone: "light", cover: "milky" }),
  glaze("mist", { name: "Mist", tone: "light", cover: "clear" }),
  glaze("haze", { name: "Haze", tone: "light" }),
  glaze("moss", { name: "Moss", tone: "medium", cover: "opaque" }),
  glaze("honey", { name: "Honey", moves: "runs" }),
  glaze("gilt", { name: "Gilt", kind: "onglaze" }),
];
const about = (more: Parameters<typeof tile>[2], ...steps: TileStep[]) => ({
  tiles: [tile("TB-1", steps, more)],
  glazes,
});
const told = (...steps: TileStep[]) => tell(about({}, ...steps));
const found = (...steps: TileStep[]) => codesIn(about({}, ...steps));

describe("over", () => {
  it("names a glaze beneath", () => {
    const motif = coat("soot", { where: ["motif"] });
    expect(found(motif, coat("moss", { where: ["rim"], over: ["SOOT"] }))).toEqual([]);
  });

  it("a glaze that is on top, or not there, is not beneath", () => {
    const motif = coat("moss", { where: ["motif"] });
    expect(
      told(motif, coat("honey", { where: ["rim"], over: ["moss", "soot"] }), coat("soot")),
    ).toMatchInlineSnapshot(`
      "error over-not-beneath tiles/TB-1.md › layers › 1 › over › 1
      This layer is said to be over “soot”, which is not among the layers beneath it
      Beneath it are: moss. Name one of these, or put the layers into the order in which they went on."
    `);
  });

  it("nothing lies beneath the first layer", () => {
    expect(told(coat("moss", { over: ["soot"] }), coat("soot"))).toMatchInlineSnapshot(`
      "error over-not-beneath tiles/TB-1.md › layers › 0 › over › 0
      This layer is said to be over “soot”, which is not among the layers beneath it
      There is nothing beneath it yet: take “over” out, or put the layers into the order in which they went on."
    `);
  });

  it("a touch-up, and what was taken off, is not beneath", () => {
    const over = coat("moss", { over: ["soot"] });
    expect(found(coat("soot", { touchUp: true }), over)).toEqual(["over-not-beneath"]);
    expect(found(coat("soot"), removed("all"), over)).toEqual(["over-not-beneath"]);
    expect(found(coat("soot"), over, removed("all"))).toEqual([]);
  });
});

describe("light over dark", () => {
  it("a light glaze that covers is told over a dark one", () => {
    expect(told(coat("soot"), coat("chalk"))).toMatchInlineSnapshot(`
      "warning light-over-dark tiles/TB-1.md › layers › 1 › glaze
      Chalk, light and opaque, is over Soot, which is dark
      The dark one often bleeds through and muddies the light one; try them the other way round, dark over light. (Common practice, no published source.)"
    `);
    expect(found(coat("soot"), coat("milk"))).toEqual(["light-over-dark"]);
  });

  it("clear glazes, and those of which nobody said how they cover, are exempt", () => {
    expect(found(coat("soot"), coat("mist"))).toEqual([]);
    expect(found(coat("soot"), coat("haze"))).toEqual([]);
  });

  it("dark over light, and light over medium, are as they should be", () => {
    expect(found(coat("chalk"), coat("soot"))).toEqual([]);
    expect(found(coat("moss"), coat("chalk"))).toEqual([]);
  });

  it("glazes that do not meet are not compared, unless over says that they do", () => {
    const rim = coat("soot", { where: ["rim"] });
    expect(found(rim, coat("chalk", { where: ["motif"] }))).toEqual([]);
    expect(found(rim, coat("chalk", { where: ["motif"], over: ["soot"] }))).toEqual([
      "light-over-dark",
    ]);
  });

  it("a pair is told once, however often it occurs", () => {
    expect(found(coat("soot"), coat("chalk"), coat("soot"), coat("chalk"))).toEqual([
      "light-over-dark",
    ]);
  });
});

describe("an onglaze", () => {
  it("before the glaze firing is too early", () => {
    expect(told(fired(null, "bisque"), coat("gilt"), fired("g-1"))).toMatchInlineSnapshot(`
      "warning onglaze-too-early tiles/TB-1.md › layers › 1 › glaze
      Gilt is an onglaze, and it went on before any glaze firing
      Put an onglaze over glaze that has been fired, and fire it again to the onglaze's own cone. If the glaze firing is only missing here, write it as a step above. (Common practice, no published source.)"
    `);
  });

  it("is too early where only its own firing is written", () => {
    expect(found(coat("gilt"), fired(null, "onglaze"))).toEqual(["onglaze-too-early"]);
  });

  it.each(["glaze", "once", "raku"] as const)(
    "after a firing of the kind %s is in time",
    (kind) => {
      expect(found(coat("soot"), fired(null, kind), coat("gilt"), fired(null, "onglaze"))).toEqual(
        [],
      );
    },
  );
});

describe("a resist", () => {
  it.each(["latex", "paper", "tape"] as const)("of %s that was never peeled is told", (what) => {
    expect(found(resist(what), coat("soot"), fired("g-1"))).toEqual(["resist-not-peeled"]);
  });

  it("is told in the words of what it is", () => {
    expect(told(coat("moss"), resist("tape", ["rim"]), fired("g-1"))).toMatchInlineSnapshot(`
      "warning resist-not-peeled tiles/TB-1.md › layers › 1 › resist
      Nothing says that the tape was peeled off before the next firing
      Peel it before the tile goes into the kiln: in the fire it smokes and lifts the glaze over it. If it was peeled, add “- remove: peel” where that was done. (Common practice, no published source.)"
    `);
  });

  it("that was peeled before the firing is gone, as is all that was taken off", () => {
    expect(found(resist("tape"), coat("soot"), removed("peel"), fired("g-1"))).toEqual([]);
    expect(found(resist("tape"), coat("soot"), removed("all"), fired("g-1"))).toEqual([]);
  });

  it("that was peeled after the firing, or elsewhere, or only wiped, was in the fire", () => {
    const tape = resist("tape", ["rim"]);
    expect(found(tape, fired("g-1"), removed("peel"))).toEqual(["resist-not-peeled"]);
    expect(found(tape, removed("peel", ["motif"]), fired("g-1"))).toEqual(["resist-not-peeled"]);
    expect(found(tape, removed("wipe"), fired("g-1"))).toEqual(["resist-not-peeled"]);
  });

  it("of wax burns away", () => {
    expect(found(resist("wax"), coat("soot"), fired("g-1"))).toEqual([]);
  });
});

describe("a glaze that runs", () => {
  const thrice = coat("honey", { coats: 3 });
  const upright = { shape: "upright" } as const;

  it("in three coats on something upright is told", () => {
    expect(tell(about(upright, thrice))).toMatchInlineSnapshot(`
      "warning runs-off tiles/TB-1.md › layers › 0 › glaze
      Honey runs, and 3 coats of it are on a piece that stands upright
      Keep the foot bare, put fewer coats near it, and stand the piece on something that catches drips; a run of glaze breaks off sharp. (Common practice, no published source.)"
    `);
  });

  it.each([
    ["a pot", { shape: "pot" }],
    ["an L-shaped tile", { shape: "l-shape" }],
    ["a tile that leaned at 45 degrees", { angle: 45 }],
  ] as const)("is told on %s", (_, piece) => {
    expect(codesIn(about(piece, thrice))).toEqual(["runs-off"]);
  });

  it.each([
    ["a flat tile", {}],
    ["a ring", { shape: "ring" }],
    ["a tile that hardly leaned", { shape: "flat", angle: 30 }],
  ] as const)("is not told on %s", (_, piece) => {
    expect(codesIn(about(piece, thrice))).toEqual([]);
  });

  it("two coats are not three, nor is a glaze that moves little", () => {
    expect(codesIn(about(upright, coat("honey", { coats: 2 })))).toEqual([]);
    expect(codesIn(about(upright, coat("soot", { coats: 5 })))).toEqual([]);
  });

  it("coats of several layers add up where they meet", () => {
    const two = coat("honey", { coats: 2 });
    expect(codesIn(about(upright, two, coat("HONEY", { coats: 1, where: ["rim"] })))).toEqual([
      "runs-off",
    ]);
    const [left, right] = [
      coat("honey", { coats: 2, where: ["left"] }),
      coat("honey", { coats: 2, where: ["right"] }),
    ];
    expect(codesIn(about(upright, left, right))).toEqual([]);
  });

  it("coats that nobody counted, that were touch-ups or were taken off do not count", () => {
    expect(codesIn(about(upright, coat("honey", { coats: null })))).toEqual([]);
    expect(codesIn(about(upright, coat("honey", { coats: 3, touchUp: true })))).toEqual([]);
    expect(codesIn(about(upright, thrice, removed("all"), coat("soot")))).toEqual([]);
  });
});

describe("a layer on a wet one", () => {
  it("is told", () => {
    expect(told(coat("soot"), coat("moss", { dried: "wet-on-wet" }))).toMatchInlineSnapshot(`
      "warning wet-on-wet tiles/TB-1.md › layers › 1 › dried
      This layer went on while the one beneath was still wet
      Wet layers drag, mix and can lift or crawl in the kiln; let each one dry to the touch first, unless that is what is being tried. (Common practice, no published source.)"
    `);
  });

  it("is as it should be once the one beneath is dry", () => {
    expect(found(coat("soot"), coat("moss", { dried: "touch-dry" }))).toEqual([]);
    expect(found(coat("soot"), coat("moss", { dried: "overnight" }))).toEqual([]);
  });
});
