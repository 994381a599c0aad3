/**
 * Reads a draft's record as the build reads it, beside as much of an archive as the record names, and runs
 * the same rules.
 */
import { runChecks } from "../../checks/all.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import { heatOf } from "../../firing/of-record.ts";
import type { FormGlaze, FormSite } from "../../publish/add-file.ts";
import { parseYaml } from "../../reader/parse-yaml.ts";
import type { TextParser } from "../../reader/parsed-text.ts";
import { readArchiveFiles } from "../../reader/read-archive-files.ts";
import { renderRecord } from "../../reader/render-record.ts";
import { filesOfTexts } from "../../reader/with-files.ts";
import type { Problem } from "../../records/problem.ts";
import { type Draft, fieldsOf, placeOf } from "./draft.ts";
import type { Examine, FormFinding } from "./examined.ts";
import type { DraftStep } from "./steps.ts";

type Texts = ReadonlyMap<string, string>;

export const examine: Examine = (draft, site) => {
  const file = `${placeOf(draft)}.md`;
  const text = renderTile(draft);
  const { archive, problems } = readArchiveFiles(
    filesOfTexts(new Map([...surroundings(draft, site), [file, text]])),
    { builtInMaterials: carriedWords, texts: plainTexts },
  );
  const heats = new Map(
    [...(archive?.firings ?? [])].map(([key, { record }]) => [key, heatOf(record)]),
  );
  const extra = { pictures: new Map(), withoutChemistry: new Map(), heats, asTyped: String };
  const found = [...problems, ...(archive ? runChecks(archive, extra) : [])];
  return { text, findings: found.filter((problem) => problem.file === file).map(toFinding) };
};

function renderTile(draft: Draft): string {
  const notes = draft.notes.trim();
  return renderRecord(fieldsOf(draft)) + (notes === "" ? "" : `${notes}\n`);
}

/** A glaze that this site does not list may have a record all the same: an unlisted set shows few. */
function toFinding({ severity, code, path, message, hint }: Problem): FormFinding {
  return { severity: code === "unknown-glaze" ? "warning" : severity, code, path, message, hint };
}

/** As much of the archive as a draft names. */
function surroundings(draft: Draft, site: FormSite): Texts {
  const set = site.sets.find(({ id }) => id === draft.set);
  const maker = draft.maker.trim();
  const studio = { format: "1", studio: site.studio, makers: maker ? { [maker]: {} } : undefined };
  const named = new Set([
    ...draft.layers.flatMap(glazesOf),
    ...(set?.jars ?? []).map(([, glaze]) => glaze),
  ]);
  const { maker: _, ...defaults } = set?.gives ?? {};
  return new Map([
    ["studio.yaml", renderRecord(studio).slice("---\n".length, -"---\n".length)],
    ...(set
      ? [
          [
            `tiles/${set.id}/set.md`,
            renderRecord({ name: set.name, jars: Object.fromEntries(set.jars), defaults }),
          ] as const,
        ]
      : []),
    ...site.glazes
      .filter(({ id }) => named.has(id))
      .map((glaze) => [`recipes/glazes/${glaze.id}.md`, renderGlaze(glaze)] as const),
    ...site.clays.map(
      ({ id, name, cones, colour, reclaim }) =>
        [
          `recipes/clays/${id}.md`,
          renderRecord({ name, cones, colour, reclaim: reclaim && "yes" }),
        ] as const,
    ),
    ...site.firings.map(
      ({ id, ...firing }) => [`tiles/firings/${id}.md`, renderRecord({ ...firing })] as const,
    ),
  ]);
}

function glazesOf(step: DraftStep): readonly string[] {
  return step.step === "coat" ? [step.glaze, step.fadesTo, ...step.over] : [];
}

/** Where it comes from is of no account here, and somebody has to be named. */
function renderGlaze({ name, kind, cones, cover, moves, tone }: FormGlaze): string {
  return renderRecord({
    name,
    kind,
    cones,
    cover,
    moves,
    tone,
    bought: { maker: "not asked here" },
  });
}

/** Splits records that were rendered here; the package that splits any is Node's. */
const plainTexts: TextParser = {
  parse: (text, form) => {
    const { yaml, notes } = form === "yaml" ? { yaml: text, notes: "" } : split(text);
    return { ...parseYaml(yaml), notes };
  },
  yamlOf: (text, form) => (form === "yaml" ? text : split(text).yaml),
};

function split(text: string): { readonly yaml: string; readonly notes: string } {
  const end = text.indexOf("\n---\n");
  return { yaml: text.slice("---".length, end), notes: text.slice(end + "\n---\n".length).trim() };
}
