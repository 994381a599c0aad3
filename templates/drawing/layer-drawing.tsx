/**
 * The layer drawing: a section through a tile, the clay at the bottom, a band for each layer in
 * the order they went on. `LayerDrawing` stacks all lanes in one picture; `LaneDrawing` is one of
 * them, for a list whose rows it stands beside.
 */
import type { VNode } from "preact";
import { clayColour } from "../../src/catalogue/colours/clay-colour.ts";
import { n, run, textureEdge } from "./edges.ts";
import { bandOf, coatInks, type Ground, type Ink, type LaneBox, rectangles } from "./lane-shape.ts";
import type { CoatLane, Lane, LayerView } from "./layer-view.ts";
import { intersect, type Span } from "./spans.ts";

const whole: readonly Span[] = [[0, 1]];

/** How a drawing is measured: the height of a coat, of the clay, of a rule. */
interface Measures {
  readonly width: number;
  readonly coat: number;
  readonly clay: number;
  readonly rule: number;
  readonly pitch: number;
  readonly depth: number;
}

/** One line of text high, as it stands beside a tile's code. */
const line: Measures = { width: 56, coat: 3.6, clay: 6, rule: 1.5, pitch: 14, depth: 1.8 };
const lineHeight = 24;

/**
 * A tile's section, one line high. Decorative: the words beside it say the same. It stands on every
 * card, so it is few and short paths: a lane is painted from its edge down into the hollows of the
 * lane beneath, and that one over it, the clay last of all.
 */
export function LayerDrawing({
  view,
  large = false,
}: {
  readonly view: LayerView;
  /** As large as the styles say, in its own shape. */
  readonly large?: boolean;
}): VNode {
  const lanes = view.lanes.filter((lane) => heightOf(lane, line) > 0);
  const tall = lanes.reduce((sum, lane) => sum + heightOf(lane, line), line.clay);
  const squeeze = Math.min(1, lineHeight / tall);
  const measures = { ...line, coat: line.coat * squeeze, clay: line.clay * squeeze };
  let top = lineHeight - measures.clay;
  const inks = [clayInk(view, boxOf(measures, top, measures.clay))];
  const rules: string[] = [];
  for (const [i, lane] of lanes.entries()) {
    const height = heightOf(lane, measures);
    top -= height;
    if (lane.lane === "firing") rules.push(`M${run(0, top + height / 2)}H${measures.width}`);
    if (lane.lane !== "coat") continue;
    inks.unshift(...coatInks(lane, groundOf(lane, lanes[i - 1]), boxOf(measures, top, height)));
  }
  return (
    <svg
      class={large ? "layers large" : "layers"}
      {...(large && { viewBox: `0 0 ${line.width} ${lineHeight}` })}
      aria-hidden="true"
    >
      <Inks of={inks} />
      {rules.length > 0 && <path class="rule" d={rules.join("")} />}
    </svg>
  );
}

function boxOf({ width, pitch, depth }: Measures, top: number, height: number): LaneBox {
  return { width, top, height, pitch, depth };
}

/** What a layer lies on; it fills the hollows of what it went straight onto. */
function groundOf(lane: CoatLane, below: Lane | undefined): Ground {
  const isOn = below === undefined || (below.lane === "coat" && !below.gone);
  return { spans: filledBy(below), sink: isOn && fillsHollows(lane) ? line.depth : 0 };
}

/** Glaze that lies all over fills what is beneath it; beads and broken bands leave it as it is. */
function fillsHollows({ gone, paints, way, cover }: CoatLane): boolean {
  return !gone && paints.length === 1 && way !== "dot" && way !== "spatter" && cover === null;
}

function Inks({ of }: { readonly of: readonly Ink[] }): VNode {
  return <>{of.map((ink) => ink.d && <path {...inkAttributes(ink)} d={ink.d} />)}</>;
}

/** A body has no class: it is what most of a drawing is made of. */
function inkAttributes({ as, colour }: Ink) {
  const painted = colour ?? "url(#hatch)";
  if (as === "body") return { fill: painted };
  if (as === "mended" || as === "fill") return { class: as, fill: painted };
  if (as === "within") return { class: "beads within", stroke: painted };
  if (as === "marks") return { class: as, stroke: colour ?? "currentColor" };
  return { class: as };
}

/** Beside a row of text: a coat is as high as a row of two lines. */
const row: Measures = { width: 208, coat: 48, clay: 56, rule: 48, pitch: 40, depth: 8 };

/** One lane, as tall as its row. */
export function LaneDrawing({
  view,
  at,
}: {
  readonly view: LayerView;
  /** The lane's place; -1 for the clay. */
  readonly at: number;
}): VNode {
  const lane = view.lanes[at];
  const above = view.lanes[at + 1];
  const height = lane ? Math.max(row.coat, heightOf(lane, row)) : row.clay;
  return (
    <svg
      class="layers lane"
      viewBox={`0 0 ${row.width} ${n(height)}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {lane ? (
        <LaneShapes lane={lane} above={above} below={view.lanes[at - 1]} />
      ) : (
        <ClayShapes view={view} above={above} />
      )}
    </svg>
  );
}

/** The height of a lane's row in coats, for the list that it stands beside. */
export function coatsHigh(lane: Lane): number {
  return Math.min(8, Math.max(1, Math.round(heightOf(lane, row) / row.coat)));
}

function heightOf(lane: Lane, measures: Measures): number {
  if (lane.lane === "coat") return lane.units * measures.coat * thinness(lane);
  if (lane.lane === "firing") return measures.rule;
  return measures === row ? measures.coat : 0;
}

/** A wash and a touch-up are thinner than a coat of glaze. */
function thinness({ paints, touchUp }: CoatLane): number {
  return touchUp || paints[0]?.kind === "oxide-wash" ? 0.6 : 1;
}

interface ShapesProps {
  readonly above: Lane | undefined;
}

/** The clay, its texture as its upper edge. */
function clayInk(view: LayerView, box: LaneBox): Ink {
  const d = `${bandOf([0, 1], textureEdge(view.texture), box)}Z`;
  return { as: "body", d, colour: clayColour(view.clay) };
}

function ClayShapes({ view, above }: ShapesProps & { readonly view: LayerView }): VNode {
  const box = boxOf(row, 0, row.clay);
  return <Inks of={[...underlay(above, whole, box), clayInk(view, box)]} />;
}

function LaneShapes(
  props: ShapesProps & { readonly lane: Lane; readonly below: Lane | undefined },
): VNode {
  const { lane, above, below } = props;
  if (lane.lane === "firing") return <path class="rule" d={`M0 ${n(row.coat - 1)}H${row.width}`} />;
  const box = boxOf(row, 0, Math.max(row.coat, heightOf(lane, row)));
  if (lane.lane === "resist") return <ResistShapes spans={lane.spans} gone={lane.gone} box={box} />;
  if (lane.lane === "removal") return <RemovalShapes lane={lane} box={box} />;
  const hollows = lane.gone ? [] : underlay(above, lane.spans, box);
  return <Inks of={[...hollows, ...coatInks(lane, { spans: filledBy(below), sink: 0 }, box)]} />;
}

/** Where a lane is filled; the clay, and what was fired, carry everything. */
function filledBy(lane: Lane | undefined): readonly Span[] {
  if (lane === undefined) return whole;
  return lane.lane === "coat" && !lane.gone ? lane.spans : [];
}

/** What lies in the hollows of a layer's edge: the next layer, where it goes straight on. */
function underlay(above: Lane | undefined, on: readonly Span[], box: LaneBox): readonly Ink[] {
  if (above?.lane !== "coat" || !fillsHollows(above)) return [];
  const d = rectangles(intersect(above.spans, on), { ...box, height: box.depth });
  return [{ as: "fill", d, colour: above.paints[0]?.colour ?? null }];
}

function ResistShapes(props: {
  readonly spans: readonly Span[];
  readonly gone: boolean;
  readonly box: LaneBox;
}) {
  const { width, height, depth } = props.box;
  const d = props.spans
    .map(([a, b]) => `M${run(a * width, height)}v${n(-depth)}H${n(b * width)}v${n(depth)}Z`)
    .join("");
  return <path class={props.gone ? "absent" : "resist"} d={d} />;
}

/** What was taken off: a torn line where all was, a bracket over the place where a part was. */
function RemovalShapes({
  lane,
  box,
}: {
  readonly lane: Extract<Lane, { lane: "removal" }>;
  readonly box: LaneBox;
}) {
  const { width, height, pitch, depth } = box;
  if (lane.removal !== "all") {
    const brackets = lane.spans.map(
      ([a, b]) => `M${run(a * width, height)}v${n(-depth)}H${n(b * width)}v${n(depth)}`,
    );
    return <path class="absent" d={brackets.join("")} />;
  }
  const count = Math.round((width / pitch) * 2);
  const step = width / count / 2;
  const tooth = `l${run(step, -depth, step, depth)}`;
  return <path class="torn" d={`M0 ${n(height - depth)}${tooth.repeat(count)}`} />;
}
