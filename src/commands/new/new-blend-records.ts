/** The files of a blend: records of its glazes, of its tiles, and of a set that is new. */
import { posix } from "node:path";
import type { NewFile } from "../../archive/write-new.ts";
import { type FieldValue, renderRecord } from "../../reader/render-record.ts";
import type { Filed } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import type { SetRecord } from "../../records/set.ts";
import type { PlannedGlaze } from "./new-blend-plan.ts";

/** Where the tiles go: into `tiles/` itself, into a set, or into a set that is made for them. */
export type TilePlace =
  | { readonly kind: "loose" }
  | { readonly kind: "set"; readonly set: Filed<SetRecord> }
  | { readonly kind: "new set"; readonly id: string; readonly name: string };

export interface BlendFiles {
  readonly glazes: readonly PlannedGlaze[];
  /** A code for each glaze. */
  readonly codes: readonly string[];
  readonly place: TilePlace;
  /** The id of the clay, where one was named. */
  readonly clay: string | undefined;
}

export function renderBlendFiles({ glazes, codes, place, clay }: BlendFiles): readonly NewFile[] {
  const folder = folderOf(place);
  const isDefault = place.kind === "new set" || clayOf(place) === clay;
  const tileClay = isDefault ? undefined : clay;
  return [
    ...glazes.filter(({ isNew }) => isNew).map(renderGlaze),
    ...(place.kind === "new set" ? [renderSet(place, folder, codes, clay)] : []),
    ...glazes.map((glaze, i) => ({
      path: `${folder}/${codes[i]}.md`,
      content: renderRecord({ clay: tileClay, layers: [{ glaze: glaze.id }] }),
    })),
  ];
}

function folderOf(place: TilePlace): string {
  if (place.kind === "loose") return "tiles";
  return place.kind === "set" ? posix.dirname(place.set.file) : `tiles/${place.id}`;
}

function clayOf(place: TilePlace): string | undefined {
  return place.kind === "set" ? place.set.record.defaults?.clay : undefined;
}

function renderGlaze({ id, record }: PlannedGlaze): NewFile {
  return { path: `recipes/glazes/${id}.md`, content: renderRecord(glazeFields(record)) };
}

function glazeFields({ name, kind, blend = [], by, cones }: GlazeRecord) {
  return {
    name,
    kind,
    blend: blend.map(({ glaze, parts }) => ({ glaze, parts: String(parts) })),
    by,
    cones: cones && (cones.from === cones.to ? cones.from : `${cones.from}-${cones.to}`),
    stocked: "no",
  } satisfies Record<string, FieldValue | undefined>;
}

function renderSet(
  { name }: Extract<TilePlace, { kind: "new set" }>,
  folder: string,
  codes: readonly string[],
  clay: string | undefined,
): NewFile {
  const fields = {
    name,
    kind: "series",
    codes: `${codes.at(0)}..${codes.at(-1)}`,
    defaults: clay === undefined ? undefined : { clay },
  };
  return { path: `${folder}/set.md`, content: renderRecord(fields) };
}
