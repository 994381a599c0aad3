/** A formula cut into its smallest pieces. */
import { type Element, isElement } from "../terms/atomic-weights.ts";
import { fromUnicodeSubscripts } from "../terms/oxides.ts";
import { type FormulaProblem, formulaProblem } from "./formula-problem.ts";

export type Token = { readonly at: number; readonly afterSpace: boolean } & (
  | { readonly kind: "element"; readonly element: Element }
  | { readonly kind: "number"; readonly value: number; readonly text: string }
  | { readonly kind: "open" | "close" | "dot" }
);

export type Tokens =
  | { readonly ok: true; readonly tokens: readonly Token[] }
  | { readonly ok: false; readonly problem: FormulaProblem };

/** The dots that keyboards and other texts offer for the raised dot between groups. */
const dots = "·*⋅•∙";

/** Cuts a formula into elements, numbers, brackets and the dots between groups. */
export function tokeniseFormula(written: string): Tokens {
  const text = fromUnicodeSubscripts(written);
  const piece = /(\s+)|([A-Z][a-z]?)|(\d+(?:\.\d+)?)|([()])|([·*⋅•∙])/uy;
  const tokens: Token[] = [];
  let afterSpace = false;
  while (piece.lastIndex < text.length) {
    const at = piece.lastIndex;
    const match = piece.exec(text);
    if (!match) return { ok: false, problem: strayCharacter(text, at) };
    const [, space, symbol, digits, bracket] = match;
    if (symbol !== undefined && !isElement(symbol))
      return { ok: false, problem: unknownElement(symbol, at) };
    if (symbol !== undefined) tokens.push({ kind: "element", element: symbol, at, afterSpace });
    else if (digits !== undefined)
      tokens.push({ kind: "number", value: Number(digits), text: digits, at, afterSpace });
    else if (space === undefined) tokens.push({ kind: kindOfMark(bracket), at, afterSpace });
    afterSpace = space !== undefined;
  }
  return { ok: true, tokens };
}

function kindOfMark(bracket: string | undefined): "open" | "close" | "dot" {
  if (bracket === "(") return "open";
  return bracket === ")" ? "close" : "dot";
}

function unknownElement(symbol: string, at: number): FormulaProblem {
  return formulaProblem(
    "unknown-element",
    at,
    `“${symbol}” is no element with an atomic weight here`,
    "Elements begin with one capital letter: Si, Al, Ca, K. Mind capitals: CO is carbon and oxygen, Co is cobalt.",
  );
}

function strayCharacter(text: string, at: number): FormulaProblem {
  const found = String.fromCodePoint(text.codePointAt(at) ?? 0);
  if (found === ".")
    return formulaProblem(
      "point-between-groups",
      at,
      "A “.” in a formula is a decimal point, with a digit on either side",
      "Write · or * between groups: K2O·Al2O3·6SiO2.",
    );
  return formulaProblem(
    "stray-character",
    at,
    `“${found}” has no place in a formula`,
    hintFor(found),
  );
}

function hintFor(found: string): string {
  if (found === ",") return "Write decimals with a point, 0.75, and · between groups.";
  if ("[]{}".includes(found)) return "Write round brackets: Ca(OH)2.";
  if (/[a-z]/u.test(found)) return "Elements begin with a capital letter: SiO2, not sio2.";
  return `Write elements, numbers, ( ) and ${dots.charAt(0)} or * between groups, as in K2O·Al2O3·6SiO2.`;
}
