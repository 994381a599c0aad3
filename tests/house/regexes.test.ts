import { expect, test } from "vitest";
import { listSources } from "./files.ts";
import { isLinear, parseRegexes, readRegexes } from "./regexes.ts";

/**
 * Files with expressions whose time may grow faster than the text, or of which the checker cannot
 * tell (it knows no look-behind), and why no text they are given is long enough to matter.
 */
const bounded: Readonly<Record<string, string>> = {
  "src/archive/folder-files.ts": "names of files: a disk takes 255 letters",
  "src/catalogue/addresses.ts": "names of files: a disk takes 255 letters",
  "src/checks/names/hidden-names.ts":
    "what stands between two words of a text, which is cut out first",
  "src/chemistry/cautions/cautions.ts": "one value: longestValue",
  "src/commands/build/build-words.ts": "what was typed on the command line",
  "src/commands/new/new-blend-plan.ts": "what was typed on the command line",
  "src/commands/serve/keep-showing.ts": "what was typed on the command line",
  "src/compiled/page-styles.mjs": "Tilebook's own code and styles",
  "src/demo/plan-from-record.ts": "draws the demonstration, and reads no other archive",
  "src/firing/log/cells.ts": "one cell of a log: the file's own longestValue",
  "src/firing/log/labels.ts": "one label of a log, which the table cuts short",
  "src/photos/format.ts": "the first bytes of a picture",
  "src/photos/mark/svg.ts": "a mark of 100 KB at most, of which each piece is tried once",
  "src/photos/traces.ts": "one chunk of a picture, whose size has limits of its own",
  "src/reader/find-id-problems.ts": "names of files: a disk takes 255 letters",
  "src/reader/meant-names.ts": "names of files: a disk takes 255 letters",
  "src/reader/references/picture-names.ts": "names of files: a disk takes 255 letters",
  "src/reader/short-form/tokens.ts": "one line of layers: longestShortForm",
  "src/records/fields/cones.ts": "one value: longestValue",
  "src/records/fields/days.ts": "one value: longestValue",
  "src/reader/yaml-indent.ts":
    "anchored, and each step takes a dash away; only for a record that is refused",
  "src/reader/yaml-keys.ts": "one name (longestKey) or value (longestValue)",
  "src/reader/yaml-values.ts": "one value: longestValue",
  "src/reader/yaml-words.ts":
    "one line of a record that is refused: longestYaml; and counted numbers",
  "src/setup.mjs": "the version of Node",
  "src/terms/licences.ts": "words of 200 letters at most",
  "src/terms/oxides.ts": "one formula: longestValue",
  "templates/words/mixing/chemistry.ts": "numbers that the program made",
  "templates/words/english/numbers.ts": "numbers that the program made",
};

test("no regular expression takes longer than its text, but those whose text is bounded", () => {
  const regexes = listSources()
    .filter((file) => !Object.hasOwn(bounded, file))
    .flatMap(readRegexes);
  expect(regexes.length).toBeGreaterThan(50);
  const different = new Map(regexes.map((regex) => [`/${regex.pattern}/${regex.flags}`, regex]));
  const slow = [...different].filter(([, regex]) => !isLinear(regex));
  expect(slow.map(([written, { file }]) => `${file}: ${written}`)).toEqual([]);
}, 120_000);

test("the check of regular expressions finds slow ones", () => {
  const [fast, slow, hung] = parseRegexes("x.ts", "[/^a+$/u, /a+$/u, /^(a|a)+$/u]");
  expect([fast, slow, hung].map((regex) => regex && isLinear(regex))).toEqual([true, false, false]);
});
