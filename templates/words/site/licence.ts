/** What is said of a site's licence. */

/** Before the licence, where it is known which one is meant. */
export const asLicenceSays = "You may use the records and the photographs as this licence says:";

/** What the studio says in words of its own, of which nothing more is known. */
export function inOwnWords(words: string): string {
  return `What you may do with the records and the photographs: ${words}`;
}

/** Where it says nothing: then nobody may take it that all is allowed. */
export function nothingSaid(studio: string): string {
  return `${studio} has not said yet what you may do with its records and photographs: ask before you use them.`;
}
