import { expect, it } from "vitest";
import { careTopics } from "../../../../templates/words/care/topics.ts";

it("the care page says that no program finds a face or handwriting in a picture", () => {
  const words = careTopics.find(({ id }) => id === "photographs")?.words.join(" ") ?? "";
  expect(words).toMatch(/Faces.*handwriting.*no program here finds them/u);
});

it("every care topic says whose word decides", () => {
  for (const { decides } of careTopics) expect(decides).toMatch(/\w+.*[.]$/u);
});

const everything = careTopics.flatMap(({ words, decides }) => [...words, decides]).join(" ");

it("the care page names the filter that stops fine dust, and what a filter does not stop", () => {
  expect(everything).toContain(
    "with a filter of class FFP3 or P100 or what the safety sheet asks for. Such a filter stops dust. It stops no gas.",
  );
  expect(everything).not.toContain("does nothing");
});

it("the care page says it as it is said at the kiln", () => {
  for (const said of [
    "outdoors, stand upwind and at a distance",
    "keep out of the kiln a piece that feels cold: it is still damp.",
    "a tile that cannot be read, or is stuck to the shelf, tells nothing.",
  ])
    expect(everything).toContain(said);
  expect(everything).not.toMatch(/windward|cheek|stands fast/u);
});
