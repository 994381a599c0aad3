import { describe, expect, it } from "vitest";
import { readPartly, restorePath } from "../../src/reader/read-partly.ts";
import { glazeSchema } from "../../src/records/glaze.ts";
import { readAs, type SourceMap } from "../../src/records/read.ts";
import { tileSchema } from "../../src/records/tile.ts";
import { record, tellOf } from "../archive/archives.ts";

function partly(source: SourceMap) {
  const reading = readAs(tileSchema, source);
  if (reading.ok) throw new Error("no fault");
  return readPartly(tileSchema, source, reading.faults);
}

describe("of a faulty record", () => {
  it("a faulty field is taken out, and the rest is read", () => {
    expect(
      partly({ glazed: "soon", clya: "x", layers: [{ glaze: "soot", coats: "many" }] }),
    ).toEqual({
      record: { layers: [{ step: "glaze", glaze: "soot" }] },
      removed: [["glazed"], ["layers", 0, "coats"], ["clya"]],
    });
  });

  it("a step that says nothing is taken out whole, and the others keep their places", () => {
    const found = partly({ layers: [{ coats: "1" }, { glaze: "soot" }, {}, { glaze: "chalk" }] });
    expect(found?.record.layers.map((step) => step.step === "glaze" && step.glaze)).toEqual([
      "soot",
      "chalk",
    ]);
    expect(restorePath(["layers", 0, "glaze"], found?.removed ?? [])).toEqual([
      "layers",
      1,
      "glaze",
    ]);
    expect(restorePath(["layers", 1, "glaze"], found?.removed ?? [])).toEqual([
      "layers",
      3,
      "glaze",
    ]);
    expect(restorePath(["clay"], found?.removed ?? [])).toEqual(["clay"]);
  });

  it("what lacks a faulty field goes with it", () => {
    const source = {
      name: "A",
      kind: "glaze",
      ingredients: [
        { material: "silica", parts: "much" },
        { material: "whiting", parts: "1" },
      ],
      bought: { maker: ["x"] },
    };
    const reading = readAs(glazeSchema, source);
    const found = readPartly(glazeSchema, source, reading.ok ? [] : reading.faults);
    expect(found).toBeUndefined();
    const { bought: _, ...mixed } = source;
    const second = readAs(glazeSchema, mixed);
    expect(
      readPartly(glazeSchema, mixed, second.ok ? [] : second.faults)?.record.ingredients,
    ).toEqual([{ material: "whiting", parts: 1 }]);
  });

  it("one value where a list might stand is taken out as one", () => {
    expect(partly({ layers: [{ glaze: "soot" }], result: { surface: "wet", run: "1" } })).toEqual({
      record: { layers: [{ step: "glaze", glaze: "soot" }], result: [{ run: 1 }] },
      removed: [["result", "surface"]],
    });
  });

  it("nothing is left where it cannot do without", () => {
    expect(partly({})).toBeUndefined();
    expect(partly({ layers: [{}] })).toBeUndefined();
    expect(partly({ layers: "soot" })).toBeUndefined();
  });

  it("what the rest names is looked up, and told of at its own line", async () => {
    expect(
      await tellOf({
        "tiles/WL-002.md": record(
          "glazed: soon\nlayers:\n  - {coats: 1}\n  - glaze: sot\n  -\n  - {by: hand}\n  - glaze: chalk\n    over: [plum]",
        ),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:2:9 error: “soon” is not written as a day is written here [not-a-day]
        2 | glazed: soon
          |         ^
        Write year, month and day, as in 2026-10-14.

      tiles/WL-002.md:4:5 error: This step has none of glaze, fade, resist, remove, fired, so it does not say what was done [step-without-key]
        4 |   - {coats: 1}
          |     ^
        Begin the step with what was done, for example “- glaze: soot”.

      tiles/WL-002.md:5:12 error: There is no glaze “sot” [unknown-glaze]
        5 |   - glaze: sot
          |            ^
        Did you mean “soot”?

      tiles/WL-002.md:7:5 error: This step has none of glaze, fade, resist, remove, fired, so it does not say what was done [step-without-key]
        7 |   - {by: hand}
          |     ^
        Begin the step with what was done, for example “- glaze: soot”.

      tiles/WL-002.md:8:12 error: There is no glaze “chalk” [unknown-glaze]
        8 |   - glaze: chalk
          |            ^
        Write a record of it in recipes/glazes, or correct the id.

      tiles/WL-002.md:9:12 error: There is no glaze “plum” [unknown-glaze]
        9 |     over: [plum]
          |            ^
        Write a record of it in recipes/glazes, or correct the id.
      "
    `);
  });
});
