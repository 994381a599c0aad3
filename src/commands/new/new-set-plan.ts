/** What a new term's set has from the one before it. */
import { type FieldValue, renderRecord } from "../../reader/render-record.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import { findById } from "../../records/archive.ts";
import { nextBlock } from "../../records/next-block.ts";
import type { WhyTaken } from "../../records/next-code.ts";
import type { SourceMap } from "../../records/read.ts";
import type { SetRecord } from "../../records/set.ts";
import { idKey } from "../../terms/ids.ts";

/** What is said of the new set itself. */
export interface NewSetWords {
  readonly name: string;
  readonly begins: string | undefined;
  readonly ends: string | undefined;
  /** A random link, where the set before it was unlisted. */
  readonly link: string | undefined;
}

export interface NewSetPlan {
  readonly content: string;
  readonly codes: readonly string[];
  /** What is not carried over, and what to look at: whole sentences. */
  readonly told: readonly string[];
}

/** Fields of tiles that were true of one term only. */
const datesOfTerm = ["formed", "glazed"];

/**
 * Plans the record of a set after another: its jars, defaults and control tile, and the codes behind
 * its codes.
 *
 * @param source what the old set's record says, as it was written
 */
export function planNewSet(
  archive: Archive,
  old: Filed<SetRecord>,
  source: SourceMap,
  words: NewSetWords,
  taken: WhyTaken,
): NewSetPlan {
  const before = (old.record.codes ?? []).flat();
  const codes = nextBlock(before, taken) ?? [];
  const { kind, teacher, listed, jars, control } = source;
  const { name, begins, ends, link } = words;
  const { kept, dropped } = carryDefaults(source.defaults);
  const fields: Readonly<Record<string, FieldValue | undefined>> = {
    ...{ name, kind, teacher, begins, ends, listed, link },
    codes: codes.length > 0 ? rangeOf(codes) : undefined,
    ...{ control, jars, defaults: kept },
  };
  return {
    content: renderRecord(fields),
    codes,
    told: [
      ...tellCodes(old, before, codes),
      ...dropped.map((field) => `“${field}” of its defaults was last term's, and is left out.`),
      ...tellJars(archive, old),
      ...(old.notes === "" ? [] : [`What ${old.file} says beneath its fields stays there.`]),
    ],
  };
}

function carryDefaults(defaults: SourceMap[string] | undefined) {
  if (typeof defaults !== "object" || Array.isArray(defaults))
    return { kept: undefined, dropped: [] };
  const all = Object.entries(defaults);
  const kept = all.filter(([field]) => !datesOfTerm.includes(field));
  return {
    kept: kept.length > 0 ? (Object.fromEntries(kept) as FieldValue) : undefined,
    dropped: all.map(([field]) => field).filter((field) => datesOfTerm.includes(field)),
  };
}

export function rangeOf(codes: readonly string[]): string {
  return codes.length === 1 ? (codes[0] ?? "") : `${codes[0]}..${codes.at(-1)}`;
}

function tellCodes(
  { id }: Filed<SetRecord>,
  before: readonly string[],
  codes: readonly string[],
): string[] {
  if (codes.length > 0) return [];
  if (before.length === 0)
    return [`${id} reserves no codes, and so the new set reserves none either.`];
  return [
    `No ${before.length} free codes in a row follow ${before.at(-1)}: write “codes:” into the new set yourself.`,
  ];
}

/** A jar that nobody fills any more is carried over, and told. */
function tellJars({ glazes }: Archive, { record }: Filed<SetRecord>): string[] {
  return Object.entries(record.jars ?? {}).flatMap(([jar, id]) => {
    const glaze = findById(glazes, id);
    return glaze?.record.stocked === false
      ? [`Jar ${jar}, ${glaze.record.name}, is marked “stocked: no”: take it out if it is gone.`]
      : [];
  });
}

/** The makers of a set's tiles: those who have tiles in it alone, and those who have others too. */
export function makersOf(
  { tiles }: Archive,
  set: string,
): { readonly here: readonly string[]; readonly elsewhere: readonly string[] } {
  const inSet = new Set<string>();
  const others = new Set<string>();
  for (const tile of tiles.values()) {
    if (tile.maker === null) continue;
    const isHere = tile.set !== null && idKey(tile.set) === idKey(set);
    (isHere ? inSet : others).add(tile.maker);
  }
  const all = [...inSet].sort();
  return {
    here: all.filter((key) => !others.has(key)),
    elsewhere: all.filter((key) => others.has(key)),
  };
}
