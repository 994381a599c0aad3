/**
 * A tile's make-up: all that was done to it, facet by facet, each known or unknown. Who is like whom
 * is asked of make-ups alone, so that no two pages answer it differently.
 */
import type { CoatStep, FiredStep, RemoveStep, ResistStep, Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import type { FiringFacts } from "./firing-facts.ts";
import { mergeCoats } from "./merge-coats.ts";

/** What a facet is about. Those of a step say so of that step alone. */
export type Aspect =
  | "clay"
  | "texture"
  | "shape"
  | "what"
  | "coats"
  | "way"
  | "thickness"
  | "dipping"
  | "dried"
  | "area"
  | "bisque"
  | "cone"
  | "atmosphere"
  | "fire"
  | "cooling";

export interface Facet {
  readonly aspect: Aspect;
  /** The step's place in the make-up, from 0; null for what is the whole tile's. */
  readonly step: number | null;
  /** Null where nobody wrote it down. */
  readonly value: string | null;
  /**
   * What makes an unknown the same on two tiles whatever it was: the load they were both in.
   * Null for what is known, and where nothing does.
   */
  readonly sharedBy: string | null;
  /** True where a tile may be compared although nobody wrote this down; pages then say so. */
  readonly mayBeUnknown: boolean;
}

export interface MakeUp {
  readonly facets: readonly Facet[];
  /** How many steps there are: coats of one kind on each other count as one. */
  readonly steps: number;
}

/**
 * The make-up of a tile.
 *
 * @param factsOf what is known of the firing a step had
 */
export function makeUpOf(tile: Tile, factsOf: (step: FiredStep) => FiringFacts): MakeUp {
  const steps = mergeCoats(tile.steps);
  const { texture = "smooth", shape = "flat", angle } = tile.record;
  return {
    steps: steps.length,
    facets: [
      facet("clay", null, tile.clay === null ? null : idKey(tile.clay)),
      facet("texture", null, texture),
      facet("shape", null, angle === undefined ? shape : `${shape} ${angle}°`),
      ...steps.flatMap((step, i) => {
        switch (step.step) {
          case "coat":
            return facetsOfCoat(step, i);
          case "fired":
            return facetsOfFiring(step, factsOf(step), i);
          default:
            return facetsOfTool(step, i);
        }
      }),
    ],
  };
}

function facet(
  aspect: Aspect,
  step: number | null,
  value: string | null,
  { sharedBy = null, mayBeUnknown = false }: Partial<Facet> = {},
): Facet {
  return { aspect, step, value, sharedBy: value === null ? sharedBy : null, mayBeUnknown };
}

/** A field of a layer that is compared by no facet is a type error here: nothing is pooled unseen. */
({}) satisfies Record<Exclude<keyof CoatStep, ComparedOfCoat | "at" | "step">, never>;

type ComparedOfCoat =
  | ("glazes" | "along" | "coats" | "cover" | "by" | "thickness" | "seconds" | "gravity")
  | ("dried" | "touchUp" | "where" | "detail" | "over");

function facetsOfCoat(coat: CoatStep, step: number): readonly Facet[] {
  const { glazes, along, coats, cover, by, thickness, seconds, gravity, dried, touchUp } = coat;
  const what = { glazes: glazes.map(idKey), along, touchUp };
  const dipping = seconds === null && gravity === null ? null : `${seconds} s, ${gravity}`;
  const wasDipped = by === "dip" || dipping !== null;
  return [
    facet("what", step, JSON.stringify(what)),
    facet("coats", step, cover ?? (coats === null ? null : String(coats))),
    facet("way", step, by),
    facet("thickness", step, thickness),
    ...(wasDipped ? [facet("dipping", step, dipping, { mayBeUnknown: true })] : []),
    facet("dried", step, dried),
    facet("area", step, areaOf(coat)),
  ];
}

function areaOf({ where, detail, over }: CoatStep): string {
  return JSON.stringify([[...where].sort(), detail, over.map(idKey).sort()]);
}

function facetsOfTool(tool: ResistStep | RemoveStep, step: number): readonly Facet[] {
  const what = tool.step === "resist" ? { resist: tool.resist } : { remove: tool.remove };
  return [
    facet("what", step, JSON.stringify(what)),
    facet("area", step, JSON.stringify([[...tool.where].sort(), tool.detail])),
  ];
}

/**
 * A load's atmosphere and cooling were the same for all that was in it, and its cone for all on one
 * shelf, whether or not anybody wrote them down. Of a bisque firing little is ever written down, and
 * what is known of it is one facet.
 */
function facetsOfFiring(
  { kind, firing, shelf }: FiredStep,
  facts: FiringFacts,
  step: number,
): readonly Facet[] {
  if (kind === "bisque") return facetsOfBisque(facts, step);
  const { cone, atmosphere, fire, cooling } = facts;
  const load = firing === null ? null : idKey(firing);
  const place = load === null ? null : JSON.stringify([load, shelf]);
  const known = cooling === "unknown" ? null : cooling;
  return [
    facet("what", step, JSON.stringify({ fired: kind })),
    facet("cone", step, cone, { sharedBy: place }),
    facet("atmosphere", step, atmosphere, { sharedBy: load }),
    facet("fire", step, fire, { sharedBy: load, mayBeUnknown: true }),
    facet("cooling", step, known, { sharedBy: load }),
  ];
}

function facetsOfBisque(
  { cone, atmosphere, cooling }: FiringFacts,
  step: number,
): readonly Facet[] {
  const isUnknown = cone === null && atmosphere === null && cooling === "unknown";
  const value = isUnknown ? null : JSON.stringify([cone, atmosphere, cooling]);
  return [
    facet("what", step, JSON.stringify({ fired: "bisque" })),
    facet("bisque", step, value, { mayBeUnknown: true }),
  ];
}

/** What the last facet of an aspect says; null where nobody knows, or there is none. */
export function lastValue({ facets }: MakeUp, aspect: Aspect): string | null {
  return facets.findLast((each) => each.aspect === aspect)?.value ?? null;
}

/** A make-up up to the last thing done before the kiln: firings after the last layer are left out. */
export function asGlazed({ facets }: MakeUp): MakeUp {
  const isFiring = ({ aspect, value }: Facet) => aspect === "what" && value?.startsWith(firing);
  const done = facets.filter((each) => each.aspect === "what" && !isFiring(each));
  const last = done.at(-1)?.step ?? -1;
  return { facets: facets.filter(({ step }) => step === null || step <= last), steps: last + 1 };
}

const firing = '{"fired":';
