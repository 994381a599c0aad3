/**
 * Splits a record's file into front matter and notes. gray-matter does the splitting and nothing
 * else: every engine it has is put out of action, for it would run JavaScript as readily as read
 * YAML.
 */
import matter from "gray-matter";
import type { TextFault } from "../reader/problem-of-file.ts";

export type Split =
  | {
      readonly ok: true;
      /** The YAML, its lines numbered as in the file. */
      readonly yaml: string;
      readonly notes: string;
    }
  | { readonly ok: false; readonly fault: TextFault };

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

/**
 * Splits a record's file.
 *
 * @param text the whole file, its lines ending in `\n`
 */
export function splitRecord(text: string): Split {
  const fault = findFenceFault(text);
  if (fault) return { ok: false, fault: { severity: "error", column: 1, ...fault } };
  const { matter: yaml, content } = matter(text, splitOnly);
  return { ok: true, yaml, notes: content.replace(/^[ \t]*\n+/u, "").trimEnd() };
}

type FenceFault = Omit<TextFault, "severity" | "column">;

function findFenceFault(text: string): FenceFault | undefined {
  const [first = "", ...rest] = text.split("\n");
  if (text.trim() === "") return emptyFile;
  if (!/^---(?!-)/u.test(first)) return noFrontMatter;
  if (!/^---[ \t]*(ya?ml)?[ \t]*$/iu.test(first)) return otherLanguage(first);
  const end = rest.findIndex((line) => line.startsWith("---"));
  if (end < 0) return notClosed;
  return /^---[ \t]*$/u.test(rest[end] ?? "") ? undefined : badFence(end + 2);
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

const notClosed: FenceFault = {
  code: "front-matter-not-closed",
  message: "The fields begin at the line “---”, and no second “---” says where they end",
  hint: "Put a line “---” between the last field and your notes.",
  line: 1,
};

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
