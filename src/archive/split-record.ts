/**
 * Splits a record's file into front matter and notes. gray-matter does the splitting and nothing
 * else: every engine it has is put out of action, for it would run JavaScript as readily as read
 * YAML.
 */
import matter from "gray-matter";
import type { TextFault } from "../reader/problem-of-file.ts";
import { mostEmptyLines } from "../terms/limits.ts";

export type Split =
  | {
      readonly ok: true;
      /** The YAML, its lines numbered as in the file. */
      readonly yaml: string;
      readonly notes: string;
    }
  | { readonly ok: false; readonly fault: TextFault };

/**
 * Splits a record's file.
 *
 * @param text the whole file, its lines ending in `\n`
 */
export function splitRecord(text: string): Split {
  const [first = "", ...rest] = text.split("\n");
  const end = rest.findIndex((line) => line.startsWith("---") || isLikeFence(line));
  const fault = text.trim() === "" ? emptyFile : findFenceFault(first, rest, end);
  if (fault) return { ok: false, fault: { severity: "error", column: 1, ...fault } };
  const { matter: yaml, content } = matter(text, splitOnly);
  return { ok: true, yaml, notes: content.replace(/^(?:[ \t]*\n)+/u, "").trimEnd() };
}

const neverRun = {
  parse: (): never => {
    throw new Error("Front matter is read by Tilebook's own YAML reader, and only there");
  },
};

const splitOnly = {
  engines: {
    yaml: { parse: () => ({}) },
    coffee: neverRun,
    coffeescript: neverRun,
    cson: neverRun,
    javascript: neverRun,
    js: neverRun,
    json: neverRun,
    toml: neverRun,
  },
};

type FenceFault = Omit<TextFault, "severity" | "column">;

/** @param end the index among the rest of the lines of the one that looks like the second fence */
function findFenceFault(
  first: string,
  rest: readonly string[],
  end: number,
): FenceFault | undefined {
  if (isLikeFence(first)) return notPlainFence(first, 1);
  if (!/^---(?!-)/u.test(first)) return noFrontMatter;
  if (!["", "yaml", "yml"].includes(first.slice(3).trim().toLowerCase()))
    return otherLanguage(first);
  const fence = rest[end];
  if (fence === undefined) return notClosed(rest);
  if (isLikeFence(fence)) return notPlainFence(fence, end + 2);
  if (fence.slice(3).trim() !== "") return badFence(end + 2);
  return findEmptiness(rest.slice(0, end));
}

/** gray-matter looks through lines that are empty once for each of them. */
function findEmptiness(head: readonly string[]): FenceFault | undefined {
  let empty = 0;
  for (const [i, line] of head.entries()) {
    empty = line.trim() === "" ? empty + 1 : 0;
    if (empty > mostEmptyLines) return tooEmpty(i + 2);
  }
  return undefined;
}

function tooEmpty(line: number): FenceFault {
  return {
    code: "too-many-empty-lines",
    message: `More than ${mostEmptyLines} empty lines follow each other among the fields`,
    hint: "Take them out.",
    line,
  };
}

/** What an editor makes of three hyphens: long dashes, another sign that looks like them, a space before. */
function isLikeFence(line: string): boolean {
  const text = line.trim();
  return text.length <= 5 && text !== "---" && /^[-‐‑‒–—―−]+$/u.test(text) && /[^-]/u.test(text);
}

function notPlainFence(line: string, number: number): FenceFault {
  return {
    code: "fence-of-long-dashes",
    message: `“${line.trim()}” is made of long dashes, and the fields stand between two lines of three hyphens`,
    hint: "Type “---” in its place. If the editor joins the hyphens, switch off its “smart dashes”.",
    line: number,
  };
}

const emptyFile: FenceFault = {
  code: "empty-file",
  message: "The file is empty",
  hint: "Write the record into it, or take the file out of the archive.",
  line: 1,
};

const noFrontMatter: FenceFault = {
  code: "no-front-matter",
  message: "The file does not begin with a line “---”, so none of its fields can be found",
  hint: "Put a line “---” at the very top, the fields beneath it, and another “---” after them.",
  line: 1,
};

function notClosed(rest: readonly string[]): FenceFault {
  const dots = rest.findIndex((line) => line.trim() === "...");
  const spaced = rest.findIndex((line) => line.trim() === "---");
  const near = dots >= 0 ? dots : spaced;
  return {
    code: "front-matter-not-closed",
    message: "The fields begin at the line “---”, and no second “---” says where they end",
    hint:
      near < 0
        ? "Put a line “---” between the last field and your notes."
        : `Write “---”, with nothing before it, in place of “${(rest[near] ?? "").trimEnd()}” on line ${near + 2}.`,
    line: 1,
  };
}

function badFence(line: number): FenceFault {
  return {
    code: "front-matter-not-closed",
    message: "This line begins with “---” and goes on, so it is not clear where the fields end",
    hint: "Leave nothing but “---” on the line after the last field.",
    line,
  };
}

function otherLanguage(first: string): FenceFault {
  return {
    code: "front-matter-language",
    message: `The fields are announced as “${first.slice(3).trim()}”, and only YAML is read`,
    hint: "Leave nothing but “---” on the first line, and write the fields as “name: value”.",
    line: 1,
  };
}
