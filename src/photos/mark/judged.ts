/** What is known of a mark once it was looked at. */

/** In any unit: only how wide it is for its height counts. */
export interface MarkSize {
  readonly width: number;
  readonly height: number;
}

/** What is wrong with a mark, for whoever made it. */
export interface MarkFault {
  readonly message: string;
  readonly hint: string;
}
