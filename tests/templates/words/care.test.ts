import { expect, it } from "vitest";
import { careTopics } from "../../../templates/words/care.ts";

it("the care page says that no program finds a face or handwriting in a picture", () => {
  const words = careTopics.find(({ id }) => id === "photographs")?.words.join(" ") ?? "";
  expect(words).toMatch(/Faces.*handwriting.*no program here finds them/u);
});

it("every care topic says whose word decides", () => {
  for (const { decides } of careTopics) expect(decides).toMatch(/\w+.*[.]$/u);
});
