/** The orders that the wall can be put in. */
export const sorts = ["code", "run", "date", "near"] as const;
export type Sort = (typeof sorts)[number];
