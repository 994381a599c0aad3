/** All that a page in a browser may be asked to do with records: read, link, reckon, check. */
import { runChecks } from "../../src/checks/all.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import { heatOf } from "../../src/firing/of-record.ts";
import { groupAlike } from "../../src/likeness/alike.ts";
import { firingFactsOf } from "../../src/likeness/firing-facts.ts";
import { makeUpOf } from "../../src/likeness/make-up.ts";
import { parseYaml } from "../../src/reader/parse-yaml.ts";
import type { TextParser } from "../../src/reader/parsed-text.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { filesOf, type Texts } from "../support/files-in-memory.ts";

/** Splits plain records, as a form makes them; the package that splits any is Node's. */
const plainTexts: TextParser = {
  parse: (text, form) => ({
    ...parseYaml(form === "yaml" ? text : yamlIn(text)),
    notes: form === "yaml" ? "" : text.split("\n---\n").slice(1).join("\n---\n").trim(),
  }),
  yamlOf: (text, form) => (form === "yaml" ? text : yamlIn(text)),
};

function yamlIn(text: string): string {
  return (text.split("\n---\n")[0] ?? "").replace(/^---/u, "");
}

/** What comes of some texts, as plain text, so that one run can be held against another. */
export function examine(texts: Texts): string {
  const { archive, problems } = readArchiveFiles(filesOf(texts), {
    builtInMaterials: carriedWords,
    texts: plainTexts,
  });
  if (!archive) return JSON.stringify({ problems });
  const heats = new Map([...archive.firings].map(([key, { record }]) => [key, heatOf(record)]));
  const extra = { pictures: new Map(), withoutChemistry: new Map(), heats, asTyped: String };
  const factsOf = firingFactsOf(archive, heats);
  const alike = groupAlike([...archive.tiles.values()], (tile) => makeUpOf(tile, factsOf));
  return JSON.stringify({
    problems: [...problems, ...runChecks(archive, extra)],
    chemistry: [...chemistryOfGlazes(archive)],
    heats: [...heats],
    alike: alike.map((group) => group.map(({ id }) => id)),
  });
}
