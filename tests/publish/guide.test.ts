/** The guide says the same in the repository and on every site. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readGuide } from "../../src/publish/guide.ts";
import { renderWords } from "../../templates/parts/own-words.ts";
import { project } from "../house/files.ts";

const guide = readGuide();

test("every page of the guide that lies in docs/guide is on the site, and no other", () => {
  const files = readdirSync(join(project, "docs/guide")).sort();
  expect(guide.map(({ stem }) => `${stem}.md`).sort()).toEqual(files);
});

test("each begins with its title and goes on in words", () => {
  for (const { stem, title, words } of guide) {
    expect(title, stem).toMatch(/^[A-Z][a-z ]+$/u);
    expect(words.length, stem).toBeGreaterThan(500);
  }
});

test("a link from one page leads to the other, and every such link to one that is there", () => {
  const asked: string[] = [];
  for (const { words } of guide)
    renderWords(words, {
      lowered: 0,
      addressOf: (page) => {
        asked.push(page);
        return `${page}.html`;
      },
    });
  expect(asked).toContain("photograph-a-tile");
  const stems = guide.map(({ stem }) => stem);
  expect(asked.filter((page) => !stems.includes(page))).toEqual([]);
});

test("a page that is not there is its words alone", () => {
  const html = renderWords("See [the attic](attic.md).", {
    lowered: 0,
    addressOf: () => undefined,
  });
  expect(html).toBe("<p>See the attic.</p>\n");
});
