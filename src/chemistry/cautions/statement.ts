/** What is published, or said in the trade, of a hazard. */

/**
 * What a statement rests on: its source was read (`checked`), it follows from the chemistry of the
 * material (`derived`), or potters say so and no source was found (`common practice`).
 */
export type Basis = "checked" | "common practice" | "derived";

export interface Source {
  readonly source: string;
  readonly tag: Basis;
}

/** A clause that follows the name of the substance, and where it is from. */
export interface Statement extends Source {
  readonly says: string;
}

export const commonPractice: Source = {
  source: "common practice, no source",
  tag: "common practice",
};

export function checked(says: string, source: string): Statement {
  return { says, source, tag: "checked" };
}

export function practised(says: string): Statement {
  return { says, ...commonPractice };
}

/** What the World Health Organization's agency for research on cancer has classed. */
export function cancer(says: string, volume: string): Statement {
  return checked(says, `IARC Monographs vol. ${volume}`);
}
