import { describe, expect, it } from "vitest";
import { type Draft, emptyDraft } from "../../../src/browser/add/draft.ts";
import { examine } from "../../../src/browser/add/examine.ts";
import { newCoat, newFiring, newMark } from "../../../src/browser/add/steps.ts";
import { eveningSite as site } from "./site.ts";

const layers = [
  newFiring(0, "b-1"),
  { ...newCoat(1, "soot"), coats: "2", by: "brush" },
  { ...newMark(2, "resist", "wax"), where: ["motif"] as const },
  { ...newCoat(3, "chalk"), coats: "1", by: "dip" },
];

const draft = (part: Partial<Draft> = {}): Draft => ({
  ...emptyDraft(1),
  ...{ set: "evening", code: "EV-103", glazed: "2026-10-14", layers },
  ...part,
});

describe("the checks of the form", () => {
  it("write the record that is handed in", () => {
    const { text } = examine(draft({ notes: "Dripped a little.\n---\nat the foot" }), site);
    expect(text).toBe(`---
glazed: 2026-10-14
layers:
  - {fired: b-1}
  - {glaze: soot, coats: 2, by: brush}
  - {resist: wax, where: [motif]}
  - {glaze: chalk, coats: 1, by: dip}
---
Dripped a little.
---
at the foot
`);
  });

  it("tell of it what the build would, at the field that it belongs to", () => {
    const { findings } = examine(
      draft({ layers: [...layers, newMark(4, "resist", "latex")] }),
      site,
    );
    expect(findings.map(({ severity, code, path }) => [severity, code, ...path])).toEqual([
      ["warning", "resist-not-peeled", "layers", 4, "resist"],
      ["warning", "light-over-dark", "layers", 3, "glaze"],
    ]);
  });

  it("find a typed number that is none, and a tile with nothing on it", () => {
    const [step] = examine(
      draft({ layers: [{ ...newCoat(0, "chalk"), coats: "two or three" }] }),
      site,
    ).findings;
    expect(step).toMatchObject({ severity: "error", path: ["layers", 0, "coats"] });
    expect(step?.message).toContain("“two or three”");
    const [empty] = examine(draft({ layers: [] }), site).findings;
    expect(empty).toMatchObject({ severity: "error", path: ["layers"] });
  });

  it("only mind a glaze that this site does not list: the studio may have a record of it", () => {
    const { findings } = examine(draft({ layers: [newCoat(0, "plum")] }), site);
    expect(findings).toMatchObject([{ severity: "warning", code: "unknown-glaze" }]);
  });

  it.each([
    ["script", "<script>alert(1)</script>"],
    ["signs that turn letters around", "abc \u202e fed"],
    ["10 kB", "x".repeat(10_240)],
    ["what looks like YAML", "a: [1, {b: *c, !!js/function d}] # e\n---\nf"],
    ["lone halves of letters", "\ud83d"],
    ["no text at all", "   \n\t "],
  ])("harm nothing with %s in every field", (_, words) => {
    const coat = { ...newCoat(0, "soot"), ...{ coats: words, detail: words, seconds: words } };
    const worst = draft({ notes: words, maker: words, glazed: words, layers: [coat] });
    const { text, findings } = examine(worst, site);
    expect(text.startsWith("---\n")).toBe(true);
    for (const { message, hint } of findings) expect(`${message} ${hint}`).not.toContain("Error");
    expect(findings.some(({ severity }) => severity === "error")).toBe(words.trim() !== "");
  });
});
