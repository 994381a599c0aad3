import { expect, test } from "vitest";
import { findRestart } from "../../../src/records/coat-stack.ts";
import { keySentences } from "../../../templates/drawing/drawing-key.tsx";
import { layerView, type Paint } from "../../../templates/drawing/layer-view.ts";
import { coat, cone, fired } from "../../checks/support.ts";
import { withCones } from "../support/layers.ts";

const six = { clay: "Buff", cone: cone("6") };
const paints: Readonly<Record<string, Paint>> = {
  sky: { name: "Sky", kind: "glaze", colour: "#aabbcc", measured: six },
  mist: { name: "Mist", kind: "glaze", colour: "#cccccc", measured: six },
  kelp: { name: "Kelp", kind: "glaze", colour: "#336644", measured: { clay: null, cone: null } },
  soot: { name: "Soot", kind: "glaze", colour: null, measured: null },
};

function keyOf(glazes: readonly string[], clay: string | null = "buff") {
  const steps = [fired(null, "bisque"), ...glazes.map((glaze) => coat(glaze)), fired(null)];
  const paintOf = (id: string): Paint => paints[id] as Paint;
  return keySentences(
    layerView({
      texture: "smooth",
      clay,
      steps: withCones(steps),
      restart: findRestart(steps),
      paintOf,
    }),
  );
}

test("the key names each glaze once, with where it measured its colour", () => {
  expect(keyOf(["sky", "mist", "sky"])).toEqual([
    "Colours as each glaze measured by itself: Sky and Mist on Buff at cone 6.",
  ]);
  expect(keyOf(["sky", "kelp"])).toEqual([
    "Colours as each glaze measured by itself: Sky on Buff at cone 6; Kelp.",
  ]);
});

test("what is hatched is said to be, and why", () => {
  expect(keyOf(["soot", "sky"])).toEqual([
    "Colours as each glaze measured by itself: Sky on Buff at cone 6.",
    "Hatched: Soot, not yet measured by itself all over a tile.",
  ]);
  expect(keyOf(["soot"], "anyone's guess")).toEqual([
    "Hatched: Soot, not yet measured by itself all over a tile.",
    "The clay is hatched: its colour is not recorded.",
  ]);
});

test("a bare tile of a known clay needs no key", () => {
  expect(keyOf([])).toEqual([]);
});
