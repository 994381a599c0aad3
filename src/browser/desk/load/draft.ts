/** The load as it stands on the page: which codes are on which shelf. */
import type { Shelf } from "../../../loads/shelves.ts";
import { findCodes, idKey } from "../../../terms/ids.ts";

export class Draft {
  private readonly codesBy: Map<string, string[]>;

  constructor(shelves: readonly Shelf[]) {
    this.codesBy = new Map(shelves.map(({ name, codes }) => [name, [...codes]]));
  }

  get shelves(): readonly Shelf[] {
    return [...this.codesBy].map(([name, codes]) => ({ name, codes }));
  }

  addShelf(name: string): void {
    if (!this.codesBy.has(name)) this.codesBy.set(name, []);
  }

  /** The shelf that a code is on. */
  shelfOf(code: string): string | undefined {
    const isIt = (other: string) => idKey(other) === idKey(code);
    return [...this.codesBy].find(([, codes]) => codes.some(isIt))?.[0];
  }

  put(code: string, shelf: string): void {
    this.take(code);
    this.addShelf(shelf);
    this.codesBy.get(shelf)?.push(code);
  }

  take(code: string): void {
    for (const [name, codes] of this.codesBy)
      this.codesBy.set(
        name,
        codes.filter((other) => idKey(other) !== idKey(code)),
      );
  }
}

/** The codes somebody typed: one, several, or ranges of them. */
export function typedCodes(text: string): readonly string[] {
  const parts = text.split(/[\s,;]+/u).filter((part) => part !== "");
  return parts.flatMap((part) => findCodes(part) ?? [part]);
}
