/** What it takes to forget a maker, or a tile: files that go, fields that go, and what is left to people. */
import type { FieldChange } from "../../archive/write-fields.ts";
import { findNames, hiddenNamesOf } from "../../checks/names/hidden-names.ts";
import type { Archive, Tile } from "../../records/archive.ts";
import type { RecordKind } from "../../records/kinds.ts";
import type { SourceMap } from "../../records/read.ts";
import { findCodes, idKey } from "../../terms/ids.ts";
import { speaksOf } from "../rename/rename-plan.ts";

/** Whom or what to forget. */
export type Forgotten =
  | { readonly what: "maker"; readonly key: string; readonly name: string | undefined }
  | { readonly what: "tile"; readonly tile: Tile };

/** Fields of a record that change. */
export interface RecordEdit {
  readonly file: string;
  readonly kind: RecordKind["name"];
  readonly fields: readonly FieldChange[];
  /** What is done, for people. */
  readonly told: string;
}

/** A line that people have to see to. */
export interface LineToSee {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

export interface ForgetPlan {
  readonly edits: readonly RecordEdit[];
  /** Files that go, relative to the archive. */
  readonly files: readonly string[];
  /** The codes of the tiles that go. */
  readonly codes: readonly string[];
}

/** What no tool can take out: words that people wrote. */
export interface LeftInWords {
  /** Where the name of the maker is, or a part of it. */
  readonly names: readonly LineToSee[];
  /** Where a tile that goes is named. */
  readonly mentions: readonly LineToSee[];
}

/** The archive as it was read. */
export interface ReadSources {
  readonly archive: Archive;
  /** What a record's front matter says, by its file. */
  readonly sourceOf: (file: string) => SourceMap;
}

/**
 * Plans what is forgotten.
 *
 * @param withTiles whether a maker's tiles go too
 */
export function planForgetting(
  forgotten: Forgotten,
  withTiles: boolean,
  read: ReadSources,
): ForgetPlan {
  const tiles = tilesOf(forgotten, withTiles, read.archive);
  const files = tiles.flatMap(({ file, pictures }) => [file, ...pictures.map((each) => each.file)]);
  const edits = [...ofStudio(forgotten, tiles, read), ...ofLoads(tiles, read)];
  return { edits, files, codes: tiles.map(({ id }) => id) };
}

function tilesOf(forgotten: Forgotten, withTiles: boolean, { tiles }: Archive): readonly Tile[] {
  if (forgotten.what === "tile") return [forgotten.tile];
  return withTiles ? [...tiles.values()].filter(({ maker }) => maker === forgotten.key) : [];
}

/** The name goes; the key stays as long as any record names it. */
function ofStudio(
  forgotten: Forgotten,
  tiles: readonly Tile[],
  { archive }: ReadSources,
): readonly RecordEdit[] {
  if (forgotten.what === "tile") return [];
  const { key, name } = forgotten;
  const edit = { file: "studio.yaml", kind: "studio" as const };
  const isUsed =
    [...archive.tiles.values()].some((tile) => tile.maker === key && !tiles.includes(tile)) ||
    [...archive.sets.values()].some(({ record }) =>
      [record.teacher, record.defaults?.maker].some((each) => each && idKey(each) === idKey(key)),
    );
  if (!isUsed && tiles.length > 0)
    return [
      {
        ...edit,
        fields: [{ path: ["makers", key], value: null }],
        told: `take ${key} out of makers`,
      },
    ];
  const maker = archive.studio.makers?.[key];
  const fields = [
    ...["name", "common"].filter((field) => field in (maker ?? {})),
    ...(maker?.commitsAs ? ["commits-as"] : []),
  ];
  if (fields.length === 0) return [];
  return [
    {
      ...edit,
      fields: fields.map((field) => ({ path: ["makers", key, field], value: null })),
      told: tellNames(key, name),
    },
  ];
}

function tellNames(key: string, name: string | undefined): string {
  const what =
    name === undefined ? `what else ${key} is called out` : `the name of ${key} out, ${name}`;
  return `take ${what}; the key stays, since records name it`;
}

/** A load list without the tiles that go; ranges go round them. */
function ofLoads(
  tiles: readonly Tile[],
  { archive, sourceOf }: ReadSources,
): readonly RecordEdit[] {
  const gone = new Set(tiles.map(({ id }) => idKey(id)));
  return [...archive.firings.values()].flatMap(({ file, record }) => {
    const shelves = Object.entries(record.tiles ?? {}).filter(([, entries]) =>
      entries.flat().some((code) => gone.has(idKey(code))),
    );
    const fields = shelves.map(([shelf]) => {
      const written = (sourceOf(file).tiles as SourceMap | undefined)?.[shelf];
      const entries = typeof written === "string" ? [written] : ((written ?? []) as string[]);
      const value = entries.map((entry) => withoutCodes(entry, gone));
      return { path: ["tiles", shelf], value: value.flat().length > 0 ? value : null };
    });
    if (fields.length === 0) return [];
    const isEmptied =
      fields.length === Object.keys(record.tiles ?? {}).length &&
      fields.every(({ value }) => value === null);
    const codes = tiles.map(({ id }) => id).filter((id) => isIn(record.tiles, id));
    return [
      {
        file,
        kind: "firing" as const,
        fields: isEmptied ? [{ path: ["tiles"], value: null }] : fields,
        told: `take ${codes.join(", ")} off its load`,
      },
    ];
  });
}

function isIn(
  tiles: Readonly<Record<string, readonly (readonly string[])[]>> = {},
  id: string,
): boolean {
  return Object.values(tiles).some((entries) =>
    entries.flat().some((code) => idKey(code) === idKey(id)),
  );
}

/** `A-1..A-5` without `A-3` is `A-1..A-2` and `A-4..A-5`. */
function withoutCodes(entry: string, gone: ReadonlySet<string>): string | readonly string[] {
  const codes = findCodes(entry) ?? [];
  if (!codes.some((code) => gone.has(idKey(code)))) return entry;
  const runs: string[][] = [[]];
  for (const code of codes)
    if (gone.has(idKey(code))) runs.push([]);
    else runs.at(-1)?.push(code);
  return runs
    .filter((run) => run.length > 0)
    .map((run) => (run.length === 1 ? (run[0] ?? "") : `${run[0]}..${run.at(-1)}`));
}

/**
 * Finds what a plan leaves in running words.
 *
 * @param texts what the records and studio.yaml will hold, by their files
 */
export function findLeft(
  forgotten: Forgotten,
  { files, codes }: ForgetPlan,
  texts: ReadonlyMap<string, string>,
): LeftInWords {
  const kept = [...texts].filter(([file]) => !files.includes(file));
  const namesAny = (line: string) => codes.some((code) => speaksOf(line, code));
  return {
    names: forgotten.what === "maker" ? findLines(kept, nameIn(forgotten)) : [],
    mentions: codes.length > 0 ? findLines(kept, namesAny) : [],
  };
}

function findLines(
  texts: readonly (readonly [file: string, text: string])[],
  isMeant: (line: string) => boolean,
): readonly LineToSee[] {
  return texts.flatMap(([file, text]) =>
    text
      .split("\n")
      .flatMap((line, i) => (isMeant(line) ? [{ file, line: i + 1, text: line.trim() }] : [])),
  );
}

function nameIn({ key, name }: Extract<Forgotten, { what: "maker" }>): (line: string) => boolean {
  if (name === undefined) return () => false;
  const names = hiddenNamesOf({ makers: { [key]: { name, shown: "no" } } });
  return (line) => findNames(line, names).length > 0;
}
