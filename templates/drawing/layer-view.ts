/**
 * What the layer drawing shows, as plain data: a lane for each step, bottom first, on a lane of
 * clay. A lane of glaze knows where it still lies after all that was kept off or taken off.
 */
import type {
  CoatStep,
  FiredStep,
  RemoveStep,
  ResistStep,
  TileStep,
} from "../../src/records/archive.ts";
import type { Cover, KindOfGlaze, Removal, Resist, Way } from "../../src/terms/choices.ts";
import type { Cone } from "../../src/terms/cones.ts";
import { cutsIn, intersect, type Span, spansOf, subtract } from "./spans.ts";

/** A glaze as the drawing needs it. */
export interface Paint {
  readonly name: string;
  readonly kind: KindOfGlaze;
  /** The colour that it measured alone, as `#rrggbb`; null where it is not known. */
  readonly colour: string | null;
  /** Where it measured that colour; null where it is not known. */
  readonly measured: { readonly clay: string | null; readonly cone: Cone | null } | null;
}

export interface CoatLane {
  readonly lane: "coat";
  /** Coats, one unit each. */
  readonly units: number;
  readonly spans: readonly Span[];
  /** Where a resist kept it off. */
  readonly kept: readonly Span[];
  /** Where it was wiped, so that only the hollows hold it. */
  readonly wiped: readonly Span[];
  /** One paint, or two that run into each other. */
  readonly paints: readonly Paint[];
  readonly way: Way | null;
  readonly cover: Cover | null;
  readonly touchUp: boolean;
  /** True where everything was washed off again. */
  readonly gone: boolean;
}

export interface FiringLane {
  readonly lane: "firing";
  readonly cone: Cone | null;
}

export interface ResistLane {
  readonly lane: "resist";
  readonly resist: Resist;
  readonly spans: readonly Span[];
  readonly gone: boolean;
}

export interface RemovalLane {
  readonly lane: "removal";
  readonly removal: Removal;
  readonly spans: readonly Span[];
}

export type Lane = CoatLane | FiringLane | ResistLane | RemovalLane;

export interface LayerView {
  readonly texture: string;
  /** The clay's colour in its studio's words; null where nothing is said. */
  readonly clay: string | null;
  readonly lanes: readonly Lane[];
}

/** A step as the drawing needs it: of a firing, its cone. */
export type DrawnStep = Exclude<TileStep, FiredStep> | (FiredStep & { readonly cone: Cone | null });

export interface LayerSource {
  readonly texture: string;
  readonly clay: string | null;
  readonly steps: readonly DrawnStep[];
  /** The place of the last step that took everything off again; −1 without one. */
  readonly restart: number;
  readonly paintOf: (glaze: string) => Paint;
}

/** The view of a coat stack. */
export function layerView(source: LayerSource): LayerView {
  const { steps, restart } = source;
  const lanes = steps.map((step, at) => {
    const gone = at < restart;
    if (step.step === "coat") return coatLane(source, step, at, gone);
    if (step.step === "fired") return { lane: "firing", cone: step.cone } as const;
    if (step.step === "resist") return resistLane(step, gone);
    return removalLane(step);
  });
  return { texture: source.texture, clay: source.clay, lanes };
}

function coatLane(source: LayerSource, step: CoatStep, at: number, gone: boolean): CoatLane {
  const { steps, paintOf } = source;
  const place = spansOf(step.where);
  const kept = resistedAt(steps, at);
  const later = steps.slice(at + 1);
  const unfired = later.slice(0, endOfStage(later));
  const taken = gone ? [] : takenBy(unfired);
  const wiped = unfired
    .filter((next) => next.step === "remove")
    .filter((next) => next.remove === "wipe")
    .flatMap((next) => spansOf(next.where));
  return {
    lane: "coat",
    units: step.coats ?? 1,
    spans: subtract(subtract(place, kept), taken),
    kept: intersect(place, kept),
    wiped: intersect(place, wiped),
    paints: step.glazes.map(paintOf),
    way: step.by,
    cover: step.cover,
    touchUp: step.touchUp,
    gone,
  };
}

/** How many steps come before the next firing. */
function endOfStage(steps: readonly TileStep[]): number {
  const fired = steps.findIndex((step) => step.step === "fired");
  return fired < 0 ? steps.length : fired;
}

/** Where a resist lies when a layer goes on: until it is peeled there, or burnt in the kiln. */
function resistedAt(steps: readonly TileStep[], at: number): readonly Span[] {
  let kept: readonly Span[] = [];
  for (const step of steps.slice(0, at)) {
    if (step.step === "resist") kept = [...kept, ...spansOf(step.where)];
    if (step.step === "fired") kept = [];
    if (step.step === "remove" && (step.remove === "peel" || step.remove === "all"))
      kept = subtract(kept, spansOf(step.where));
  }
  return intersect(kept, [[0, 1]]);
}

/** What is taken off clean before the next firing; a wipe leaves its hollows filled. */
function takenBy(steps: readonly TileStep[]): readonly Span[] {
  return steps
    .filter((step) => step.step === "remove")
    .flatMap((step) => {
      if (step.remove === "scrape" || step.remove === "wash-off") return spansOf(step.where);
      return step.remove === "sgraffito" ? cutsIn(spansOf(step.where)) : [];
    });
}

function resistLane(step: ResistStep, gone: boolean): ResistLane {
  return { lane: "resist", resist: step.resist, spans: spansOf(step.where), gone };
}

function removalLane(step: RemoveStep): RemovalLane {
  return { lane: "removal", removal: step.remove, spans: spansOf(step.where) };
}
