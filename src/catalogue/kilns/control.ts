/**
 * Control tiles: one tile made again and again and put into every load. Where its twins change,
 * the kiln or the glaze has; the cones beside them tell which.
 */

import { differenceCiede2000 } from "../../colour/difference.ts";
import type { MeasuredColour } from "../../colour/measure.ts";
import { groupAlike, unknownAspects } from "../../likeness/alike.ts";
import { type Aspect, asGlazed } from "../../likeness/make-up.ts";
import type { Again, Atmosphere, Effect, Fault, Surface } from "../../terms/choices.ts";
import { type Cone, conesHotter } from "../../terms/cones.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { isOtherRun } from "../../terms/run.ts";
import type { Link } from "../link.ts";
import type { CatalogueSet } from "../sets.ts";
import type { CatalogueTile } from "../tiles.ts";
import { firingsOf, type TileFiring } from "./tile-firings.ts";

/** A control tile, whose twins stand in many loads and tell the kiln from the glaze. */
export interface CatalogueControl {
  /** The tile that sets name. */
  readonly tile: string;
  readonly sets: readonly Link[];
  /** The tile itself and its twins, a load each, in the order of the loads' days. */
  readonly twins: readonly ControlTwin[];
  /** What nobody wrote down of how they were made, so that twins may differ in it. */
  readonly unknown: readonly Aspect[];
}

/** How a control tile or its twin came out of one load. */
export interface ControlTwin {
  readonly tile: string;
  readonly firing: Link;
  readonly on: string | null;
  readonly kiln: Link | null;
  readonly shelf: string | null;
  /** At its own shelf, where a witness was read there; else the cone aimed at. */
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly surface: readonly Surface[];
  readonly effects: readonly Effect[];
  readonly faults: readonly Fault[];
  /** Millimetres that it moved. */
  readonly run: number | null;
  readonly again: Again | null;
  /** True where it was not fired again: what its photograph shows. */
  readonly pictured: boolean;
  /** Null where it was not measured, or was measured only after a later firing. */
  readonly colour: MeasuredColour | null;
  /** Colour difference from the control tile itself, ΔE00. */
  readonly difference: number | null;
  /** In what it differs from the control tile itself; empty where it is like it. */
  readonly unlike: readonly Unlike[];
  /** How many cones hotter its shelf was than the control tile's; null where one is not known. */
  readonly hotter: number | null;
}

/** One thing in which a twin differs from its control tile, and what that one had. */
export type Unlike =
  | { readonly in: "colour" }
  | { readonly in: "fault"; readonly fault: Fault }
  | { readonly in: "run"; readonly run: number; readonly model: number }
  | {
      readonly in: "surface";
      readonly surface: readonly Surface[];
      readonly model: readonly Surface[];
    };

/**
 * Every tile that some set names as its control, with its twins: tiles made alike up to the firing
 * after their last layer, which is what they are there to tell of.
 *
 * @param kilns the page of each firing's kiln, by the firing's key
 */
export function listControls(
  sets: readonly CatalogueSet[],
  tiles: readonly CatalogueTile[],
  kilns: ReadonlyMap<string, Link>,
): readonly CatalogueControl[] {
  const glazedAlike = groupAlike(tiles, ({ makeUp }) => asGlazed(makeUp), {
    unwritten: "together",
  });
  const byMakeUp = new Map(
    glazedAlike.flatMap((twins) => twins.map((tile) => [tile.id, twins] as const)),
  );
  const byId = new Map(tiles.map((tile) => [tile.id, tile]));
  const named = new Map<string, Link[]>();
  for (const { control, id, name, url } of sets) {
    if (control !== null) addTo(named, control, { id, name, url });
  }
  return [...named].flatMap(([id, naming]) => {
    const control = byId.get(id);
    if (!control) return [];
    const twins = byMakeUp.get(id) ?? [control];
    const loads = twins.flatMap((tile) => loadsOf(tile, kilns)).sort(inOrderOfDays);
    const unknown = unknownAspects(asGlazed(control.makeUp));
    return [{ tile: id, sets: naming, twins: compareWith(control, loads), unknown }];
  });
}

type Load = Omit<ControlTwin, "difference" | "unlike" | "hotter">;

/** The loads that a tile has been through after its bisque, each with what came of it. */
function loadsOf(tile: CatalogueTile, kilns: ReadonlyMap<string, Link>): readonly Load[] {
  const fired = firingsOf(tile.steps).filter(({ kind }) => kind !== "bisque");
  return fired.flatMap((firing, i) => {
    const isLast = i === fired.length - 1;
    if (!firing.page || (firing.on === null && tile.results.length === 0)) return [];
    const result = resultOf(tile, firing.page.id, isLast);
    return [
      {
        tile: tile.id,
        firing: firing.page,
        ...placeOf(firing),
        kiln: kilns.get(idKey(firing.page.id)) ?? null,
        surface: result?.surface ?? [],
        effects: result?.effects ?? [],
        faults: (result?.faults ?? []).filter((fault) => fault !== "none"),
        run: result?.run ?? null,
        again: result?.again ?? null,
        pictured: isLast,
        colour: isLast ? tile.colour : null,
      },
    ];
  });
}

function placeOf({ on, shelf, cone, atmosphere }: TileFiring) {
  return { on, shelf, cone, atmosphere };
}

function resultOf({ results }: CatalogueTile, firing: string, isLast: boolean) {
  return results.findLast(({ after }) =>
    after === undefined ? isLast : idKey(after) === idKey(firing),
  );
}

function inOrderOfDays(a: Load, b: Load): number {
  return compareIds(a.on ?? "9999", b.on ?? "9999") || compareIds(a.tile, b.tile);
}

/** Sets every load beside the control tile's own last one. */
function compareWith(control: CatalogueTile, loads: readonly Load[]): readonly ControlTwin[] {
  const model = loads.findLast(({ tile }) => tile === control.id);
  const compared = loads.map((load) => ({
    load,
    difference: model && load !== model ? colourDifference(model, load) : null,
  }));
  const scatter = medianOf(compared.flatMap(({ difference }) => difference ?? []));
  return compared.map(({ load, difference }) => {
    const isOtherColour = (difference ?? 0) > Math.max(otherColour, 2 * scatter);
    return {
      ...load,
      difference,
      unlike: model
        ? [...differencesFrom(model, load), ...(isOtherColour ? [{ in: "colour" } as const] : [])]
        : [],
      hotter: model?.cone && load.cone ? conesHotter(load.cone, model.cone) : null,
    };
  });
}

function colourDifference(model: Load, load: Load): number | null {
  if (!model.colour || !load.colour) return null;
  return differenceCiede2000(model.colour.lab, load.colour.lab);
}

/** The middle one, so that a twin that came out otherwise does not hide itself. */
function medianOf(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;
}

/**
 * Beyond so much (ΔE00), and beyond twice what the twins lie off in the middle, a colour is taken
 * to differ in more than light and lens. Common practice, no source.
 */
const otherColour = 6;

/** Crumbs of the kiln's roof tell of neither heat nor glaze, so they make no difference. */
function differencesFrom(model: Load, load: Load): readonly Unlike[] {
  const faults = load.faults.filter(
    (fault) => fault !== "kiln-crumbs" && !model.faults.includes(fault),
  );
  return [
    ...otherSurface(model, load),
    ...faults.map((fault) => ({ in: "fault", fault }) as const),
    ...otherMove(model, load),
  ];
}

function otherSurface(model: Load, { surface }: Load): readonly Unlike[] {
  const isOther =
    model.surface.length > 0 &&
    surface.length > 0 &&
    !surface.some((each) => model.surface.includes(each));
  return isOther ? [{ in: "surface", surface, model: model.surface }] : [];
}

function otherMove(model: Load, { run }: Load): readonly Unlike[] {
  if (model.run === null || run === null) return [];
  return isOtherRun(run, model.run) ? [{ in: "run", run, model: model.run }] : [];
}
