/** What one lane of the layer drawing is drawn with, as SVG path data. */
import type { KindOfGlaze } from "../../src/terms/choices.ts";
import { readableOn } from "./colours.ts";
import { type EdgeOf, type EdgeScale, edgeOf, n, run } from "./edges.ts";
import type { CoatLane, Paint } from "./layer-view.ts";
import { intersect, type Span, subtract } from "./spans.ts";

/** The box that a lane is drawn in, and how fine its edges are. */
export interface LaneBox extends EdgeScale {
  readonly width: number;
  readonly height: number;
}

/**
 * One path. A `body` is filled and has an outline, `mended` where it is a touch-up; a `fill` has no
 * outline and a `line` no filling; what is `absent` has a thin outline. `beads` are strokes with
 * round ends and of no length, a ring of ink with the glaze `within`; `marks` are strokes on a layer.
 */
export interface Ink {
  readonly as: "body" | "mended" | "fill" | "line" | "absent" | "beads" | "within" | "marks";
  readonly d: string;
  /** Of the filling, or of the stroke where there is only that; null is hatched, or ink. */
  readonly colour?: string | null;
}

/** What a lane lies on. */
export interface Ground {
  /** Where the lane beneath it is filled. */
  readonly spans: readonly Span[];
  /** How far the lane reaches beneath the edge of that one, whose hollows it fills. */
  readonly sink: number;
}

/** The outline of a band: up, along its upper edge and down again; where it is open lies its floor. */
export function bandOf([a, b]: Span, edgeOf: EdgeOf, box: LaneBox, sink = 0): string {
  const [from, to] = [a * box.width, b * box.width];
  const { begin, path } = edgeOf(from, to, box);
  const low = n(box.top + box.height + sink);
  return `M${n(from)} ${low}V${n(begin)}${path}V${low}`;
}

/** Bands of a lane, each as deep as what it lies on lets it sink. */
function bandsOf(spans: readonly Span[], edge: EdgeOf, box: LaneBox, ground: Ground): string {
  return spans
    .map((span) => bandOf(span, edge, box, liesWithin(span, ground.spans) ? ground.sink : 0))
    .join("");
}

function liesWithin([a, b]: Span, spans: readonly Span[]): boolean {
  return spans.some(([from, to]) => from <= a && b <= to);
}

/** The floor of a band, where it lies on nothing that is drawn. */
function floorOf(spans: readonly Span[], ground: Ground, { width, top, height }: LaneBox): string {
  return subtract(spans, ground.spans)
    .map(([a, b]) => `M${run(a * width, top + height)}H${n(b * width)}`)
    .join("");
}

/** Fills the hollows beneath bands that only partly lie on something. */
function partlySunk(spans: readonly Span[], box: LaneBox, ground: Ground): string {
  if (ground.sink === 0) return "";
  const partly = spans.filter((span) => !liesWithin(span, ground.spans));
  const below = { ...box, top: box.top + box.height, height: ground.sink };
  return rectangles(intersect(partly, ground.spans), below);
}

/** Level boxes, the whole height of a lane. */
export function rectangles(spans: readonly Span[], { width, top, height }: LaneBox): string {
  return spans
    .map(([a, b]) => `M${run(a * width, top)}H${n(b * width)}v${n(height)}H${n(a * width)}Z`)
    .join("");
}

/** A lane of glaze. */
export function coatInks(lane: CoatLane, ground: Ground, box: LaneBox): readonly Ink[] {
  if (lane.gone) return [{ as: "absent", d: rectangles(lane.spans, box) }];
  const absent: Ink = { as: "absent", d: rectangles(lane.kept, box) };
  if (lane.way === "dot" || lane.way === "spatter") return [...beadsOf(lane, box), absent];
  const edge = edgeOf(lane.way);
  const whole = subtract(lane.spans, lane.wiped);
  const bands = lane.cover === null ? whole : whole.flatMap((span) => broken(span, lane));
  const colour = lane.paints[0]?.colour ?? null;
  return [
    { as: "fill", d: partlySunk(bands, box, ground), colour },
    ...bodyOf(lane, bands, edge, box, ground),
    ...marksOf(bands, lane.paints[0], box),
    absent,
  ];
}

/** Bands of one glaze, or of two of which the second reaches into the first. */
function bodyOf(
  lane: CoatLane,
  bands: readonly Span[],
  edge: EdgeOf,
  box: LaneBox,
  ground: Ground,
): readonly Ink[] {
  const [first, second] = lane.paints;
  const pockets = pocketsIn(lane.wiped, box);
  const d = bandsOf(bands, edge, box, ground) + floorOf(bands, ground, box) + pockets;
  const colour = first?.colour ?? null;
  if (!second) return [{ as: lane.touchUp ? "mended" : "body", d, colour }];
  const faded = bands.map((band) => fadedInto(band, edge, box)).join("");
  return [
    { as: "fill", d: bands.map((band) => bandOf(band, edge, box)).join("") + pockets, colour },
    { as: "fill", d: faded, colour: second.colour },
    { as: "line", d },
  ];
}

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
function pocketsIn(wiped: readonly Span[], box: LaneBox): string {
  const { width, top, height, pitch, depth } = box;
  return wiped
    .flatMap(([a, b]) => {
      const count = Math.max(1, Math.round(((b - a) * width) / (pitch * 0.6)));
      const each = ((b - a) * width) / count;
      return Array.from({ length: count }, (_, i) => {
        const x = a * width + (i + 0.2) * each;
        const w = each * 0.6;
        const at = top + height - depth;
        return `M${run(x, at)}h${n(w)}q${run(-w / 2, depth * 2, -w, 0)}Z`;
      });
    })
    .join("");
}

/** The second glaze of a fade: it reaches into the first in interlocking teeth. */
function fadedInto([a, b]: Span, edgeOf: EdgeOf, box: LaneBox): string {
  const { width, top, height } = box;
  const [from, to] = [a * width, b * width];
  const middle = (from + to) / 2;
  const reach = (to - from) * 0.16;
  const teeth = Array.from({ length: 5 }, (_, i) =>
    run(middle + (i % 2 === 0 ? -reach : reach), top + height * (1 - (i + 1) / 6)),
  );
  const { begin, path } = edgeOf(middle + reach, to, box);
  const low = n(top + height);
  return `M${run(middle + reach, begin)}${path}V${low}H${n(middle + reach)}L${teeth.join(" ")}Z`;
}

/** Beads in a row for dots, strewn for spatter. */
function beadsOf(lane: CoatLane, { width, top, height, pitch }: LaneBox): readonly Ink[] {
  const counts = { sparse: 1, medium: 1.8, dense: 3 } as const;
  const perPitch = counts[lane.cover ?? "medium"];
  const strewn = lane.way === "spatter";
  const d = lane.spans.flatMap(([a, b]) => {
    const count = Math.max(1, Math.round((((b - a) * width) / pitch) * perPitch));
    return Array.from({ length: count }, (_, i) => {
      const x = (a + ((i + 0.5) / count) * (b - a)) * width;
      const y = strewn ? height * (0.2 + 0.6 * scatter(i)) : height / 2;
      return `M${run(x, top + y)}h0`;
    });
  });
  const drawn = d.join("");
  const colour = lane.paints[0]?.colour ?? null;
  return [
    { as: "beads", d: drawn },
    { as: "within", d: drawn, colour },
  ];
}

/** Even strewing without chance: the fractions of a golden step. */
function scatter(i: number): number {
  return (i * 0.618034) % 1;
}

const strokes: Partial<Record<KindOfGlaze, (x: number, y: number, size: number) => string>> = {
  slip: (x, y, size) => `M${run(x, y)}h${n(size)}`,
  underglaze: (x, y, size) => `M${run(x, y - size / 2)}v${n(size)}`,
  onglaze: (x, y, size) => `M${run(x, y)}h${n(size / 3)}`,
};

/** A row of short strokes: lying for slip, standing for underglaze. */
function marksOf(
  spans: readonly Span[],
  paint: Paint | undefined,
  { width, top, height, pitch }: LaneBox,
): readonly Ink[] {
  const stroke = paint && strokes[paint.kind];
  if (!stroke) return [];
  const size = Math.min(height * 0.4, pitch * 0.4);
  const d = spans.flatMap(([a, b]) => {
    const count = Math.max(1, Math.round(((b - a) * width) / (pitch * 0.7)));
    return Array.from({ length: count }, (_, i) =>
      stroke((a + ((i + 0.4) / count) * (b - a)) * width, top + height * 0.6, size),
    );
  });
  return [{ as: "marks", d: d.join(""), colour: paint.colour && readableOn(paint.colour) }];
}
