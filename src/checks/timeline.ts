/** The days of a tile's life, in the order in which things were done. */
import { type Archive, type FiredStep, findById, type Tile } from "../records/archive.ts";
import type { KindOfFiring } from "../terms/choices.ts";
import { type FoundAt, firedPlace } from "./places.ts";

/** Something that happened to a tile on a day. */
export interface DatedEvent {
  /** What happened: completes “TB-014 was ...”. */
  readonly what: string;
  /** As ISO 8601, so that days sort as text. */
  readonly on: string;
  readonly place: FoundAt;
  /** The kind of a firing whose place among the layers was not written: a load list added it. */
  readonly addedByLoad: KindOfFiring | null;
}

/**
 * Forming, the firings before the first layer of glaze, glazing, the firings after it: those that
 * have a day. Glazing is left out where there is no layer of glaze.
 */
export function timelineOf(archive: Archive, tile: Tile): readonly DatedEvent[] {
  const { formed, glazed } = tile.record;
  const firstCoat = tile.steps.findIndex((step) => step.step === "coat");
  const early = firstCoat < 0 ? tile.steps : tile.steps.slice(0, firstCoat);
  const late = firstCoat < 0 ? [] : tile.steps.slice(firstCoat);
  const fired = (steps: Tile["steps"]) =>
    steps.flatMap((step) => (step.step === "fired" ? (findFired(archive, tile, step) ?? []) : []));
  return [
    ...(formed === undefined ? [] : [ownField("formed", formed)]),
    ...fired(early),
    ...(glazed === undefined || firstCoat < 0 ? [] : [ownField("glazed", glazed)]),
    ...fired(late),
  ];
}

function ownField(what: "formed" | "glazed", on: string): DatedEvent {
  return { what, on, place: { path: [what] }, addedByLoad: null };
}

function findFired(archive: Archive, tile: Tile, step: FiredStep): DatedEvent | undefined {
  const firing = findById(archive.firings, step.firing);
  if (firing?.record.on === undefined) return undefined;
  return {
    what: `fired in ${firing.id}`,
    on: firing.record.on,
    place: firedPlace(tile, step, firing),
    addedByLoad: step.at === null ? step.kind : null,
  };
}
