/** What to say of a name that may not be shown. */
import type { Archive } from "../../records/archive.ts";
import { rememberFor } from "../../terms/remember.ts";
import type { Finding } from "../check.ts";
import { findNames, hiddenNamesOf, type NameFound } from "./hidden-names.ts";
import { publishedWords } from "./published-words.ts";

type Placed = Finding & { readonly file: string };

/** Every whole name, or every part of one, in words that a site shows. */
export function findNamesInWords(archive: Archive, whole: boolean): readonly Placed[] {
  return namesIn(archive)
    .filter(({ found }) => found.isWhole === whole)
    .map(({ file, path, found }) => ({
      file,
      path,
      word: found.word,
      ...(whole ? tellWhole : tellPart)(found),
    }));
}

/** Two rules ask, and all that anybody wrote is read for it. */
const namesIn = rememberFor((archive: Archive) => {
  const names = hiddenNamesOf(archive.studio);
  if (names.byWord.size === 0) return [];
  return publishedWords(archive).flatMap(({ file, path, text }) =>
    findNames(text, names).map((found) => ({ file, path, found })),
  );
});

function tellWhole(found: NameFound) {
  return {
    message: `“${found.text}” is the name of ${tellWhom(found)}`,
    hint: tellInstead(found),
  };
}

function tellPart(found: NameFound) {
  const [first] = found.of;
  return {
    message: `“${found.text}” may be a part of the name of ${tellWhom(found)}`,
    hint: `${tellInstead(found)} Where it is no name but a word, add “common: ${found.word.text}” to ${first?.key} in studio.yaml.`,
  };
}

function tellInstead({ of }: NameFound): string {
  const mayBeInitials = of.every(({ shown }) => shown === "initials");
  return `Everyone can read these words: ${mayBeInitials ? "write the initials instead" : "leave the name out"}.`;
}

function tellWhom({ of }: NameFound): string {
  return of
    .map(({ key, shown }) =>
      shown === "initials" ? `${key}, who asked for initials` : `${key}, who is not to be named`,
    )
    .join(" or of ");
}
