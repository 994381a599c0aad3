/** What tiles on the wall are told apart by, in the order in which a reader is asked for them. */
export const facetNames = [
  "cone",
  "surface",
  "colour",
  "top",
  "over",
  "shade",
  "clay",
  "effect",
  "fault",
  "glaze",
  "way",
  "texture",
  "shape",
  "atmosphere",
  "heat",
  "again",
  "set",
  "maker",
  "stage",
] as const;
export type FacetName = (typeof facetNames)[number];
