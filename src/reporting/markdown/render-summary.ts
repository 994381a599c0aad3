/** The summary of a request as Markdown, for a forge's page and the mail that it sends. */
import type {
  Block,
  Item,
  Line,
  Section,
  Summary,
} from "../../../templates/words/changes/summary.ts";
import { beginLine, escapeAttribute, escapeCode, escapeStrong, escapeWords } from "./escape.ts";

/** A comment of 65,536 letters is the longest that one forge takes (from memory): this leaves room beside it. */
export const longestSummary = 60_000;

/** Wide enough to see a surface, and no wider than a phone. */
const pictureWidth = 280;

export interface MarkdownSettings {
  /** The address of a picture by its file in the archive; null where it has none yet. */
  readonly pictureAddress: (file: string) => string | null;
}

/** What stands for an item: all of it, the least of it, or its name alone. */
interface Written {
  readonly item: Item;
  /** Null where there was no room for it. */
  text: string | null;
  readonly least: string;
  readonly whole: string;
}

/**
 * Renders a summary, never longer than `longestSummary`: what does not fit is told in short, what does
 * not fit even so is named, and nothing is cut in the middle.
 */
export function renderSummary(summary: Summary, settings: MarkdownSettings): string {
  const sections = summary.sections.map(({ heading, items }) => ({
    heading,
    items: items.map((item) => writeItem(item, settings)),
  }));
  const head = `## ${escapeWords(summary.title)}`;
  const foot = `<sub>${escapeWords(summary.foot)}</sub>`;
  const left = makeRoom(sections, longestSummary - head.length - foot.length - room);
  const told = sections.flatMap(({ heading, items }) => {
    const kept = items.flatMap(({ text }) => text ?? []);
    return kept.length === 0 ? [] : [...headingOf(heading), ...kept];
  });
  return [head, ...told, ...left, foot].join("\n\n");
}

/** Kept for the headings of sections and for what is said of what did not fit. */
const room = 4000;

interface WrittenSection extends Omit<Section, "items"> {
  readonly items: readonly Written[];
}

function headingOf(heading: string | null): readonly string[] {
  return heading === null ? [] : [`### ${escapeWords(heading)}`];
}

function writeItem(item: Item, settings: MarkdownSettings): Written {
  const heading = item.heading === null ? [] : [`#### ${escapeWords(item.heading)}`];
  const write = (blocks: readonly Block[]) =>
    [...heading, ...blocks.map((block) => renderBlock(block, settings))].join("\n\n");
  return { item, text: null, least: write(item.least), whole: write(item.blocks) };
}

/** Gives room to what may never be left out, then to the whole of each in turn; says what had to be left out. */
function makeRoom(sections: readonly WrittenSection[], most: number): readonly string[] {
  const all = sections.flatMap(({ items }) => items);
  let left = most;
  const writeIf = (written: Written, text: string) => {
    const more =
      text.length + between - (written.text === null ? 0 : written.text.length + between);
    if (more > left) return;
    left -= more;
    written.text = text;
  };
  for (const written of all) if (written.item.least.length > 0) writeIf(written, written.least);
  for (const written of all) writeIf(written, written.whole);
  return [
    ...leftOut(
      all.filter(({ text, whole }) => text !== null && text !== whole),
      "Told in short here, for want of room; their files tell the rest",
    ),
    ...leftOut(
      all.filter(({ text }) => text === null),
      "Not told here, for want of room; see their files",
    ),
  ];
}

/** Letters between two items. */
const between = 2;

function leftOut(items: readonly Written[], why: string): readonly string[] {
  if (items.length === 0) return [];
  const names: string[] = [];
  for (const { item } of items) {
    const name = escapeWords(item.name);
    if (names.join(", ").length + name.length > longestNames) break;
    names.push(name);
  }
  const others = items.length - names.length;
  const more = others > 0 ? ` and ${others} more` : "";
  const loud = items.filter(({ item, text }) => text === null && item.least.length > 0).length;
  const cautions = loud > 0 ? `, ${loud} of them with cautions` : "";
  return [`**${why}** (${items.length}${cautions}): ${names.join(", ")}${more}.`];
}

/** Letters of Markdown: the names of hundreds of tiles. */
const longestNames = 1500;

function renderBlock(block: Block, settings: MarkdownSettings): string {
  switch (block.is) {
    case "paragraph":
      return renderLine(block.line);
    case "list":
      return block.items
        .map((line, i) => `${block.numbered ? `${i + 1}.` : "-"} ${renderLine(line)}`)
        .join("\n");
    case "table":
      return renderTable(block.head, block.rows);
    case "folded":
      return renderFolded(block, settings);
    case "quotation":
      return renderQuotation(block.words);
    case "picture":
      return renderPicture(block, settings);
  }
}

function renderLine(line: Line): string {
  const pieces = line.map((piece) => {
    if (typeof piece === "string") return escapeWords(piece);
    return "code" in piece ? escapeCode(piece.code) : escapeStrong(piece.strong);
  });
  return beginLine(pieces.join(""));
}

/** Forges fold it; a mail shows all of it. Markdown in it needs its empty lines. */
function renderFolded(
  { words, blocks }: Extract<Block, { is: "folded" }>,
  settings: MarkdownSettings,
): string {
  const within = blocks.map((block) => renderBlock(block, settings)).join("\n\n");
  return `<details><summary>${escapeAttribute(words)}</summary>\n\n${within}\n\n</details>`;
}

function renderTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]) => `| ${cells.map(escapeWords).join(" | ")} |`;
  const rule = `| :-- |${" --: |".repeat(head.length - 1)}`;
  return [row(head), rule, ...rows.map(row)].join("\n");
}

/** Paragraphs stay apart; whatever a line of them begins with, it begins with a quotation mark here. */
function renderQuotation(words: string): string {
  const paragraphs = words.split(/\n\s*\n/u).filter((each) => each.trim() !== "");
  return `> “${paragraphs.map(escapeWords).join("<br><br>")}”`;
}

function renderPicture(
  { file, alt, isShown }: Extract<Block, { is: "picture" }>,
  { pictureAddress }: MarkdownSettings,
): string {
  const address = pictureAddress(file);
  if (address === null) return `${escapeWords(alt)}: ${escapeCode(file)}`;
  const to = escapeAttribute(address);
  if (!isShown) return `<a href="${to}">${escapeWords(alt)}</a>`;
  return `<a href="${to}"><img src="${to}" width="${pictureWidth}" alt="${escapeAttribute(alt)}"></a>`;
}
