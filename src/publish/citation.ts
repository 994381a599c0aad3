/**
 * `CITATION.cff`: how to cite the tests of a studio, in the Citation File Format 1.2.0
 * (https://citation-file-format.github.io). It has no day and no version: the archive changes by the tile.
 */
import type { CatalogueStudio } from "../catalogue/studio.ts";
import { aboutOf } from "./data/about.ts";
import type { DataFile } from "./data/entry.ts";

/** At the root of the site, where programs look for it. */
export const citationPath = "CITATION.cff";

export function makeCitation(studio: CatalogueStudio): DataFile {
  const { studio: name, address, repository, licence } = aboutOf(studio);
  const fields = [
    ["cff-version", "1.2.0"],
    ["message", "If you use these tests, please cite them as this file says."],
    ["type", "dataset"],
    ["title", citedTitle(name)],
    ["abstract", abstractOf(licence?.spdx ? null : (licence?.words ?? null))],
    ["license", licence?.spdx ?? null],
    ["url", address],
    ["repository-code", repository],
  ] as const;
  const lines = fields.flatMap(([field, value]) =>
    value === null ? [] : `${field}: ${quoted(value)}`,
  );
  const content = `${lines.join("\n")}\nauthors:\n  - name: ${quoted(name)}\n`;
  return { path: citationPath, content };
}

export function citedTitle(studio: string): string {
  return `Glaze tests of ${studio}`;
}

/** What a licence of the studio's own words says has no field of its own. */
function abstractOf(ownWords: string | null): string {
  const what =
    "What was on each test tile, how it was fired and how it came out. These are reports of tests; they certify nothing.";
  return ownWords === null ? what : `${what} What others may do with them: ${ownWords}`;
}

/** As JSON writes a text YAML reads it, but for signs that it wants to be spelt out. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
