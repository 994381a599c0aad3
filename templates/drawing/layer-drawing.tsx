/**
 * The layer drawing: a section through a tile, the clay at the bottom, a band for each layer in
 * the order they went on. `LayerDrawing` stacks all lanes in one picture; `LaneDrawing` is one of
 * them, for a list whose rows it stands beside.
 */
import type { VNode } from "preact";
import { clayColour } from "../../src/catalogue/colours/clay-colour.ts";
import { readableOn } from "./colours.ts";
import { n, textureEdge } from "./edges.ts";
import { bodyOf, coatShape, type LaneBox, type LaneShape } from "./lane-shape.ts";
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

/** A tile's section, one line high. Decorative: the words beside it say the same. */
export function LayerDrawing({ view }: { readonly view: LayerView }): VNode {
  const lanes = view.lanes.filter((lane) => heightOf(lane, line) > 0);
  const tall = lanes.reduce((sum, lane) => sum + heightOf(lane, line), line.clay);
  const squeeze = Math.min(1, lineHeight / tall);
  const measures = { ...line, coat: line.coat * squeeze, clay: line.clay * squeeze };
  let bottom = lineHeight - measures.clay;
  const drawn = lanes.map((lane, i) => {
    bottom -= heightOf(lane, measures);
    return (
      <g transform={`translate(0 ${n(bottom)})`}>
        <LaneShapes lane={lane} above={lanes[i + 1]} below={lanes[i - 1]} measures={measures} />
      </g>
    );
  });
  return (
    <svg class="layers" width={line.width} height={lineHeight} aria-hidden="true">
      <g transform={`translate(0 ${n(lineHeight - measures.clay)})`}>
        <ClayShapes view={view} above={lanes[0]} measures={measures} />
      </g>
      {drawn}
    </svg>
  );
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
        <LaneShapes lane={lane} above={above} below={view.lanes[at - 1]} measures={row} />
      ) : (
        <ClayShapes view={view} above={above} measures={row} />
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
  readonly measures: Measures;
}

function ClayShapes({ view, above, measures }: ShapesProps & { readonly view: LayerView }): VNode {
  const { width, clay: height, pitch, depth } = measures;
  const box = { width, height, pitch, depth };
  const edge = textureEdge(view.texture);
  const colour = clayColour(view.clay);
  return (
    <>
      <Underlay above={above} on={whole} box={box} />
      <path d={bodyOf(whole, edge, box)} fill={colour ?? "url(#hatch)"} />
      <path class="line" d={bodyOf(whole, edge, box)} />
    </>
  );
}

function LaneShapes({
  lane,
  above,
  below,
  measures,
}: ShapesProps & { readonly lane: Lane; readonly below: Lane | undefined }): VNode {
  const { width, pitch, depth } = measures;
  if (lane.lane === "firing") {
    const y = measures === row ? row.coat - 1 : measures.rule / 2;
    return <path class="rule" d={`M0 ${n(y)}H${width}`} />;
  }
  const height =
    measures === row ? Math.max(row.coat, heightOf(lane, row)) : heightOf(lane, measures);
  const box = { width, height, pitch, depth };
  if (lane.lane === "resist") return <ResistShapes spans={lane.spans} gone={lane.gone} box={box} />;
  if (lane.lane === "removal") return <RemovalShapes lane={lane} box={box} />;
  return (
    <>
      {!lane.gone && <Underlay above={above} on={lane.spans} box={box} />}
      <CoatShapes shape={coatShape(lane, filledBy(below), box)} touchUp={lane.touchUp} />
    </>
  );
}

/** Where a lane is filled; the clay, and what was fired, carry everything. */
function filledBy(lane: Lane | undefined): readonly Span[] {
  if (lane === undefined) return whole;
  return lane.lane === "coat" && !lane.gone ? lane.spans : [];
}

/** What lies in the hollows of a layer's edge: the next layer, where it goes straight on. */
function Underlay({
  above,
  on,
  box,
}: {
  readonly above: Lane | undefined;
  readonly on: readonly Span[];
  readonly box: LaneBox;
}) {
  if (above?.lane !== "coat" || above.gone || above.paints.length > 1) return null;
  if (above.way === "dot" || above.way === "spatter" || above.cover !== null) return null;
  const d = intersect(above.spans, on)
    .map(
      ([a, b]) => `M${n(a * box.width)} 0H${n(b * box.width)}v${n(box.depth)}H${n(a * box.width)}Z`,
    )
    .join("");
  return <path d={d} fill={above.paints[0]?.colour ?? "url(#hatch)"} />;
}

function CoatShapes({ shape, touchUp }: { readonly shape: LaneShape; readonly touchUp: boolean }) {
  return (
    <>
      {shape.fills.map(({ d, colour }) => (
        <path d={d} fill={colour ?? "url(#hatch)"} />
      ))}
      {shape.lines && <path class={touchUp ? "line mended" : "line"} d={shape.lines} />}
      {shape.marks.map(({ d, colour }) => (
        <path class="marks" d={d} stroke={colour === null ? "currentColor" : readableOn(colour)} />
      ))}
      {shape.beads.map(({ d, colour }) => (
        <>
          <path class="beads" d={d} />
          <path class="beads within" d={d} stroke={colour ?? "url(#hatch)"} />
        </>
      ))}
      {shape.absent && <path class="absent" d={shape.absent} />}
    </>
  );
}

function ResistShapes(props: {
  readonly spans: readonly Span[];
  readonly gone: boolean;
  readonly box: LaneBox;
}) {
  const { width, height, depth } = props.box;
  const d = props.spans
    .map(([a, b]) => `M${n(a * width)} ${n(height)}v${n(-depth)}H${n(b * width)}v${n(depth)}Z`)
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
      ([a, b]) => `M${n(a * width)} ${n(height)}v${n(-depth)}H${n(b * width)}v${n(depth)}`,
    );
    return <path class="absent" d={brackets.join("")} />;
  }
  const count = Math.round((width / pitch) * 2);
  const step = width / count / 2;
  const tooth = `l${n(step)} ${n(-depth)}l${n(step)} ${n(depth)}`;
  return <path class="torn" d={`M0 ${n(height - depth)}${tooth.repeat(count)}`} />;
}
