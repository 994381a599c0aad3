/**
 * What changed from one version of a tile's record to another. Only what was chosen, counted or dated is
 * told with its values; of words of a maker's own only that they changed, and of the maker nothing:
 * what somebody took out of a record must not come back by its history.
 */
import type { LaterLook, Result, TileRecord } from "../../records/tile.ts";
import { textures } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import {
  changedSteps,
  type ShownNames,
  type ToldStep,
  toldStep,
  wordsInStep,
} from "./told-steps.ts";

/** What a version held. */
export interface WrittenTile {
  readonly record: TileRecord;
  readonly notes: string;
}

/** How a tile came out, as far as it is told. */
export type ToldLook = Pick<Result, "surface" | "effects" | "faults" | "run" | "again">;

/** Fields whose values are told; null for one that is not there, or names what is not shown here. */
export type ToldField = "angle" | "clay" | "fate" | "formed" | "glazed" | "shape" | "texture";

/** What is told without its words. */
export type ToldWords =
  | "batch"
  | "codes"
  | "laboratory"
  | "layers"
  | "next-time"
  | "notes"
  | "photo"
  | "result-firing"
  | "texture";

export type TileChange =
  | { readonly what: "first"; readonly layers: number; readonly result: boolean }
  | { readonly what: "photograph"; readonly change: "added" | "changed" }
  | { readonly what: "step"; readonly before: ToldStep | null; readonly after: ToldStep | null }
  | {
      readonly what: "field";
      readonly field: ToldField;
      readonly before: string | null;
      readonly after: string | null;
    }
  | {
      readonly what: "look";
      /** The day of a later look; null for a result. */
      readonly on: string | null;
      readonly before: ToldLook | null;
      readonly after: ToldLook | null;
    }
  | { readonly what: "words"; readonly words: ToldWords }
  | { readonly what: "unseen" }
  | { readonly what: "unreadable" };

/** What is told of a version that is the first. */
export function firstChange({ layers, result }: TileRecord): TileChange {
  return { what: "first", layers: layers.length, result: result !== undefined };
}

/** What differs between two versions, in the order of a tile's page; empty where nothing does. */
export function tileChanges(
  before: WrittenTile,
  after: WrittenTile,
  names: ShownNames,
): readonly TileChange[] {
  const [a, b] = [before.record, after.record];
  return [
    ...fieldChanges(a, b, names),
    ...layerChanges(a.layers, b.layers, names),
    ...resultChanges(a.result ?? [], b.result ?? []),
    ...laterChanges(a.later ?? [], b.later ?? []),
    ...wordChanges(before, after),
    ...(isSame([a.maker, a.showNotes], [b.maker, b.showNotes])
      ? []
      : [{ what: "unseen" } as const]),
  ];
}

function layerChanges(
  a: TileRecord["layers"],
  b: TileRecord["layers"],
  names: ShownNames,
): readonly TileChange[] {
  if (isSame(a, b)) return [];
  return changedSteps(a, b).map(({ before, after }) => ({
    what: "step",
    before: before && toldStep(before, names),
    after: after && toldStep(after, names),
  }));
}

/** What is compared, and what is told of it where that is less. */
interface Field {
  readonly field: ToldField;
  readonly compare: (record: TileRecord) => unknown;
  readonly tell: (record: TileRecord, names: ShownNames) => string | null;
}

const fields: readonly Field[] = [
  field("formed", ({ formed }) => formed),
  field("glazed", ({ glazed }) => glazed),
  {
    field: "clay",
    compare: ({ clay }) => clay && idKey(clay),
    tell: ({ clay }, names) => (clay === undefined ? null : names.clay(clay)),
  },
  field("texture", ({ texture }) => textures.find((each) => each === texture)),
  field("shape", ({ shape }) => shape),
  field("angle", ({ angle }) => angle?.toString()),
  field("fate", ({ fate }) => fate),
];

function field(name: ToldField, of: (record: TileRecord) => string | undefined): Field {
  return { field: name, compare: of, tell: (record) => of(record) ?? null };
}

function fieldChanges(a: TileRecord, b: TileRecord, names: ShownNames): readonly TileChange[] {
  return fields
    .filter(({ compare }) => compare(a) !== compare(b))
    .map(({ field: name, tell }) => ({
      what: "field",
      field: name,
      before: tell(a, names),
      after: tell(b, names),
    }));
}

function resultChanges(a: readonly Result[], b: readonly Result[]): readonly TileChange[] {
  const most = Math.max(a.length, b.length);
  return Array.from({ length: most }, (_, i) => lookChange(null, a[i], b[i])).flat();
}

function laterChanges(a: readonly LaterLook[], b: readonly LaterLook[]): readonly TileChange[] {
  const days = [...new Set([...a, ...b].map(({ on }) => on))].sort();
  const on = (looks: readonly LaterLook[], day: string) => looks.find((each) => each.on === day);
  return days.flatMap((day) => lookChange(day, on(a, day), on(b, day)));
}

function lookChange(
  on: string | null,
  a: Result | LaterLook | undefined,
  b: Result | LaterLook | undefined,
): readonly TileChange[] {
  const [before, after] = [toldLook(a), toldLook(b)];
  return isSame(before, after) ? [] : [{ what: "look", on, before, after }];
}

function toldLook(look: Result | LaterLook | undefined): ToldLook | null {
  if (!look) return null;
  const { surface, effects, faults, run } = look;
  return { surface, effects, faults, run, again: "again" in look ? look.again : undefined };
}

/** What is compared of a maker's own words, and of what is told in no other way. */
const ownWords: Readonly<Record<ToldWords, (written: WrittenTile) => unknown>> = {
  batch: ({ record }) => record.clayBatch,
  codes: ({ record }) => record.formerly,
  laboratory: ({ record }) => record.leachTests,
  layers: ({ record }) => record.layers.flatMap(wordsInStep),
  "next-time": ({ record }) => record.result?.flatMap(({ nextTime }) => nextTime ?? []),
  notes: ({ notes }) => notes.trim(),
  photo: ({ record }) => record.photo,
  "result-firing": ({ record }) => record.result?.flatMap(({ after }) => after ?? []),
  texture: ({ record: { texture } }) => textures.every((each) => each !== texture) && texture,
};

function wordChanges(before: WrittenTile, after: WrittenTile): readonly TileChange[] {
  const words = Object.entries(ownWords) as [ToldWords, (written: WrittenTile) => unknown][];
  return words
    .filter(([, of]) => !isSame(of(before) ?? [], of(after) ?? []))
    .map(([name]) => ({ what: "words", words: name }));
}

/** Whether two plain values are alike. */
function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
