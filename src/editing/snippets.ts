/** Snippets for the front matter of records, as Visual Studio Code reads them from a workspace. */
import type { Archive } from "../records/archive.ts";
import { type RecordKind, recordKinds } from "../records/kinds.ts";
import { type KnownNames, knownNames } from "./names.ts";
import { type FieldShape, type MapShape, type Shape, shapeOfRecord } from "./shape.ts";

interface Snippet {
  readonly scope: "markdown" | "yaml";
  readonly prefix: string;
  readonly body: readonly string[];
  readonly description: string;
  readonly isFileTemplate?: true;
}

type Snippets = Readonly<Record<string, Snippet>>;

/** One for each kind of record, and one for each field that names nothing of an archive's own. */
export function commonSnippets(): string {
  return render(ofAll((field) => field.names.length === 0, undefined, recordSnippets));
}

/** One for each field that names something, with what there is to name. Of makers, the keys alone. */
export function namingSnippets(archive: Archive): string {
  const known = knownNames(archive, null);
  return render(
    ofAll(
      (field) => field.names.length > 0,
      known,
      () => ({}),
    ),
  );
}

function render(snippets: Snippets): string {
  return `${JSON.stringify(snippets, null, 2)}\n`;
}

function ofAll(
  isWanted: (field: FieldShape) => boolean,
  known: KnownNames | undefined,
  more: (kind: RecordKind) => Snippets,
): Snippets {
  return Object.assign(
    {},
    ...recordKinds.map((kind) => {
      const fields = fieldsIn(shapeOfRecord(kind.name), []).filter(({ field }) => isWanted(field));
      const made = fields.map(({ path, field }) => [
        `${kind.name}: ${path.join(" › ")}`,
        fieldSnippet(kind, path, field, known),
      ]);
      return { ...more(kind), ...Object.fromEntries(made) };
    }),
  );
}

interface FieldAt {
  readonly path: readonly string[];
  readonly field: FieldShape;
}

/** Every field, those in maps and in the entries of lists too. */
function fieldsIn(shape: Shape, path: readonly string[]): readonly FieldAt[] {
  const inside = [shape.entries, shape.values].filter((it) => it !== undefined);
  const found = [
    ...shape.maps.flatMap(({ fields }) =>
      [...fields].flatMap(([name, field]) => [
        { path: [...path, name], field },
        ...fieldsIn(field, [...path, name]),
      ]),
    ),
    ...inside.flatMap((it) => fieldsIn(it, path)),
  ];
  return [...new Map(found.map((it) => [it.path.join(" › "), it])).values()];
}

function fieldSnippet(
  kind: RecordKind,
  path: readonly string[],
  field: FieldShape,
  known: KnownNames | undefined,
): Snippet {
  const name = path.at(-1) ?? "";
  return {
    scope: kind.name === "studio" ? "yaml" : "markdown",
    prefix: name,
    body: lineOf(name, field, known, startCounting()),
    description: `${path.length > 1 ? `In ${path.slice(0, -1).join(" › ")} of a` : "Of a"} ${kind.name}: ${field.sentence}`,
  };
}

/** The head of a new record: what it needs, and room for notes. */
function recordSnippets(kind: RecordKind): Snippets {
  const [map] = shapeOfRecord(kind.name).maps;
  if (!map || kind.name === "studio") return {};
  const count = startCounting();
  const fields = neededOf(map).flatMap(([name, field]) => lineOf(name, field, undefined, count));
  return {
    [`a ${kind.name}`]: {
      scope: "markdown",
      prefix: kind.name,
      body: ["---", ...fields, "---", "$0"],
      description: kind.sentence,
      isFileTemplate: true,
    },
  };
}

/** The required fields, and the first of those of which one is needed. */
function neededOf({
  fields,
  oneOf,
  isOneNeeded,
}: MapShape): readonly (readonly [string, FieldShape])[] {
  const first = isOneNeeded ? oneOf[0] : undefined;
  return [...fields].filter(([name, field]) => field.required || name === first);
}

function startCounting(): () => number {
  let last = 0;
  return () => {
    last += 1;
    return last;
  };
}

function lineOf(
  name: string,
  field: Shape,
  known: KnownNames | undefined,
  count: () => number,
): readonly string[] {
  const [map] = field.maps;
  const [entry] = field.entries?.maps ?? [];
  if (map) return [`${name}: ${flowOf(map, count)}`];
  if (entry) return [`${name}:`, `  - ${flowOf(entry, count)}`];
  if (field.values) return [`${name}: {$${count()}: $${count()}\\}`];
  const place = placeFor(field, known, count);
  return [`${name}: ${field.isScalar ? place : `[${place}]`}`];
}

/** What a map needs; its first field where it needs none. */
function flowOf(map: MapShape, count: () => number): string {
  const needed = neededOf(map);
  const fields = needed.length > 0 ? needed : [...map.fields].slice(0, 1);
  const written = fields.map(([name, field]) => `${name}: ${placeFor(field, undefined, count)}`);
  return `{${written.join(", ")}\\}`;
}

/** A place to write, with what there is to choose from. */
function placeFor(field: Shape, known: KnownNames | undefined, count: () => number): string {
  const named = known && field.names.length > 0 ? field.names.flatMap((name) => known[name]) : [];
  const choices = [...field.choices, ...named.map(({ word }) => word).filter(isPlain)];
  const place = count();
  return choices.length === 0
    ? `$${place}`
    : `\${${place}|${choices.map(escapeChoice).join(",")}|}`;
}

/** Whether a word can stand in YAML without quotes, which a choice cannot have where they are needed alone. */
function isPlain(word: string): boolean {
  return /^[\p{L}\p{N}](?:[\p{L}\p{M}\p{N} ._-]*[\p{L}\p{M}\p{N}._])?$/u.test(word);
}

/**
 * Between the bars of a choice a backslash escapes itself, a comma and a bar. A bracket needs none there, and
 * would be written with it.
 */
function escapeChoice(word: string): string {
  return word.replace(/[\\,|]/gu, "\\$&");
}
