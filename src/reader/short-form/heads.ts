/** How a piece of the line begins: with a glaze, two that fade, a resist, a tool, a firing. */
import type { SourceMap } from "../../records/read.ts";
import { suggestOneOf } from "../../records/suggest.ts";
import { idKey } from "../../terms/ids.ts";
import { findGlaze, type NamedGlaze, type NameFault, type ShortNames } from "./names.ts";
import type { Piece, Token } from "./tokens.ts";
import { headWords, kindsByWord, wordsOfRemoval, wordsOfResist } from "./words.ts";

export interface Head {
  readonly kind: (typeof headWords)[number];
  /** Of the field that names the step. */
  readonly value: string | SourceMap;
  /** How many words it has. */
  readonly used: number;
}

/** Why a piece cannot be read at all, and how many of its words say so. */
export type HeadFault = NameFault & { readonly used: number };

export function readHead(piece: Piece, names: ShortNames): Head | HeadFault {
  const [first, second] = piece;
  const key = first && !first.isQuoted ? idKey(first.text) : "";
  const kind = headWords.find((word) => word === key);
  if (kind && second) return readNamed(kind, piece.slice(1), names);
  const resist = wordsOfResist.get(key);
  const removal = key === "all" ? undefined : wordsOfRemoval.get(key);
  if (resist === undefined && removal === undefined)
    return withHint(readGlazes(piece, 0, names), key);
  const glaze = exactly(piece, names);
  if (glaze) return twoMeanings(key, glaze, resist === undefined ? "remove" : "resist");
  if (removal !== undefined) return { kind: "remove", value: removal, used: 1 };
  const used = second && !second.isQuoted && idKey(second.text) === "resist" ? 2 : 1;
  return { kind: "resist", value: resist ?? "", used };
}

/** A word that begins something, but not alone. */
function withHint(read: Head | HeadFault, key: string): Head | HeadFault {
  const hint = kindsByWord.has(key) ? `Write “fired ${key}” for that firing.` : hintsAlone[key];
  return "message" in read && hint !== undefined ? { ...read, hint } : read;
}

const hintsAlone: Readonly<Record<string, string | undefined>> = {
  __proto__: null as never,
  all: "Write “remove all” where everything came off again.",
  fired: "Write “fired” with the kind of firing behind it, as in “fired bisque”.",
};

/** A piece that says with its first word what it is. */
function readNamed(
  kind: Head["kind"],
  rest: readonly Token[],
  names: ShortNames,
): Head | HeadFault {
  if (kind === "glaze" || kind === "fade") return readGlazes(rest, 1, names, kind);
  const [token] = rest;
  const text = token?.text ?? "";
  const key = idKey(text);
  if (kind === "fired") return readFiring(text, names);
  const words = kind === "resist" ? wordsOfResist : wordsOfRemoval;
  const value = words.get(key);
  if (value !== undefined) return { kind, value, used: 2 };
  return {
    message: `“${text}” is not understood after “${kind}”`,
    hint: suggestOneOf(text, [...words.keys()]),
    used: 2,
  };
}

function readFiring(text: string, { firings }: ShortNames): Head | HeadFault {
  const key = idKey(text);
  const value = kindsByWord.get(key) ?? firings.find(({ id }) => idKey(id) === key)?.id;
  if (value !== undefined) return { kind: "fired", value, used: 2 };
  const kinds = [...kindsByWord.keys()];
  const hint = suggestOneOf(text, [...kinds, ...firings.map(({ id }) => id)]);
  return {
    message: `There is no firing “${text}”`,
    hint: hint.startsWith("Did")
      ? hint
      : `Write its kind (${kinds.join(", ")}), or the id of its record.`,
    used: 2,
  };
}

/**
 * A glaze, or two with `to` between them.
 *
 * @param used words before the first of them
 */
function readGlazes(
  tokens: readonly Token[],
  used: number,
  names: ShortNames,
  kind?: "glaze" | "fade",
): Head | HeadFault {
  const first = findGlaze(names, tokens);
  if ("message" in first) return { ...first, used: used + 1 };
  const next = tokens[first.used];
  const isFade = next !== undefined && !next.isQuoted && idKey(next.text) === "to";
  const upTo = used + first.used;
  if (!isFade && kind === "fade") {
    const hint = "Write both glazes with “to” between them, as in “fade 7 to 3”.";
    return { message: "A fade has two glazes", hint, used: upTo };
  }
  if (!isFade) return { kind: "glaze", value: first.written, used: upTo };
  const second = findGlaze(names, tokens.slice(first.used + 1));
  if ("message" in second) return { ...second, used: upTo + 2 };
  const value = { from: first.written, to: second.written };
  return { kind: "fade", value, used: upTo + 1 + second.used };
}

/** A glaze that has exactly such a name as a resist or a tool. */
function exactly([first]: Piece, names: ShortNames): NamedGlaze | undefined {
  const found = first && findGlaze(names, [{ ...first, isQuoted: true }]);
  return found && "written" in found ? found : undefined;
}

function twoMeanings(key: string, { glaze }: NamedGlaze, other: "remove" | "resist"): HeadFault {
  return {
    message: `“${key}” may be the glaze ${glaze} or what is said of a tile`,
    hint: `Write “glaze ${key}” for the glaze, and “${other} ${key}” for the other.`,
    used: 1,
  };
}
