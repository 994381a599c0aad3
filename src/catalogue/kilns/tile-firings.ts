/** What the kiln did to a tile. */

import type { Curve } from "../../firing/curve.ts";
import type { HeatReached } from "../../firing/heat.ts";
import { coneAtShelf, readWitness, type Stretch } from "../../firing/witness.ts";
import {
  type Archive,
  type FiredStep,
  type Firing,
  findById,
  type TileStep,
} from "../../records/archive.ts";
import type { FiringRecord } from "../../records/firing.ts";
import type { Atmosphere, HeatSource } from "../../terms/choices.ts";
import { type Cone, findHottest } from "../../terms/cones.ts";
import { firingUrl } from "../addresses.ts";
import type { Link } from "../link.ts";
import type { CatalogueHeat, FiringView, HeatFrom } from "./heat.ts";
import type { Agreement } from "./story.ts";

/** A step of a tile: what was put on or taken off as it was written, a firing with what it was. */
export type CatalogueStep = Exclude<TileStep, FiredStep> | TileFiring;

/** One firing as one tile had it. */
export interface TileFiring extends FiredStep {
  /** The firing's own page; null where only its kind is known. */
  readonly page: Link | null;
  readonly on: string | null;
  /** The cone at the tile's shelf: the witness where one was read there, else the aim. */
  readonly cone: Cone | null;
  /** The cone that was aimed at. */
  readonly aim: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly heatedBy: HeatSource | null;
  readonly kiln: string | null;
  /** What the witness cones on its own shelf showed; null where none were read there. */
  readonly witness: Stretch | null;
  /** What the log works out at or, without one, the programme; null where there is neither. */
  readonly reached: Reached | null;
  readonly agreement: Agreement;
  /** Of the same log or programme: no more than some sixty points. */
  readonly curve: Curve | null;
}

/** What a log or a programme works out at. */
export interface Reached extends HeatReached {
  readonly from: HeatFrom;
}

/** What is shown of firings, by `idKey`. */
export type FiringViews = ReadonlyMap<string, FiringView>;

/** Gives a firing as a tile had it. */
export type FindTileFiring = (step: FiredStep) => TileFiring;

/** What went through one load on one shelf, as the same step, shares one firing: most of a load. */
export function tileFirings(archive: Archive, views: FiringViews): FindTileFiring {
  const byLoad = new Map<string | null, Map<string, TileFiring>>();
  return (step) => {
    const known = byLoad.get(step.firing) ?? new Map<string, TileFiring>();
    byLoad.set(step.firing, known);
    const place = `${step.at} ${step.kind} ${step.shelf === null ? "" : `=${step.shelf}`}`;
    const firing = known.get(place) ?? tileFiring(step, archive, views);
    known.set(place, firing);
    return firing;
  };
}

/** A tile's steps, each firing with what is known of it. */
export function withFirings(
  steps: readonly TileStep[],
  firingOf: FindTileFiring,
): readonly CatalogueStep[] {
  return steps.map((step) => (step.step === "fired" ? firingOf(step) : step));
}

/** The firings among a tile's steps, in their order. */
export function firingsOf(steps: readonly CatalogueStep[]): readonly TileFiring[] {
  return steps.filter((step) => step.step === "fired");
}

function tileFiring(step: FiredStep, archive: Archive, views: FiringViews): TileFiring {
  const firing = findById(archive.firings, step.firing);
  const { record } = firing ?? {};
  return {
    ...step,
    page: firing ? firingLink(firing) : null,
    on: record?.on ?? null,
    cone: (record && coneAtShelf(record, step.shelf)) ?? null,
    aim: record?.cone ?? null,
    atmosphere: record?.atmosphere ?? null,
    heatedBy: record?.heatedBy ?? null,
    kiln: record?.kiln ?? null,
    witness: (record && witnessAt(record, step.shelf)) ?? null,
    ...heatBeside(findById(views, step.firing)),
  };
}

function heatBeside(
  view: FiringView | undefined,
): Pick<TileFiring, "reached" | "agreement" | "curve"> {
  const { heat = null, story, smallCurve = null } = view ?? {};
  return {
    reached: heat && reachedBy(heat),
    agreement: story?.agreement ?? "unknown",
    curve: smallCurve,
  };
}

function reachedBy({ from, equivalentCone, atLeast, openRange }: CatalogueHeat): Reached {
  return { from, equivalentCone, atLeast, openRange };
}

function witnessAt(record: FiringRecord, shelf: string | null): Stretch | undefined {
  const witness = shelf === null ? undefined : record.witness?.[shelf];
  const reading = witness && readWitness(witness);
  return reading?.ok ? { low: reading.low, high: reading.high } : undefined;
}

/** The hottest firing that is no bisque, which decides a tile's cone and atmosphere. */
export function findDecidingFiring(steps: readonly CatalogueStep[]): TileFiring | undefined {
  const others = firingsOf(steps).filter((firing) => firing.kind !== "bisque");
  const hottest = findHottest(others.flatMap((firing) => firing.cone ?? []));
  return others.findLast((firing) => firing.cone === hottest) ?? others.at(-1);
}

export function firingLink({ id }: Firing): Link {
  return { id, name: id, url: firingUrl(id) };
}
