import { describe, expect, test } from "vitest";
import { coatWords, stepWords, whereWords } from "../../../../templates/words/tile/steps.ts";
import { coat, fired, removed, resist } from "../../../checks/support.ts";

const nameOf = (id: string) => ({ soot: "Soot", plum: "Plum", sky: "Sky" })[id] ?? id;
const words = (step: Parameters<typeof stepWords>[0]) => stepWords(step, nameOf);

describe("a step in words", () => {
  test("names the glaze, its coats and how they went on", () => {
    expect(words(coat("soot", { coats: 2, by: "brush" }))).toBe("Soot: 2 coats, brushed");
    expect(words(coat("soot", { coats: null }))).toBe("Soot");
  });

  test("tells all that was written down, in one order", () => {
    const step = coat("soot", {
      by: "dip",
      where: ["left", "rim"],
      thickness: "thin",
      seconds: 3,
      gravity: 1.5,
      dried: "wet-on-wet",
      detail: "held by the foot",
    });
    expect(coatWords(step)).toBe(
      "1 coat, dipped, on the left and at the rim, thin, 3 seconds, at SG 1.50, wet on wet, held by the foot",
    );
  });

  test("says which way a fade runs, and that a touch-up is one", () => {
    expect(words(coat(["plum", "sky"], { along: "rim to foot" }))).toBe(
      "Plum fading to Sky: 1 coat, from rim to foot",
    );
    expect(coatWords(coat("plum", { touchUp: true }))).toBe("a touch-up, 1 coat");
  });

  test("tells resists, what was taken off, and firings", () => {
    expect(words(resist("wax", ["motif"]))).toBe("Wax resist, on the motif");
    expect(words(removed("wipe", ["raised"]))).toBe("Wiped, on the raised parts");
    expect(words(removed("all"))).toBe("Everything washed off, and begun again");
    expect(words({ ...fired("g-1"), shelf: "top" })).toBe("Glaze firing, g-1, top shelf");
    expect(words({ ...fired("g-1"), shelf: "by the bag wall" })).toBe(
      "Glaze firing, g-1, by the bag wall",
    );
  });

  test("leaves “all over” unsaid", () => {
    expect(whereWords(["all"])).toBe("");
  });
});
