/** English in program code: texts with two words or more in a row. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync, Visitor } from "oxc-parser";
import { project } from "./files.ts";

/** What is said where it is found: a problem's message and hint, and a source that is cited. */
const saidWhereFound = new Set(["hint", "message", "source"]);

/** The English of a source file, each text with its line, but for the above and for errors of the program. */
export function readEnglish(file: string): readonly string[] {
  return parseEnglish(file, readFileSync(join(project, file), "utf8"));
}

/** The same of a source text. */
export function parseEnglish(file: string, text: string): readonly string[] {
  const found: { readonly at: number; readonly words: string }[] = [];
  const spared: { readonly start: number; readonly end: number }[] = [];
  const add = (at: number, words: string) => {
    if (/\p{L}{2,}[,;:]? \p{L}{2,}/u.test(words)) found.push({ at, words });
  };
  new Visitor({
    Literal: ({ start, value }) => add(start, typeof value === "string" ? value : ""),
    TemplateLiteral: ({ start, quasis }) =>
      add(start, quasis.map(({ value }) => value.cooked ?? "").join("…")),
    Property: ({ key, value }) => {
      if (key.type === "Identifier" && saidWhereFound.has(key.name)) spared.push(value);
    },
    VariableDeclarator: ({ id, init }) => {
      if (init && id.type === "Identifier" && saidWhereFound.has(id.name)) spared.push(init);
    },
    NewExpression: ({ callee, ...node }) => {
      if (callee.type === "Identifier" && callee.name.endsWith("Error")) spared.push(node);
    },
  }).visit(parseSync(file, text).program);
  return found
    .filter(({ at }) => !spared.some(({ start, end }) => start <= at && at < end))
    .map(({ at, words }) => `${file}:${text.slice(0, at).split("\n").length}: ${words}`);
}
