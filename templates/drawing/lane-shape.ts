/** The shapes of one lane of the layer drawing, as SVG path data; y runs down from its top. */
import type { KindOfGlaze } from "../../src/terms/choices.ts";
import { type Edge, type EdgeScale, edgeOf, n } from "./edges.ts";
import type { CoatLane, Paint } from "./layer-view.ts";
import { type Span, subtract } from "./spans.ts";

/** The box that a lane is drawn in, and how fine its edges are. */
export interface LaneBox extends EdgeScale {
  readonly width: number;
  readonly height: number;
}

export interface Fill {
  readonly d: string;
  readonly colour: string | null;
}

export interface LaneShape {
  /** Filled with a glaze's colour, or hatched where that is not known. */
  readonly fills: readonly Fill[];
  /** Round beads: a stroke with round ends, of no length, in a glaze's colour. */
  readonly beads: readonly Fill[];
  /** The outline of the layer. */
  readonly lines: string;
  /** A thin outline of what is not there: a resisted gap, a layer that was washed off. */
  readonly absent: string;
  /** Strokes that tell underglaze and slip from glaze. */
  readonly marks: readonly Fill[];
}

/** The closed body of a band: its upper edge, then down and back along the bottom. */
export function bodyOf(spans: readonly Span[], edge: Edge, box: LaneBox): string {
  return spans
    .map(([a, b]) => {
      const [from, to] = [a * box.width, b * box.width];
      return `M${edge(from, to, box)}V${n(box.height)}H${n(from)}Z`;
    })
    .join("");
}

/** The outline of a band but for its floor, which is the edge of what it lies on. */
function outlineOf(spans: readonly Span[], edge: Edge, box: LaneBox): string {
  return spans
    .map(([a, b]) => {
      const [from, to] = [a * box.width, b * box.width];
      return `M${n(from)} ${n(box.height)}L${edge(from, to, box)}V${n(box.height)}`;
    })
    .join("");
}

/** The floor of a band, where it lies on nothing that is drawn. */
function floorOf(spans: readonly Span[], below: readonly Span[], { width, height }: LaneBox) {
  return subtract(spans, below)
    .map(([a, b]) => `M${n(a * width)} ${n(height)}H${n(b * width)}`)
    .join("");
}

function rectangles(spans: readonly Span[], { width, height }: LaneBox, top = 0): string {
  return spans
    .map(([a, b]) => `M${n(a * width)} ${n(top)}H${n(b * width)}V${n(height)}H${n(a * width)}Z`)
    .join("");
}

/**
 * A lane of glaze.
 *
 * @param below where the lane beneath it is filled
 */
export function coatShape(lane: CoatLane, below: readonly Span[], box: LaneBox): LaneShape {
  if (lane.gone) return { ...empty, absent: rectangles(lane.spans, box) };
  const absent = rectangles(lane.kept, box);
  if (lane.way === "dot" || lane.way === "spatter") return { ...beadsOf(lane, box), absent };
  const edge = edgeOf(lane.way);
  const whole = subtract(lane.spans, lane.wiped);
  const bands = lane.cover === null ? whole : whole.flatMap((span) => broken(span, lane));
  const pockets = pocketsIn(lane.wiped, box);
  const [first, second] = lane.paints;
  const fills = [{ d: bodyOf(bands, edge, box) + pockets, colour: first?.colour ?? null }];
  if (second)
    fills.push({ d: bands.map((b) => fadedInto(b, edge, box)).join(""), colour: second.colour });
  return {
    fills,
    beads: [],
    lines: outlineOf(bands, edge, box) + floorOf(bands, below, box) + pockets,
    absent,
    marks: first ? marksOf(bands, first, box) : [],
  };
}

const empty: LaneShape = { fills: [], beads: [], lines: "", absent: "", marks: [] };

/** Pieces of a span that a trailed or stencilled layer covers sparsely or densely. */
function broken([from, to]: Span, { cover }: CoatLane): Span[] {
  const share = cover === "sparse" ? 0.35 : cover === "medium" ? 0.6 : 0.85;
  const count = Math.max(2, Math.round((to - from) * 8));
  const pitch = (to - from) / count;
  return Array.from({ length: count }, (_, i) => {
    const begin = from + i * pitch;
    return [begin, begin + pitch * share];
  });
}

/** What a wipe leaves: small fillings, level on top, in the hollows. */
function pocketsIn(wiped: readonly Span[], { width, height, pitch, depth }: LaneBox): string {
  return wiped
    .flatMap(([a, b]) => {
      const count = Math.max(1, Math.round(((b - a) * width) / (pitch * 0.6)));
      const each = ((b - a) * width) / count;
      return Array.from({ length: count }, (_, i) => {
        const x = a * width + (i + 0.2) * each;
        const w = each * 0.6;
        return `M${n(x)} ${n(height - depth)}h${n(w)}q${n(-w / 2)} ${n(depth * 2)} ${n(-w)} 0Z`;
      });
    })
    .join("");
}

/** The second glaze of a fade: it reaches into the first in interlocking teeth. */
function fadedInto([a, b]: Span, edge: Edge, box: LaneBox): string {
  const { width, height } = box;
  const [from, to] = [a * width, b * width];
  const middle = (from + to) / 2;
  const reach = (to - from) * 0.16;
  const teeth = Array.from(
    { length: 5 },
    (_, i) => `L${n(middle + (i % 2 === 0 ? -reach : reach))} ${n(height * (1 - (i + 1) / 6))}`,
  );
  return `M${edge(middle + reach, to, box)}V${n(height)}H${n(middle + reach)}${teeth.join("")}Z`;
}

/** Beads in a row for dots, strewn for spatter. */
function beadsOf(lane: CoatLane, { width, height, pitch }: LaneBox): LaneShape {
  const counts = { sparse: 1, medium: 1.8, dense: 3 } as const;
  const perPitch = counts[lane.cover ?? "medium"];
  const strewn = lane.way === "spatter";
  const d = lane.spans.flatMap(([a, b]) => {
    const count = Math.max(1, Math.round((((b - a) * width) / pitch) * perPitch));
    return Array.from({ length: count }, (_, i) => {
      const x = (a + ((i + 0.5) / count) * (b - a)) * width;
      const y = strewn ? height * (0.2 + 0.6 * scatter(i)) : height / 2;
      return `M${n(x)} ${n(y)}h0`;
    });
  });
  return { ...empty, beads: [{ d: d.join(""), colour: lane.paints[0]?.colour ?? null }] };
}

/** Even strewing without chance: the fractions of a golden step. */
function scatter(i: number): number {
  return (i * 0.618034) % 1;
}

const strokes: Partial<Record<KindOfGlaze, (x: number, y: number, size: number) => string>> = {
  slip: (x, y, size) => `M${n(x)} ${n(y)}h${n(size)}`,
  underglaze: (x, y, size) => `M${n(x)} ${n(y - size / 2)}v${n(size)}`,
  onglaze: (x, y, size) => `M${n(x)} ${n(y)}h${n(size / 3)}`,
};

/** A row of short strokes: lying for slip, standing for underglaze. */
function marksOf(spans: readonly Span[], { kind, colour }: Paint, box: LaneBox): Fill[] {
  const stroke = strokes[kind];
  if (!stroke) return [];
  const { width, height, pitch } = box;
  const size = Math.min(height * 0.4, pitch * 0.4);
  const d = spans.flatMap(([a, b]) => {
    const count = Math.max(1, Math.round(((b - a) * width) / (pitch * 0.7)));
    return Array.from({ length: count }, (_, i) =>
      stroke((a + ((i + 0.4) / count) * (b - a)) * width, height * 0.6, size),
    );
  });
  return [{ d: d.join(""), colour }];
}
