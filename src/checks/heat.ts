/** What heat the clay and the glazes of a tile met, against the cones they are for. */
import { degreesHotter } from "../firing/degrees.ts";
import {
  type Archive,
  type CoatStep,
  type FiredStep,
  type Firing,
  findById,
  type Tile,
} from "../records/archive.ts";
import type { FieldPath } from "../records/problem.ts";
import { type Cone, type ConeRange, conesOutside } from "../terms/cones.ts";
import { rememberFor } from "../terms/remember.ts";
import { findClayRange } from "./clay-range.ts";
import { type FiringCone, findFiringCone } from "./firing-cone.ts";
import { glazePath, stepPath } from "./places.ts";
import { coatsOn } from "./steps.ts";

/** The clay, or a glaze, that has cones to keep to. */
export interface Subject {
  readonly kind: "clay" | "glaze";
  readonly name: string;
  /** The file that states its range. */
  readonly file: string;
  readonly range: ConeRange;
  /** The field that puts a glaze on the tile; null for the clay, which the set may have named. */
  readonly path: FieldPath | null;
  /** For a reclaimed clay: the name of the clay it counts as. */
  readonly countsAs: string | null;
}

/** A firing of a tile whose cone is known. */
export interface HotFiring extends FiringCone {
  readonly firing: Firing;
  readonly step: FiredStep;
  /** Which of the tile's steps it is. */
  readonly index: number;
}

/** A firing that one subject went through, or is to go through. */
export interface Heat extends HotFiring {
  readonly subject: Subject;
  /** How many cones hotter than its range (positive) or cooler (negative). */
  readonly outside: number;
  /** The same in °C, at 60 °C an hour. */
  readonly degrees: number;
}

/** Where a heat is told in the tile's file: at the glaze, or for the clay at the firing. */
export function heatPath({ subject, step }: Heat): FieldPath {
  return subject.path ?? stepPath(step, "fired");
}

/** The firing of a step, where it names one whose cone is known. */
export function findHotFiring(archive: Archive, tile: Tile, index: number): HotFiring | undefined {
  const step = tile.steps[index];
  if (step?.step !== "fired") return undefined;
  const firing = findById(archive.firings, step.firing);
  const found = firing && findFiringCone(firing.record);
  return firing && found && { ...found, firing, step, index };
}

/**
 * Every firing of known cone that was hotter than the range of the clay, or of a glaze that lay on
 * the tile by then. A touch-up meets the heat like any layer; what `remove: all` took off before the
 * firing does not.
 */
export function findTooHot(archive: Archive, tile: Tile): readonly Heat[] {
  return tooHotIn(archive)(tile);
}

/** Several rules ask this of every tile. */
const tooHotIn = rememberFor((archive: Archive) =>
  rememberFor((tile: Tile) => reckonTooHot(archive, tile)),
);

function reckonTooHot(archive: Archive, tile: Tile): readonly Heat[] {
  return tile.steps.flatMap((_, index) => {
    const hot = findHotFiring(archive, tile, index);
    if (!hot) return [];
    const isExceeded = (range: ConeRange) => conesOutside(hot.cone, range) > 0;
    const clay = findClay(archive, tile);
    const glazes = coatsOn(tile.steps.slice(0, index)).flatMap((coat) =>
      glazesOf(archive, coat, isExceeded),
    );
    const subjects = [...(clay && isExceeded(clay.range) ? [clay] : []), ...firstOfEach(glazes)];
    return subjects.map((subject) => ({ ...hot, subject, ...outsideOf(hot.cone, subject.range) }));
  });
}

/** How far a cone lies outside a range: in cones and in °C, 0 inside it. */
export function outsideOf(cone: Cone, range: ConeRange): Pick<Heat, "outside" | "degrees"> {
  const outside = conesOutside(cone, range);
  const end = outside > 0 ? range.to : range.from;
  return { outside, degrees: outside === 0 ? 0 : degreesHotter(cone, end) };
}

/** The tile's clay, where its cones are known. */
export function findClay(archive: Archive, tile: Tile): Subject | undefined {
  const clay = findById(archive.clays, tile.clay);
  const found = clay && findClayRange(archive, clay);
  if (!found) return undefined;
  return {
    kind: "clay",
    name: clay.record.name,
    file: found.from.file,
    range: found.range,
    path: null,
    countsAs: clay.record.reclaim === true ? found.from.record.name : null,
  };
}

/** The glazes of a layer whose cones are known, or those of them with such a range. */
export function glazesOf(
  archive: Archive,
  coat: CoatStep,
  isSuch: (range: ConeRange) => boolean = () => true,
): readonly Subject[] {
  return coat.glazes.flatMap((id) => {
    const glaze = findById(archive.glazes, id);
    if (!glaze?.record.cones || !isSuch(glaze.record.cones)) return [];
    const { name, cones: range } = glaze.record;
    const path = glazePath(coat, id);
    return [{ kind: "glaze" as const, name, file: glaze.file, range, path, countsAs: null }];
  });
}

/** Subjects without those that another of the same file comes before. */
export function firstOfEach<T extends { readonly file: string }>(all: readonly T[]): readonly T[] {
  return all.filter(({ file }, i) => all.findIndex((other) => other.file === file) === i);
}
