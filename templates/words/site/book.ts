/** What the book of a set says. */

export const bookTitle = (set: string) => `The book of ${set}`;

export const aboutBook = "A sheet for each tile, with a cover and contents, to read or to print.";

/** On the cover, for whoever is given the book and nothing else. */
export const bookCare =
  "These sheets report what was tried and what came of it. They certify nothing, least of all for food: a glaze's label, its safety sheet and a laboratory decide.";

export function photographAlt(code: string, names: string): string {
  return `Tile ${code}: ${names}`;
}

export const contentsTitle = "Contents";

/** `EV-104, continued` */
export function continued(title: string): string {
  return `${title}, continued`;
}

/** What is beside the steps of a tile on its sheet. */
export const bookFacts = {
  kiln: "In the kiln:",
  outcome: "What came out:",
  nextTime: "Next time:",
} as const;
