/** Records of the other kinds that a request adds or changes, and all that went. */

import { findMaterialIdOf } from "../chemistry/from-records.ts";
import type { Archive, Filed, Firing, Tile } from "../records/archive.ts";
import { materialsIn } from "../records/uses.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { fieldChanges } from "./fields.ts";
import { tilesByGlaze } from "./glazes.ts";
import type { KnownFile } from "./side.ts";
import type { FieldChange, GoneRecord, RecordChange } from "./types.ts";

type Other = Exclude<RecordChange["kind"], "studio">;

/** Sets, firings, clays, materials, pages and the studio's own record. */
export function recordsOfRequest(before: Archive | null, after: Archive): readonly RecordChange[] {
  const kinds: readonly Other[] = ["set", "firing", "clay", "material", "page"];
  return [
    ...studioChange(before, after),
    ...kinds.flatMap((kind) => changesOf(kind, before, after)),
  ];
}

function studioChange(before: Archive | null, { studio }: Archive): readonly RecordChange[] {
  const was = before && { record: before.studio, notes: "" };
  const fields = fieldChanges("studio", was ?? undefined, { record: studio, notes: "" });
  if (fields.length === 0) return [];
  const what = was ? "changed" : "added";
  const none = { tiles: [], glazes: [] };
  return [
    {
      what,
      kind: "studio",
      id: "studio.yaml",
      file: "studio.yaml",
      name: studio.studio,
      fields,
      ...none,
    },
  ];
}

type Records = ReadonlyMap<string, Filed<object>>;

function recordsOf(archive: Archive): Readonly<Record<Other, Records>> {
  const { sets, firings, clays, materials, pages } = archive;
  return { set: sets, firing: firings, clay: clays, material: materials, page: pages };
}

function changesOf(kind: Other, before: Archive | null, after: Archive): readonly RecordChange[] {
  const earlier: Records = before ? recordsOf(before)[kind] : new Map();
  const now = [...recordsOf(after)[kind]].sort(([, a], [, b]) => compareIds(a.id, b.id));
  return now.flatMap(([key, record]) => {
    const was = earlier.get(key);
    const fields = [...fieldChanges(kind, was, record), ...logChange(was, record)];
    if (was && fields.length === 0) return [];
    return [
      {
        ...{
          what: was ? "changed" : "added",
          kind,
          id: record.id,
          file: record.file,
          name: nameOf(record),
          fields,
        },
        ...(was ? touchedBy(kind, key, after) : { tiles: [], glazes: [] }),
      },
    ];
  });
}

/** What a pyrometer wrote is no field of the record, and says as much of a firing. */
function logChange(was: Filed<object> | undefined, now: Filed<object>): readonly FieldChange[] {
  const [before, after] = [was, now].map(
    (firing) => (firing as Firing | undefined)?.log?.text ?? null,
  );
  if (before === after) return [];
  const lines = (text: string | null | undefined) =>
    text == null ? null : `${text.split("\n").length} lines`;
  const isAsLong = lines(before) === lines(after);
  return [
    {
      field: "what the log holds",
      before: lines(before),
      after: isAsLong ? `${lines(after)}, others than before` : lines(after),
      isPrivate: false,
    },
  ];
}

function nameOf({ id, record }: Filed<object>): string {
  const named = ["name" in record && record.name, "title" in record && record.title].find(
    (name) => typeof name === "string",
  );
  return typeof named === "string" ? named : id;
}

/** The tiles, and of a material the glazes, that have to do with a record. */
function touchedBy(
  kind: Other,
  key: string,
  archive: Archive,
): Pick<RecordChange, "glazes" | "tiles"> {
  if (kind === "material") return touchedByMaterial(key, archive);
  const uses: Readonly<Record<Exclude<Other, "material">, (tile: Tile) => boolean>> = {
    clay: ({ clay }) => clay !== null && idKey(clay) === key,
    firing: ({ steps }) =>
      steps.some((step) => step.step === "fired" && step.firing && idKey(step.firing) === key),
    page: () => false,
    set: ({ set }) => set !== null && idKey(set) === key,
  };
  const tiles = [...archive.tiles.values()].filter(uses[kind]).map(({ id }) => id);
  return { tiles: tiles.sort(compareIds), glazes: [] };
}

function touchedByMaterial(key: string, archive: Archive): Pick<RecordChange, "glazes" | "tiles"> {
  const idOf = findMaterialIdOf(archive);
  const holds = (glaze: string) =>
    materialsIn([glaze], archive, (word) => idOf(word) ?? word).has(key);
  const glazes = [...archive.glazes].filter(([glaze]) => holds(glaze));
  const byGlaze = tilesByGlaze(archive);
  const tiles = new Set(glazes.flatMap(([glaze]) => byGlaze.get(glaze) ?? []));
  return {
    tiles: [...tiles].sort(compareIds),
    glazes: glazes.map(([, { record }]) => record.name).sort(compareIds),
  };
}

/**
 * Records whose files are gone, faulty ones too; a tile whose code leads on to a new one is not.
 *
 * @param movedOn keys of such codes
 */
export function goneRecords(
  before: readonly KnownFile[],
  after: readonly KnownFile[],
  movedOn: ReadonlySet<string>,
): readonly GoneRecord[] {
  const there = new Set(after.map(({ kind, id }) => `${kind} ${idKey(id)}`));
  return before
    .filter(({ kind, id }) => !there.has(`${kind} ${idKey(id)}`))
    .filter(({ kind, id }) => kind !== "tile" || !movedOn.has(idKey(id)))
    .map(({ kind, id, file }) => ({ kind, id, file }))
    .sort((a, b) => compareIds(a.file, b.file));
}
