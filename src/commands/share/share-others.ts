/** Words in what is shared that speak of what is not: tiles, sets and makers of the same archive. */
import { findNames, hiddenNamesOf } from "../../checks/names/hidden-names.ts";
import { publishedWords } from "../../checks/names/published-words.ts";
import type { Archive } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";

/** A file with such words, and those that it names. */
export interface OthersNamed {
  readonly file: string;
  readonly names: readonly string[];
}

/**
 * @param archive the whole of it
 * @param part what of it is shared
 */
export function othersNamed(archive: Archive, part: Archive): readonly OthersNamed[] {
  const find = otherFinder(archive, part);
  const found = new Map<string, Set<string>>();
  for (const { file, text } of publishedWords(part))
    for (const name of find(text)) found.set(file, (found.get(file) ?? new Set()).add(name));
  return [...found].map(([file, names]) => ({ file, names: [...names] }));
}

function otherFinder(archive: Archive, part: Archive): (text: string) => readonly string[] {
  const codes = new Map(
    [...archive.tiles].filter(([key]) => !part.tiles.has(key)).map(([key, { id }]) => [key, id]),
  );
  const sets = [...archive.sets]
    .filter(([key]) => !part.sets.has(key))
    .map(([, { record }]) => record.name);
  const makers = hiddenNamesOf({ ...archive.studio, makers: othersOf(archive, part) });
  return (text) => {
    const folded = idKey(text);
    return [
      ...[...folded.matchAll(codePattern)].flatMap(([word]) => codes.get(word) ?? []),
      ...sets.filter((name) => folded.includes(idKey(name))).map((name) => `“${name}”`),
      ...findNames(text, makers).map((name) => name.text),
    ];
  };
}

/** A code in running text: the full stop or hyphen behind it is none of it. */
const codePattern = /[\p{L}\p{N}][\p{L}\p{M}\p{N}]*(?:[._-][\p{L}\p{M}\p{N}]+)*/gu;

/** Those who may be named elsewhere are as much others here as those who may not. */
function othersOf(archive: Archive, part: Archive): NonNullable<Archive["studio"]["makers"]> {
  const { makers = {} } = archive.studio;
  const here = part.studio.makers ?? {};
  return Object.fromEntries(
    Object.entries(makers)
      .filter(([key]) => !Object.hasOwn(here, key))
      .map(([key, maker]) => [key, { ...maker, shown: "no" }]),
  );
}
