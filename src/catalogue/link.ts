import type { Filed } from "../records/archive.ts";

/** A link to a record that has a name; null where there is no such record. */
export function linkTo(
  filed: Filed<{ readonly name: string }> | undefined,
  url: (id: string) => string,
): Link | null {
  return filed ? { id: filed.id, name: filed.record.name, url: url(filed.id) } : null;
}

/** A link to another entry of the catalogue. */
export interface Link {
  readonly id: string;
  readonly name: string;
  readonly url: string;
}
