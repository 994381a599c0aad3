/** A page among those that a long list was cut into. */
export interface Turn {
  /** The address of the first of them. */
  readonly url: string;
  /** The place of this page among them, from 0. */
  readonly here: number;
  readonly pages: number;
  /** How many entries the pages before this one have, how many it has, and how many all have. */
  readonly before: number;
  readonly shown: number;
  readonly total: number;
}
