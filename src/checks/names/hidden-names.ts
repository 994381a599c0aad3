/**
 * Finds people's names in running text: names, and parts of names, of makers who asked for initials
 * or for nothing. A word counts as a part of a name where it is the same letters, whatever their
 * marks, and begins with a capital, as names do; so `rose` is a colour and `Rose` may be somebody.
 */
import type { MakerRecord, StudioRecord } from "../../records/studio.ts";
import { indexBy } from "../../terms/index-by.ts";
import { remember } from "../../terms/remember.ts";
import { wordPattern } from "../../terms/words.ts";

/** A maker whose name may not be read on the site. */
interface HiddenName {
  readonly key: string;
  readonly shown: MakerRecord["shown"];
  /** Every word of the name, folded, in the order it was written. */
  readonly words: readonly string[];
  /** Those of them that give somebody away by themselves. */
  readonly parts: ReadonlySet<string>;
}

/** The names that may not be shown, by every word of theirs and by the parts that give them away. */
export interface HiddenNames {
  readonly byWord: ReadonlyMap<string, readonly HiddenName[]>;
  readonly byPart: ReadonlyMap<string, readonly HiddenName[]>;
  /** Parts in writing that puts no spaces between words. */
  readonly withoutSpaces: readonly (readonly [part: string, names: readonly HiddenName[]])[];
}

/** A name in a text, or a part of one. */
export interface NameFound {
  /** As it stands in the text. */
  readonly text: string;
  /** The first word of it, and how many times that word stands in the text before. */
  readonly word: { readonly text: string; readonly nth: number };
  readonly isWhole: boolean;
  /** Whose it may be: keys in studio.yaml with what they asked for. */
  readonly of: readonly Pick<HiddenName, "key" | "shown">[];
}

interface Word {
  readonly text: string;
  readonly folded: string;
  readonly at: number;
  /** Whether nothing parts it from the word before but what may be inside a name. */
  readonly isJoined: boolean;
}

/** The makers of a studio whose names may not be shown, or only by their initials. */
export function hiddenNamesOf({ makers = {} }: Pick<StudioRecord, "makers">): HiddenNames {
  const all = Object.entries(makers);
  const shown = new Set(
    all.flatMap(([, maker]) => (maker.shown === "yes" ? wordsOf(maker.name ?? "") : [])).map(fold),
  );
  const hidden = all.flatMap(([key, maker]) => {
    const { name, common = [] } = maker;
    if (name === undefined || maker.shown === "yes") return [];
    const free = new Set([...shown, ...common.flatMap(wordsOf).map(fold)]);
    const words = wordsOf(name);
    const parts = new Set(
      partsOf(words)
        .map(fold)
        .filter((part) => !free.has(part)),
    );
    return parts.size === 0 ? [] : [{ key, shown: maker.shown, words: words.map(fold), parts }];
  });
  const byPart = indexBy(hidden, ({ parts }) => parts);
  return {
    byWord: indexBy(hidden, ({ words }) => words),
    byPart,
    withoutSpaces: [...byPart].filter(([part]) => spaceless.test(part)),
  };
}

/** Where a name is written with capitals, its small words, such as `van`, are anybody's. */
function partsOf(words: readonly string[]): readonly string[] {
  const capitals = words.filter(isCapital);
  const parts = capitals.length > 0 ? capitals : words;
  return parts.filter((part) => Array.from(part).length > 1);
}

/** Every hidden name in a text, in the order of the text; a whole name is told once, not by parts. */
export function findNames(text: string, names: HiddenNames): readonly NameFound[] {
  if (names.byWord.size === 0) return [];
  const words = splitWords(text);
  const found: NameFound[] = [];
  for (let i = 0; i < words.length; ) {
    const whole = findWhole(words, i, names);
    const part = whole ? undefined : findPart(words, i, names);
    const match = whole ?? part;
    if (match) found.push(toFound(text, words, i, match));
    i += match?.length ?? 1;
  }
  return found;
}

interface Match {
  readonly length: number;
  readonly isWhole: boolean;
  readonly of: readonly HiddenName[];
}

/** All the words of a name side by side, in any order: `Tolliver-Oake, Bram` too. */
function findWhole(words: readonly Word[], at: number, names: HiddenNames): Match | undefined {
  const named = names.byWord.get(words[at]?.folded ?? "");
  if (!named) return undefined;
  const of = named.filter((name) => {
    const here = words.slice(at, at + name.words.length);
    if (!here.some(({ text }) => isCapital(text))) return false;
    if (here.slice(1).some(({ isJoined }) => !isJoined)) return false;
    return sorted(here.map(({ folded }) => folded)) === sorted(name.words);
  });
  const length = Math.max(...of.map(({ words: own }) => own.length));
  return of.length > 0 ? { length, isWhole: true, of } : undefined;
}

function sorted(words: readonly string[]): string {
  return JSON.stringify(words.toSorted());
}

/** A name may bear the s of whose something is, and in writing without spaces other words. */
function findPart(words: readonly Word[], at: number, names: HiddenNames): Match | undefined {
  const word = words[at];
  if (!word) return undefined;
  const { folded } = word;
  const bare = folded.endsWith("s") ? folded.slice(0, -1) : folded;
  const of = [...(names.byPart.get(folded) ?? []), ...(names.byPart.get(bare) ?? [])];
  for (const [part, named] of names.withoutSpaces) if (folded.includes(part)) of.push(...named);
  if (of.length === 0 || !isCapital(word.text)) return undefined;
  return { length: 1, isWhole: false, of: [...new Set(of)] };
}

const spaceless =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]+$/u;

function toFound(text: string, words: readonly Word[], at: number, match: Match): NameFound {
  const first = words[at];
  const last = words[at + match.length - 1];
  if (!first || !last) throw new Error("A name was found where there are no words");
  return {
    text: text.slice(first.at, last.at + last.text.length).replace(/\s+/gu, " "),
    word: {
      text: first.text,
      nth: words.slice(0, at).filter((word) => word.text === first.text).length,
    },
    isWhole: match.isWhole,
    of: match.of.map(({ key, shown }) => ({ key, shown })),
  };
}

/** Spaces, one hyphen, comma, full stop or apostrophe, and the marks of Markdown for bold. */
const insideNames = /^[*_]*\s*[-‐‑–,.'’]?\s*[*_]*$/u;

function splitWords(text: string): readonly Word[] {
  let end = 0;
  return Array.from(text.matchAll(wordPattern), ({ 0: word, index: at }) => {
    const isJoined = insideNames.test(text.slice(end, at));
    end = at + word.length;
    return { text: word, folded: fold(word), at, isJoined };
  });
}

function wordsOf(name: string): readonly string[] {
  return name.match(wordPattern) ?? [];
}

/** Letters that no mark was put on but that are written as others where a keyboard lacks them. */
const otherwise: ReadonlyMap<string, string> = new Map([
  ["ø", "o"],
  ["ł", "l"],
  ["đ", "d"],
  ["ð", "d"],
  ["ı", "i"],
  ["ß", "ss"],
  ["æ", "ae"],
  ["œ", "oe"],
  ["þ", "th"],
]);

/** More words than people use in notes, where few are used most of the time. */
const rememberedWords = 20_000;

/** Small letters without their marks. */
const fold = remember(
  rememberedWords,
  (word: string) => {
    const bare = word
      .normalize("NFKD")
      .replace(/\p{M}+/gu, "")
      .toLowerCase();
    return Array.from(bare, (letter) => otherwise.get(letter) ?? letter).join("");
  },
  (word) => word,
);

/** True of scripts without capitals too. */
function isCapital(word: string): boolean {
  return !/^\p{Ll}/u.test(word.normalize("NFC"));
}
