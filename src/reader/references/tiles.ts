/** A tile with its set's and its studio's defaults filled in and everything it names found. */
import type { Filed, Tile, TilePicture, TileStep } from "../../records/archive.ts";
import type { SetRecord } from "../../records/set.ts";
import type { CopyStand, TileRecord } from "../../records/tile.ts";
import { fillDefaults } from "./fill-defaults.ts";
import type { Loading } from "./firings.ts";
import { type Followed, follow, type Known, type Lookup, lookUp } from "./look-up.ts";
import { clayLookup, type MakerCodes, makerLookup } from "./lookups.ts";
import { placeLoads } from "./place-loads.ts";
import { stageOf } from "./stage.ts";
import { followSteps, type StepNames } from "./steps.ts";

/** What one tile may name, and what lies beside it. */
export interface TileSurroundings extends StepNames {
  readonly setRecord: SetRecord | undefined;
  /** What studio.yaml says of every photograph. */
  readonly copyStand: CopyStand | undefined;
  /** Null where the studio's makers are unknown. */
  readonly makers: MakerCodes | null;
  readonly clays: Known;
  readonly loadings: readonly Loading[];
  readonly pictures: readonly TilePicture[];
  readonly pictureMisnamed: boolean;
}

/** Follows everything that a tile names. What was not found is left out of the tile. */
export function followTile(tile: Filed<TileRecord>, around: TileSurroundings): Followed<Tile> {
  const { file } = tile;
  const record = fillDefaults(tile.record, around.setRecord?.defaults, around.copyStand);
  const steps = followSteps(file, record.layers, around);
  const fired = placeLoads(file, steps.value, around.loadings);
  const own = { file, record: tile.record, filled: record };
  const clay = followField(own, "clay", around.clays, clayLookup);
  const maker = followMaker(own, around.makers);
  return {
    value: {
      ...tile,
      record,
      set: around.set,
      stage: stageOf(record, fired.value, around.firings.read),
      steps: fired.value,
      clay: clay.value,
      maker: maker.value,
      pictures: around.pictures,
      pictureMisnamed: around.pictureMisnamed,
      firingsUnknown: isAnyFiringUnknown(record, steps.value, around),
    },
    problems: [clay, maker, steps, fired].flatMap(({ problems }) => problems),
  };
}

function followMaker(own: OwnFields, makers: MakerCodes | null): Followed<string | null> {
  return makers
    ? followField(own, "maker", makers.ids, makerLookup(makers))
    : { value: null, problems: [] };
}

/** A load whose record cannot be read at all may have had any tile in it. */
function isAnyFiringUnknown(
  { layers }: TileRecord,
  followed: readonly TileStep[],
  { firings }: TileSurroundings,
): boolean {
  const count = (steps: readonly { step: string }[]) =>
    steps.filter(({ step }) => step === "fired").length;
  return count(followed) < count(layers) || firings.read.size < firings.ids.size;
}

interface OwnFields {
  readonly file: string;
  readonly record: TileRecord;
  readonly filled: TileRecord;
}

/** A name that the tile has from its set is reported there, once. */
function followField(
  own: OwnFields,
  field: "clay" | "maker",
  known: Known,
  lookup: Lookup,
): Followed<string | null> {
  const written = own.filled[field];
  if (written === undefined) return { value: null, problems: [] };
  if (own.record[field] === undefined)
    return { value: lookUp(known, written) ?? null, problems: [] };
  return follow({ file: own.file, path: [field], written }, known, lookup);
}
