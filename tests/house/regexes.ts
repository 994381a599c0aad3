/** The regular expressions of the program, and how long one may take over a hostile text. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { parseSync, Visitor } from "oxc-parser";
import type * as recheck from "recheck";
import { project } from "./files.ts";

/** The build for browsers is JavaScript alone and needs neither a worker nor a program beside it. */
const { checkSync } = createRequire(import.meta.url)("recheck/lib/browser.js") as typeof recheck;

/** A regular expression as it stands in the source. */
export type Regex = { readonly file: string; readonly pattern: string; readonly flags: string };

/** Every regular expression that stands in a source file. */
export function readRegexes(file: string): readonly Regex[] {
  return parseRegexes(file, readFileSync(join(project, file), "utf8"));
}

/** The regular expressions of a source text. */
export function parseRegexes(file: string, text: string): readonly Regex[] {
  const found: Regex[] = [];
  const add = (node: { readonly regex?: { pattern: string; flags: string } }) => {
    if (node.regex) found.push({ file, pattern: node.regex.pattern, flags: node.regex.flags });
  };
  new Visitor({ Literal: (node) => add(node as Parameters<typeof add>[0]) }).visit(
    parseSync(file, text).program,
  );
  return found;
}

/** Whether its time is sure to grow no faster than the text; what cannot be told counts as slow. */
export function isLinear({ pattern, flags }: Omit<Regex, "file">): boolean {
  return checkSync(pattern, flags, { checker: "automaton", timeout: 20_000 }).status === "safe";
}
