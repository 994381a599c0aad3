import fc from "fast-check";
import MarkdownIt from "markdown-it";
import { describe, expect, test } from "vitest";
import { longestSummary, renderSummary } from "../../src/reporting/markdown/render-summary.ts";
import {
  type Block,
  code,
  type Item,
  list,
  paragraph,
  type Summary,
  strong,
} from "../../templates/words/changes/summary.ts";

const settings = {
  pictureAddress: (file: string) => `https://forge.example/${encodeURIComponent(file)}`,
};

/** Every place that somebody's words can be in. */
function blocksWith(words: string): readonly Block[] {
  return [
    paragraph(words),
    paragraph("It says ", strong(words), ": ", words),
    paragraph("In ", code(words), ", line 3"),
    ...list([[words], [strong(words), words]]),
    ...list([[words]], true),
    { is: "table", head: ["Made of", words], rows: [[words, words]] },
    { is: "folded", words: "2 cautions", blocks: [paragraph(words), ...list([[words]])] },
    { is: "quotation", words },
    { is: "picture", file: words, alt: words, isShown: true },
    { is: "picture", file: words, alt: words, isShown: false },
  ];
}

function summaryOf(items: readonly Item[], heading = "Tiles"): Summary {
  return { title: "What this request changes", sections: [{ heading, items }], foot: "Foot." };
}

function itemOf(words: string): Item {
  return { name: words, heading: words, blocks: blocksWith(words), least: [] };
}

/** As a forge renders it, and then some: every tag is obeyed, and every address becomes a link. */
const render = (markdown: string) => new MarkdownIt({ html: true, linkify: true }).render(markdown);

/** The tags of a page, with what they lead to. */
function tagsOf(html: string): readonly string[] {
  return [...html.matchAll(/<(?!\/)([a-z][\w-]*)(?:[^>"]|"[^"]*")*>/giu)].map(([tag]) => tag);
}

const shapeOf = (words: string) =>
  tagsOf(render(renderSummary(summaryOf([itemOf(words)]), settings)))
    .map((tag) => tag.replace(/(?:alt|href|src)="[^"]*"/gu, ""))
    .filter((tag) => tag !== "<span>");

/** What forges make links of in the text of a page: people, requests, commits. */
const called =
  /(?:^|[^\p{L}\p{N}_`])(?:[@#!~%^][\p{L}\p{N}_]|GH-\d|(?:https?|ftp):\/\/|www\.\p{L})|\b[0-9a-f]{7,40}\b|:[\w+-]+:/iu;

const hostile = [
  "@maria see #12 and !7, $3 ~bug %9 ^1",
  "<script>alert(1)</script><img src=x onerror=alert(1)>",
  "</td></table><b>out</b> | a | b |",
  "[here](https://evil.example) ![p](https://evil.example/a.png) <https://evil.example>",
  "https://evil.example www.evil.example maria@evil.example evil.example",
  "`code` ``` ~~~ ```` `` `",
  "# head\n## head\n- list\n1. list\n> quote\n\n---\n\n===\n    indented\n| a |\n| - |\n",
  "[^1] [x] [ ] - [ ] task\n[x]: https://evil.example",
  "\u202eturned\u202c \u061c \u200b\u2066x\u2069 \ufeff \u0007 \u001b[31mred",
  "&lt;b&gt; &#64;maria &commat;maria &copy",
  "$x^2$ $`x`$ $$\nx\n$$ :smile: :+1: GH-12 deadbeefcafe owner/repo#3 owner/repo@deadbeef",
  "**bold** __bold__ *i* _i_ ~~gone~~ a*b*c \\* \\",
  "trailing # ## #",
  "'\"><a href=javascript:alert(1)>x</a> javascript:alert(1) mailto:x@y.example",
  "- dash first",
  "+ plus first",
  "= equals",
  "12) number first",
  "7. number first",
  "\tindented",
];

describe("the summary of a request, in Markdown", () => {
  test.each(hostile)("has no more tags than with plain words: %j", (words) => {
    expect(shapeOf(words)).toEqual(shapeOf(words.split("\n\n").fill("plain").join("\n\n")));
  });

  test.each(hostile)("calls nobody, and leads nowhere: %j", (words) => {
    const markdown = renderSummary(summaryOf([itemOf(words)]), settings);
    const html = render(markdown);
    const text = html.replace(/<code>.*?<\/code>/gsu, "").replace(/<[^>]*>/gu, "\0");
    expect(text).not.toMatch(called);
    const links = [...html.matchAll(/(?:href|src)="([^"]*)"/gu)].map(([, to]) => to);
    expect(links.every((to) => to?.startsWith("https://forge.example/"))).toBe(true);
    expect(markdown).not.toMatch(/[\u200e\u200f\u202a-\u202e\u2066-\u2069\u061c\ufeff]/u);
  });

  test("has no more tags whatever is written, and reads as it was written", () => {
    const signs = fc.constantFrom(..."@#<>[]()!|`*_~$&\\\"':/.-+=%^{} \n\t1a".split(""));
    const words = fc.oneof(
      fc.array(signs, { minLength: 1, maxLength: 24 }).map((parts) => `x${parts.join("")}`),
      fc.array(signs, { minLength: 1, maxLength: 24 }).map((parts) => `${parts.join("")}x`),
      fc.string({ unit: "binary", maxLength: 20 }).map((text) => `${text}x`),
    );
    const plain = new Map([false, true].map((two) => [two, shapeOf(two ? "a\n\nb" : "plain")]));
    fc.assert(
      fc.property(words, (text) => {
        const paragraphs = text.split(/\n\s*\n/u).filter((each) => each.trim() !== "");
        fc.pre(paragraphs.length <= 2);
        expect(shapeOf(text)).toEqual(plain.get(paragraphs.length === 2));
      }),
      { numRuns: 100 },
    );
  });

  test("reads as it was written", () => {
    const words = '1. It\'s 3 × 4 = 12 | "50%" <of> a_b_c & more* [see] #4 @noon';
    const html = render(
      renderSummary(
        summaryOf([{ name: "x", heading: null, least: [], blocks: [paragraph(words)] }]),
        settings,
      ),
    );
    const text = html.replace(/<[^>]*>/gu, "").replace(/\u200b|\u200a/gu, "");
    const decoded = text
      .replace(/&lt;/gu, "<")
      .replace(/&gt;/gu, ">")
      .replace(/&quot;/gu, '"')
      .replace(/&amp;/gu, "&");
    expect(decoded).toContain(words);
  });
});

describe("a long summary", () => {
  const long = (name: string, letters: number, least: readonly Block[] = []): Item => ({
    ...{ name, heading: name, least },
    blocks: [...least, paragraph("word ".repeat(letters / 5))],
  });

  test("is never longer than a comment may be, whatever is in it", () => {
    const many = Array.from({ length: 3000 }, (_, i) => long(`T-${i} ${"<".repeat(50)}`, 500));
    const huge = [long("T-1", 200_000, [paragraph("<".repeat(100_000))])];
    for (const items of [many, huge])
      expect(renderSummary(summaryOf(items), settings).length).toBeLessThan(longestSummary);
  });

  test("tells in short what has no room, keeps its cautions, and names and counts it", () => {
    const caution = paragraph(strong("Caution:"), " Lead.");
    const items = Array.from({ length: 10 }, (_, i) => long(`T-${i}`, 9_000, [caution]));
    const markdown = renderSummary(summaryOf(items), settings);
    expect(markdown.match(/Lead\./gu)).toHaveLength(10);
    expect(markdown.match(/(?:word )+/gu)).toHaveLength(6);
    expect(markdown).toContain(
      "**Told in short here, for want of room; their files tell the rest** (4): T-6, T-7, T-8, T-9.",
    );
  });

  test("tells some whole and names the others, sooner than all by their headings alone", () => {
    const items = Array.from({ length: 500 }, (_, i) => long(`T-${i}`, 1000));
    const markdown = renderSummary(summaryOf(items), settings);
    expect(markdown.match(/(?:word )+/gu)?.length).toBeGreaterThan(50);
    expect(markdown.match(/^#### /gmu)).toHaveLength(markdown.match(/(?:word )+/gu)?.length ?? 0);
    expect(markdown).toMatch(
      /Not told here, for want of room; see their files\*\* \(\d+\): T-5\d, .+ and \d+ more\.\n/u,
    );
  });

  test("names what has no room at all, and counts it", () => {
    const items = [long("T-1", 100), long("T-2", 100, [paragraph("x".repeat(70_000))])];
    expect(renderSummary(summaryOf(items), settings)).toContain(
      "**Not told here, for want of room; see their files** (1, 1 of them with cautions): T-2.",
    );
  });
});
