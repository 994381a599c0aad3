/**
 * What a page is about as linked data (JSON-LD 1.1, in the words of schema.org): a block of data in its
 * head that no browser runs. It says nothing that the page does not say.
 */
import type { VNode } from "preact";
import type { Thing } from "schema-dts";

/** One thing that a page is about. */
export type Linked = Exclude<Thing, string>;

export function DataBlock({ things }: { readonly things: readonly Linked[] }): VNode | null {
  if (things.length === 0) return null;
  const data = { "@context": "https://schema.org", "@graph": things };
  return (
    <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: toScriptText(data) }} />
  );
}

/**
 * A value as JSON that no parser of HTML or of scripts takes for more than text, whatever words are in
 * it: what could end the element, or a comment in it, is written as JSON writes a letter by its number.
 */
export function toScriptText(value: object): string {
  return JSON.stringify(value).replace(
    /[<>&\u2028\u2029]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
