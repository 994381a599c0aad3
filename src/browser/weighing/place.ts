/** Where a weighing is, kept for as long as the page's tab is open: a phone may lock, or load it anew. */

export interface Place {
  /** How many materials are in. */
  readonly at: number;
  /** What the form asked for. */
  readonly fields: readonly string[];
}

const key = `weighing ${location.pathname}`;

export function keepPlace(place: Place): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(place));
  } catch {
    // Nothing is kept where the browser keeps nothing: the page itself still knows where it is.
  }
}

/** Undefined where nothing is kept that could be understood. */
export function findPlace(): Place | undefined {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? "null");
    return isPlace(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function isPlace(kept: unknown): kept is Place {
  if (typeof kept !== "object" || kept === null || !("at" in kept) || !("fields" in kept))
    return false;
  const { at, fields } = kept;
  return (
    Number.isInteger(at) &&
    Array.isArray(fields) &&
    fields.every((field) => typeof field === "string")
  );
}
