/**
 * What a few words say of a step. A saying begins at a token and takes some of the tokens from there; what
 * no saying takes is told as not understood.
 */
import type { Source } from "../../records/read.ts";
import { idKey } from "../../terms/ids.ts";
import { findGlaze, type NamedGlaze, type NameFault, type ShortNames } from "./names.ts";
import type { Token } from "./tokens.ts";
import { smallWords, wordsOfCoat, wordsOfPlace } from "./words.ts";

/** A field of a record, and how many words say it. */
export interface Said {
  readonly field: string;
  readonly value: Source;
  readonly used: number;
}

export type Saying = (tokens: readonly Token[], names: ShortNames) => Said | NameFault | undefined;

function word(token: Token | undefined): string {
  return token && !token.isQuoted ? idKey(token.text) : "";
}

/** `x2`, `2x`, `x 2`, `2 coats`. */
const coats: Saying = ([first, second]) => {
  const one = /^(?:[x×](\d+)|(\d+)[x×])$/u.exec(word(first));
  const said = (value: string, used: number) => ({ field: "coats", value, used });
  if (one) return said(one[1] ?? one[2] ?? "", 1);
  const next = word(second);
  if (/^[x×]$/u.test(word(first)) && /^\d+$/u.test(next)) return said(next, 2);
  if (/^\d+$/u.test(word(first)) && /^coats?$/u.test(next)) return said(word(first), 2);
  return undefined;
};

/** `3s`, `3 seconds`. */
const seconds: Saying = ([first, second]) => {
  const one = /^(\d+(?:\.\d+)?)s$/u.exec(word(first))?.[1];
  if (one !== undefined) return { field: "seconds", value: one, used: 1 };
  if (!/^\d+(?:\.\d+)?$/u.test(word(first)) || !/^seconds?$/u.test(word(second))) return undefined;
  return { field: "seconds", value: word(first), used: 2 };
};

/** `sg 1.45`. */
const gravity: Saying = ([first, second]) => {
  if (!/^(?:sg|gravity)$/u.test(word(first)) || !second) return undefined;
  return { field: "gravity", value: second.text, used: 2 };
};

/** `by dip`, `dip`, `dipped`, `thin`, `dense`, `overnight`, `touch-up`. */
const ofCoat: Saying = ([first, second]) => {
  const isBy = word(first) === "by";
  const found = wordsOfCoat.get(word(isBy ? second : first));
  if (!found || (isBy && found.field !== "by")) return undefined;
  return { ...found, used: isBy ? 2 : 1 };
};

/** `top`, `on the rim`, `rim and top`. */
const place: Saying = (tokens) => {
  const where: string[] = [];
  let used = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const area = wordsOfPlace.get(word(tokens[at]));
    if (area !== undefined) {
      where.push(area);
      used = at + 1;
    } else if (!smallWords.has(word(tokens[at]))) break;
  }
  const [only, ...more] = where;
  if (only === undefined) return undefined;
  return { field: "where", value: more.length === 0 ? only : where, used };
};

/** Own words, between quotes. */
const detail: Saying = ([first]) =>
  first?.isQuoted ? { field: "detail", value: first.text, used: 1 } : undefined;

/** `along "rim to centre"`, of a fade. */
const along: Saying = ([first, second]) =>
  word(first) === "along" && second?.isQuoted
    ? { field: "along", value: second.text, used: 2 }
    : undefined;

/** `over 7`, `over 7 and soot`. */
const over: Saying = (tokens, names) => {
  if (word(tokens[0]) !== "over") return undefined;
  const first = findGlaze(names, tokens.slice(1));
  if ("message" in first) return first;
  const named = [first.written];
  let used = 1 + first.used;
  for (;;) {
    const next = oneMore(tokens.slice(used), names);
    if (!next) break;
    named.push(next.written);
    used += next.used;
  }
  return { field: "over", value: named.length === 1 ? first.written : named, used };
};

/**
 * One more glaze of a list, after `and` or a comma. What could be said of this layer itself, or is not
 * known, is no name of another, and is read, or told, by itself.
 */
function oneMore(tokens: readonly Token[], names: ShortNames): NamedGlaze | undefined {
  const isAnd = ["and", "&"].includes(word(tokens[0]));
  const rest = isAnd ? tokens.slice(1) : tokens;
  if ((!isAnd && !rest[0]?.isAfterComma) || saysOtherwise(rest, names)) return undefined;
  const found = findGlaze(names, rest);
  if ("message" in found) return undefined;
  return { ...found, used: found.used + (isAnd ? 1 : 0) };
}

const withoutNames: readonly Saying[] = [coats, seconds, gravity, ofCoat, place, detail];

function saysOtherwise(tokens: readonly Token[], names: ShortNames): boolean {
  return withoutNames.some((saying) => saying(tokens, names) !== undefined);
}

/** What may be said of a layer of glaze, of a fade, of a resist or of what was taken off. */
export const sayingsOf: Readonly<
  Record<"glaze" | "fade" | "resist" | "remove", readonly Saying[]>
> = {
  glaze: [over, ...withoutNames],
  fade: [along, over, ...withoutNames],
  resist: [place, detail],
  remove: [place, detail],
};

/** `bottom shelf`, `shelf top`, `shelf "by the door"`. */
export const shelf: Saying = ([first, second]) => {
  const isBefore = word(first) === "shelf" && second !== undefined;
  const isAfter = ["top", "middle", "bottom"].includes(word(first));
  if (!isBefore && !isAfter) return undefined;
  const value = isBefore ? second.text : word(first);
  return { field: "shelf", value, used: isBefore || word(second) === "shelf" ? 2 : 1 };
};
