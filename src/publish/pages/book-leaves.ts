/**
 * Lays what a book holds on leaves. The numbers of its contents are right on paper only if every leaf
 * is one sheet, so lines are reckoned generously, for the shorter of the two usual papers (Letter,
 * 279 mm), and what does not fit goes on on a further leaf.
 */
import type { Block, Leaf, LeafHead } from "../../../templates/pages/book-leaf.ts";
import { continued } from "../../../templates/words/site/book.ts";
import type { Picture } from "../../catalogue/pictures.ts";

/** A leaf before its number is known. */
export type UnnumberedLeaf = Omit<Leaf, "number">;

/** How high a line of text is on paper: one and a half times 10.5 points. */
const millimetresALine = 5.6;

/** Lines of text on a sheet, of which 249 mm are printed on, but for two at its foot. */
const linesOnALeaf = 42;

/** Letters in a line across the sheet, in a language of narrow letters. */
const lettersInALine = 82;

/**
 * Lays blocks on as many leaves as they need, in their order.
 *
 * @param head of the first leaf
 * @param title what the others are the continuation of
 */
export function layOnLeaves(
  head: LeafHead,
  title: string,
  blocks: readonly Block[],
): readonly UnnumberedLeaf[] {
  const leaves: { head: LeafHead; blocks: Block[] }[] = [{ head, blocks: [] }];
  let left = linesOnALeaf - linesOfHead(head);
  for (const [i, block] of blocks.entries()) {
    const needs = linesOf(block) + (blocks[i - 1]?.what === block.what ? 0 : 1);
    if (needs > left) {
      leaves.push({ head: { what: "title", title: continued(title) }, blocks: [] });
      left = linesOnALeaf - 4;
    }
    leaves.at(-1)?.blocks.push(block);
    left -= needs;
  }
  return leaves;
}

function linesOfHead(head: LeafHead): number {
  if (head.what === "title") return 1 + 2 * across(head.title, 40);
  if (head.what === "cover") return linesHigh(100) + 2 * across(head.title, 30);
  const { names, sentence, key, steps, picture } = head;
  const told = [...steps, sentence, key].map((words) => across(words, lettersBeside));
  const beside = linesHigh(40) + 2 * across(names, 20) + told.reduce((a, b) => a + b, 0);
  return 1 + Math.max(beside, picture ? linesHigh(heightOf(picture)) : 0);
}

/** Letters in a line beside a photograph. */
const lettersBeside = 36;

const linesHigh = (millimetres: number) => Math.ceil(millimetres / millimetresALine);

/** A photograph is 84 mm wide, and 112 mm high at most: as `book.css` has it. */
function heightOf({ width, height }: Picture): number {
  return Math.min(112, (84 * height) / width);
}

/** Whether what was done to a tile fits beside its photograph. */
export function stepsFitBeside(steps: readonly string[]): boolean {
  return steps.reduce((sum, words) => sum + across(words, lettersBeside), 0) <= 20;
}

function linesOf(block: Block): number {
  switch (block.what) {
    case "step":
      return across(block.words, lettersInALine);
    case "line":
      return across(`${block.line.code} ${block.line.names}`, lettersInALine - 10);
    case "fact":
      return across(`${block.name} ${block.words}`, lettersInALine) + 0.5;
    case "said":
      return linesOfMarkdown(block.words) + 1;
    default:
      return across(block.note.message, 70) + across(block.note.hint, 70) + 2;
  }
}

/** How many lines a text needs where so many narrow letters fit in one. */
function across(text: string, letters: number): number {
  return Math.max(1, Math.ceil(widthOf(text) / letters));
}

/** In narrow letters: those of East Asian scripts are twice as wide. */
function widthOf(text: string): number {
  return [...text].reduce((sum, letter) => sum + (letter >= "\u2e80" ? 2 : 1), 0);
}

/** Lists and quotations within quotations leave less of a line; headings and tables need more. */
function linesOfMarkdown(words: string): number {
  return words.split("\n").reduce((sum, line) => {
    const [inset = ""] = /^[\s>*+-]*/u.exec(line) ?? [];
    const room = Math.max(12, lettersInALine - 8 - 4 * inset.length);
    return (
      sum + across(line, room) * (/^[#|]/u.test(line.trim()) ? 2 : 1) + (line === "" ? 0 : 0.25)
    );
  }, 0);
}

/** Words as pieces that a leaf can hold: its paragraphs, and the parts of those that are too long. */
export function paragraphsOf(markdown: string): readonly string[] {
  return markdown
    .split(/\n[^\S\n]*\n/u)
    .flatMap(cutLong)
    .filter((words) => words.trim() !== "");
}

/** So many letters, or lines, of somebody's words are kept together. */
const [mostLetters, mostRows] = [1400, 20];

function cutLong(words: string): readonly string[] {
  const rows = words.split("\n");
  if (rows.length > mostRows)
    return [
      ...cutLong(rows.slice(0, mostRows).join("\n")),
      ...cutLong(rows.slice(mostRows).join("\n")),
    ];
  if (widthOf(words) <= mostLetters) return [words];
  const letters = [...words];
  const half = Math.ceil(letters.length / 2);
  const gap = letters.findIndex((letter, i) => i >= half && /\s/u.test(letter));
  const at = gap < 0 ? half : gap + 1;
  return [...cutLong(letters.slice(0, at).join("")), ...cutLong(letters.slice(at).join(""))];
}

/** So much of a book is on one page of the site: a phone holds it, and a class of thirty is one part. */
const [mostElements, mostBytes] = [1400, 110_000];

/** Cuts a book into parts that each make a page of the site. */
export function cutIntoParts(leaves: readonly Leaf[]): readonly (readonly Leaf[])[] {
  const parts: Leaf[][] = [];
  let [elements, bytes] = [Infinity, Infinity];
  for (const leaf of leaves) {
    const weight = weightOf(leaf);
    if (elements + weight.elements > mostElements || bytes + weight.bytes > mostBytes) {
      parts.push([]);
      elements = 0;
      bytes = 0;
    }
    parts.at(-1)?.push(leaf);
    elements += weight.elements;
    bytes += weight.bytes;
  }
  return parts;
}

const elementsOf = { step: 1, fact: 2, said: 2, caution: 4, line: 4 } as const;

/** No less than the leaf has once it is rendered. */
function weightOf({ head, blocks }: Leaf): { readonly elements: number; readonly bytes: number } {
  const words = JSON.stringify(blocks);
  const marks = words.match(/[*_`[\]|>#~]|\\n/gu)?.length ?? 0;
  const drawn = head.what === "tile" ? head.view.lanes : [];
  const lanes = drawn.filter(({ lane }) => lane !== "firing").length;
  const pictures = head.what === "cover" ? head.tiles.length : 1;
  const steps = head.what === "tile" ? head.steps.length : 0;
  const ofBlocks = blocks.reduce((sum, { what }) => sum + elementsOf[what], 0);
  return {
    elements: 14 + 5 * pictures + 2 * lanes + steps + ofBlocks + marks,
    bytes: 700 + 900 * pictures + 350 * lanes + 100 * steps + 1.3 * Buffer.byteLength(words),
  };
}
