/** `name: Red #5` is read as `Red`: what looks like a comment may have been meant. */
import { Lexer } from "yaml";
import type { FaultAt } from "./yaml-words.ts";

/** Finds comments behind a value or a name that begin without a space, as no comment does. */
export function findLostWords(yaml: string): FaultAt[] {
  if (!/\s#[^\s#]/u.test(yaml)) return [];
  const faults: FaultAt[] = [];
  let offset = 0;
  let isText = false;
  let isFirst = true;
  for (const token of new Lexer().lex(yaml)) {
    if (isMark(token)) {
      isText = token === scalarMark;
      continue;
    }
    if (!isText && !isFirst && /^#[^\s#]/u.test(token)) faults.push(readAsComment(token, offset));
    offset += token.length;
    if (token.includes("\n")) isFirst = true;
    else if (token.trim() !== "") isFirst = false;
    isText = false;
  }
  return faults;
}

/** The lexer marks the beginning of a document, the end of a bracket and the next piece as text. */
const scalarMark = "\x1f";

function isMark(token: string): boolean {
  return token === scalarMark || token === "\x02" || token === "\x18";
}

function readAsComment(comment: string, offset: number): FaultAt {
  return {
    offset,
    severity: "warning",
    code: "read-as-comment",
    message: `“${comment}” is read as a comment, not as part of the value`,
    hint: "Put the whole value in quotes, or write a space after “#” if a comment is meant.",
  };
}
