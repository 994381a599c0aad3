/** A link to another entry of the catalogue. */
export interface Link {
  readonly id: string;
  readonly name: string;
  readonly url: string;
}
