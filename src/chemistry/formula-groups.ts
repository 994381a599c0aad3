/** The grammar of a formula: groups joined by dots, units in groups, brackets in units. */
import type { Element } from "../terms/atomic-weights.ts";
import { type FormulaProblem, formulaProblem } from "./formula-problem.ts";
import { type Token, tokeniseFormula } from "./formula-tokens.ts";

/** So many atoms of each element. */
export type ElementCounts = Readonly<Partial<Record<Element, number>>>;

export type GroupsReading =
  | { readonly ok: true; readonly elements: ElementCounts }
  | { readonly ok: false; readonly problem: FormulaProblem };

/** The most of anything that a number in a formula may ask for. */
const highestCount = 1000;

/** The pieces of a formula and how far they have been read. */
interface Cursor {
  readonly tokens: readonly Token[];
  /** The length of the text, where a formula that ends too soon goes wrong. */
  readonly end: number;
  next: number;
}

/** Reads a whole formula; a point is a decimal point here, whatever was meant. */
export function readGroups(written: string): GroupsReading {
  const cut = tokeniseFormula(written);
  if (!cut.ok) return cut;
  if (cut.tokens.length === 0)
    return fault("empty-formula", 0, "There is no formula here", "Write one, such as SiO2.");
  const cursor: Cursor = { tokens: cut.tokens, end: written.length, next: 0 };
  const groups = readJoinedGroups(cursor);
  const left = cursor.tokens[cursor.next];
  if (!groups.ok || left === undefined) return groups;
  return fault(
    "bracket-not-opened",
    left.at,
    "This bracket was never opened",
    "Take it out, or put a “(” before what belongs in it.",
  );
}

function readJoinedGroups(cursor: Cursor): GroupsReading {
  let sum: ElementCounts = {};
  do {
    const group = readGroup(cursor);
    if (!group.ok) return group;
    sum = add(sum, group.elements, 1);
  } while (take(cursor, "dot"));
  return { ok: true, elements: sum };
}

function readGroup(cursor: Cursor): GroupsReading {
  const coefficient = readNumber(cursor);
  if (typeof coefficient !== "number") return coefficient;
  const first = cursor.tokens[cursor.next];
  if (first?.kind !== "element" && first?.kind !== "open") return nothingHere(cursor, first);
  let sum: ElementCounts = {};
  for (let token: Token | undefined = first; startsUnit(token); ) {
    const unit = readUnit(cursor, token);
    if (!unit.ok) return unit;
    sum = add(sum, unit.elements, coefficient);
    token = cursor.tokens[cursor.next];
    if (token?.afterSpace && (startsUnit(token) || token.kind === "number"))
      return spaceBetween(token);
  }
  return { ok: true, elements: sum };
}

function startsUnit(token: Token | undefined): token is Token & { kind: "element" | "open" } {
  return token?.kind === "element" || token?.kind === "open";
}

function readUnit(cursor: Cursor, token: Token & { kind: "element" | "open" }): GroupsReading {
  cursor.next += 1;
  const inside = token.kind === "open" ? readBracket(cursor, token) : single(token.element);
  if (!inside.ok) return inside;
  const following = cursor.tokens[cursor.next];
  if (following?.kind === "number" && following.afterSpace) return spaceBetween(following);
  const count = readNumber(cursor);
  if (typeof count !== "number") return count;
  return { ok: true, elements: add({}, inside.elements, count) };
}

function single(element: Element): GroupsReading {
  return { ok: true, elements: { [element]: 1 } };
}

function readBracket(cursor: Cursor, opened: Token): GroupsReading {
  const inside = readJoinedGroups(cursor);
  if (!inside.ok || take(cursor, "close")) return inside;
  return fault(
    "bracket-not-closed",
    opened.at,
    "This bracket is never closed",
    "Close it with a “)” where its part of the formula ends.",
  );
}

/** The number that stands here, 1 where there is none, or what is wrong with it. */
function readNumber(cursor: Cursor): number | Exclude<GroupsReading, { ok: true }> {
  const token = cursor.tokens[cursor.next];
  if (token?.kind !== "number") return 1;
  cursor.next += 1;
  const isLetterMeant = /^0(?!\.)/u.test(token.text);
  if (!isLetterMeant && token.value > 0 && token.value <= highestCount) return token.value;
  return fault(
    "count-out-of-range",
    token.at,
    `“${token.text}” is no number that a formula can hold`,
    isLetterMeant
      ? "Write oxygen with the letter O: SiO2."
      : `Write a number above 0 and up to ${highestCount}.`,
  );
}

function take(cursor: Cursor, kind: Token["kind"]): boolean {
  if (cursor.tokens[cursor.next]?.kind !== kind) return false;
  cursor.next += 1;
  return true;
}

function add(sum: ElementCounts, more: ElementCounts, times: number): ElementCounts {
  const total = { ...sum };
  for (const [element, count] of Object.entries(more) as [Element, number][])
    total[element] = (total[element] ?? 0) + count * times;
  return total;
}

function fault(...parts: Parameters<typeof formulaProblem>) {
  return { ok: false, problem: formulaProblem(...parts) } as const;
}

function nothingHere(cursor: Cursor, found: Token | undefined) {
  const at = found?.at ?? cursor.end;
  if (found?.kind === "number")
    return fault(
      "number-out-of-place",
      at,
      `Two numbers stand side by side at “${found.text}”`,
      "A number goes before a group, 6SiO2, or behind an element, Al2O3.",
    );
  return fault(
    "nothing-between-dots",
    at,
    "An element is missing here",
    "Write elements before and after every ·, and between every pair of brackets.",
  );
}

function spaceBetween(token: Token) {
  return fault(
    "space-between-groups",
    token.at,
    "A space does not join the parts of a formula",
    "Write · or * between groups, K2O·Al2O3·6SiO2, and no space inside one.",
  );
}
