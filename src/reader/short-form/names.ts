/** What a line in short form may name: the set's jars, the studio's glazes and its firings. */
import { type Archive, findById } from "../../records/archive.ts";
import { findNearest } from "../../records/suggest.ts";
import type { KindOfFiring } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import type { Token } from "./tokens.ts";
import { isWord } from "./words.ts";

export interface ShortNames {
  /** The jars of the set, by their numbers as they are written, with the ids of their glazes. */
  readonly jars: readonly { readonly number: string; readonly glaze: string }[];
  readonly glazes: readonly { readonly id: string; readonly name: string }[];
  readonly firings: readonly { readonly id: string; readonly kind: KindOfFiring }[];
}

/** @param set the id of the set whose jars are meant; null for a tile in none */
export function shortNames(archive: Archive, set: string | null): ShortNames {
  const { record } = findById(archive.sets, set) ?? {};
  return {
    jars: Object.entries(record?.jars ?? {}).flatMap(([number, written]) => {
      const glaze = findById(archive.glazes, written);
      return glaze ? [{ number, glaze: glaze.id }] : [];
    }),
    glazes: [...archive.glazes.values()].map(({ id, record: { name } }) => ({ id, name })),
    firings: [...archive.firings.values()].map(({ id, record: { kind } }) => ({ id, kind })),
  };
}

/** A glaze that was named. */
export interface NamedGlaze {
  /** As a record names it: the jar's number, or the glaze's id. */
  readonly written: string;
  /** The id of the glaze. */
  readonly glaze: string;
  /** How many words name it. */
  readonly used: number;
}

export interface NameFault {
  readonly message: string;
  readonly hint: string;
}

/** Words that may make up one name. */
const longestName = 6;

/** Letters that are enough to be looked for at the beginning of a name. */
const fewestLetters = 2;

/**
 * The glaze that is named from a token on: by the number of its jar, by its id or its whole name, or
 * by the first letters of either, where only one glaze begins so.
 */
export function findGlaze(names: ShortNames, tokens: readonly Token[]): NamedGlaze | NameFault {
  const [first] = tokens;
  if (!first) return { message: "No glaze is named here", hint: tellJars(names) };
  const [longest, ...shorter] = exactlyNamed(names, tokens);
  if (longest) {
    const other = shorter.find(({ glaze }) => idKey(glaze) !== idKey(longest.glaze));
    return other ? twoReadings(tokens, longest, other) : longest;
  }
  return byLetters(names, first);
}

/** Everything that the first words name exactly, the most words first. */
function exactlyNamed(names: ShortNames, tokens: readonly Token[]): readonly NamedGlaze[] {
  const most = tokens[0]?.isQuoted ? 1 : Math.min(longestName, tokens.length);
  const found: NamedGlaze[] = [];
  for (let used = most; used > 0; used -= 1) {
    const words = tokens.slice(0, used);
    if (
      used > 1 &&
      words.some(({ isQuoted, isAfterComma }, i) => isQuoted || (i > 0 && isAfterComma))
    )
      continue;
    // A shorter name counts beside a longer one only where what is left over could be read as well.
    if (found.length > 0 && !tokens.slice(used, found[0]?.used).every(({ text }) => isWord(text)))
      continue;
    const key = idKey(words.map(({ text }) => text).join(" "));
    found.push(...named(names, key).map((each) => ({ ...each, used })));
  }
  return found;
}

/** The jar, the ids and the names that are exactly so; a jar's number goes before an id, as in a record. */
function named({ jars, glazes }: ShortNames, key: string): readonly Omit<NamedGlaze, "used">[] {
  const inJar = jars.filter(({ number }) => idKey(number) === key);
  const called = glazes.filter(({ id, name }) => idKey(id) === key || idKey(name) === key);
  return [
    ...inJar.map(({ number, glaze }) => ({ written: number, glaze })),
    ...called.map(({ id }) => ({ written: id, glaze: id })),
  ];
}

function twoReadings(tokens: readonly Token[], one: NamedGlaze, other: NamedGlaze): NameFault {
  const words = tokens.slice(0, one.used).map(({ text }) => text);
  return {
    message: `“${words.join(" ")}” may be ${one.glaze} or ${other.glaze}`,
    hint: "Write the glaze's id, or the number of its jar; if a jar is called as another glaze is, give it another number in set.md.",
  };
}

function byLetters(names: ShortNames, { text, isQuoted }: Token): NamedGlaze | NameFault {
  const key = idKey(text);
  const begun = names.glazes.filter(
    ({ id, name }) => idKey(id).startsWith(key) || idKey(name).startsWith(key),
  );
  const isEnough = [...text].length >= fewestLetters && !/\d/u.test(text) && !isQuoted;
  const [only, ...others] = isEnough ? begun : [];
  if (only && others.length === 0) return { written: only.id, glaze: only.id, used: 1 };
  if (only) return severalBegin(text, [only, ...others]);
  return { message: `There is no jar and no glaze “${text}”`, hint: tellNearest(names, text) };
}

const mostNamed = 6;

function severalBegin(text: string, glazes: ShortNames["glazes"]): NameFault {
  const ids = glazes.map(({ id }) => id);
  const more = ids.length - mostNamed;
  const named = ids.slice(0, mostNamed).join(", ") + (more > 0 ? ` and ${more} more` : "");
  return {
    message: `“${text}” may be one of ${ids.length} glazes: ${named}`,
    hint: "Write more letters of it, or the number of its jar.",
  };
}

function tellNearest(names: ShortNames, text: string): string {
  if (/^\d/u.test(text)) return tellJars(names);
  const near = findNearest(
    text,
    names.glazes.flatMap(({ id, name }) => [id, name]),
  );
  const id = names.glazes.find((glaze) => glaze.id === near || glaze.name === near)?.id;
  return id === undefined ? tellJars(names) : `Did you mean “${id}”?`;
}

function tellJars({ jars }: ShortNames): string {
  if (jars.length === 0) return "Write the glaze's id, or the first letters of its name.";
  const numbers = jars.slice(0, 40).map(({ number }) => number);
  return `Write the number of a jar (${numbers.join(", ")}), the glaze's id, or the first letters of its name.`;
}
