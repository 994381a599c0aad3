/** A book loses nothing on its way onto leaves, and no part of it is larger than a page may be. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { leavesOf } from "../../../src/publish/pages/book.ts";
import { cutIntoParts, layOnLeaves, paragraphsOf } from "../../../src/publish/pages/book-leaves.ts";
import { makeSite } from "../../../src/publish/pages/site.ts";
import { renderPage } from "../../../src/publish/write-pages.ts";
import type { Block } from "../../../templates/pages/book-leaf.ts";
import { catalogueOf } from "../../bench/catalogue-run.ts";
import { makeLargeArchive } from "../../bench/large-archive.ts";
import { listPages } from "../../support/list-pages.ts";

const block: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ what: fc.constant("said" as const), words: fc.string(), by: fc.constant(null) }),
  fc.record({ what: fc.constant("fact" as const), name: fc.string(), words: fc.string() }),
);

test("every block is on a leaf, in its order, and each leaf but the first says what it continues", () => {
  fc.assert(
    fc.property(fc.array(block, { maxLength: 80 }), (blocks) => {
      const [first, ...more] = layOnLeaves({ what: "title", title: "EV-1" }, "EV-1", blocks);
      const leaves = [...(first ? [first] : []), ...more];
      expect(leaves.flatMap((leaf) => leaf.blocks)).toEqual(blocks);
      expect(more.every(({ head }) => "title" in head && head.title === "EV-1, continued")).toBe(
        true,
      );
      const numbered = leaves.map((leaf, i) => ({ ...leaf, number: i + 1 }));
      expect(cutIntoParts(numbered).flat()).toEqual(numbered);
    }),
  );
});

test("words that are cut into paragraphs keep every letter that is no space", () => {
  const bare = (text: string) => text.replace(/\s/gu, "");
  fc.assert(
    fc.property(fc.string({ maxLength: 5000 }), fc.integer({ min: 1, max: 9 }), (text, times) => {
      const words = `${text}\n`.repeat(times);
      expect(bare(paragraphsOf(words).join(""))).toBe(bare(words));
    }),
  );
});

test("a class of thirty is one part, and of a large set every tile has its sheet in a part of bounded size", () => {
  const catalogue = catalogueOf(makeLargeArchive(400));
  const site = makeSite(catalogue, { under: "", waiting: [] });
  for (const set of catalogue.sets) {
    const codes = leavesOf(site, set).flatMap(({ head }) => ("code" in head ? head.code : []));
    expect(codes).toEqual(set.tiles);
  }
  const sizes = listPages(catalogue)
    .filter(({ path }) => path.startsWith("book/"))
    .map((page) => {
      const html = renderPage(page);
      return {
        elements: html.match(/<[a-z]/gu)?.length ?? 0,
        leaves: html.split('class="leaf"').length - 1,
      };
    });
  expect(sizes.length).toBeGreaterThan(1);
  expect(Math.max(...sizes.map(({ elements }) => elements))).toBeLessThan(1500);
  expect(Math.max(...sizes.map(({ leaves }) => leaves))).toBeGreaterThanOrEqual(30);
});
