import { describe, expect, test } from "vitest";
import { wordAlone, wordOf } from "../../../src/browser/wall/phrases.ts";
import { facetNames as names } from "../../../src/terms/facets.ts";
import { finderPhrases as phrases } from "../../../templates/words/site/finder.ts";

describe("the lists that find tiles", () => {
  test("hold values that begin with the word one types", () => {
    for (const name of names) expect(wordOf(name, "satin")).toMatch(/^satin/u);
  });

  test("are heard under names of their own, each with the words that are seen before it", () => {
    const spoken = names.map((name) => phrases[name].spoken);
    expect(new Set(spoken).size).toBe(names.length);
    for (const name of names) expect(phrases[name].spoken).toContain(phrases[name].lead);
  });

  test("say what a number is where it stands alone", () => {
    expect([wordOf("cone", "6"), wordAlone("cone", "6")]).toEqual(["6", "cone 6"]);
  });
});
