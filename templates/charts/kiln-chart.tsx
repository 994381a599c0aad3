/** A kiln's firings over time: how many cones hotter or cooler than aimed at, shelf by shelf. */
import type { VNode } from "preact";
import type { KilnFiring } from "../../src/catalogue/kilns/kilns.ts";
import {
  coneHeight,
  type KilnColumn,
  type KilnColumns,
  type KilnMark,
  kilnColumns,
} from "./kiln-columns.ts";

/** Pixels above the cones, and beneath them to the first line of codes. */
const [headroom, footroom] = [24, 40];

/** Pixels across a firing, where they are few and where they are many. */
const [wideColumn, narrowColumn] = [44, 38];

/** Pixels across a letter of a code, and down from one line of codes to the next. */
const [letterWidth, codeLine] = [8.3, 18];

/** More firings than this scroll sideways on a narrow screen. */
const fewFirings = 6;

/** Codes are upright, on as many lines in turn as keep each clear of its neighbours. */
interface Layout {
  readonly columnWidth: number;
  readonly lines: number;
  /** Room at both ends for half of a code. */
  readonly margin: number;
}

function layOut(columns: readonly KilnColumn[]): Layout {
  const columnWidth = columns.length > fewFirings ? narrowColumn : wideColumn;
  const widest = Math.max(...columns.map(({ id }) => [...id].length)) * letterWidth + 8;
  return {
    columnWidth,
    lines: Math.min(columns.length, Math.ceil(widest / columnWidth)),
    margin: Math.max(0, (widest - columnWidth) / 2),
  };
}

export function KilnChart({ firings }: { readonly firings: readonly KilnFiring[] }): VNode | null {
  const view = kilnColumns(firings);
  if (!view) return null;
  const { reach, columns } = view;
  const { columnWidth, lines, margin } = layOut(columns);
  const middle = headroom + reach * coneHeight;
  const height = middle + reach * coneHeight + footroom + lines * codeLine;
  return (
    <div class="kiln-chart">
      <svg aria-hidden="true" class="edge" height={height}>
        {levels(reach).map((cones) => (
          <text x="100%" dx="-8" y={middle - cones * coneHeight} dy="0.35em" text-anchor="end">
            {levelWords(cones)}
          </text>
        ))}
      </svg>
      <div
        class="scroll"
        {...(columns.length > fewFirings && {
          role: "group",
          tabIndex: 0,
          "aria-label": "Drawing of all firings; the list of firings says the same in words",
        })}
      >
        <svg
          aria-hidden="true"
          class="columns-drawn"
          width={Math.ceil(columns.length * columnWidth + 2 * margin)}
          height={height}
        >
          <Levels view={view} middle={middle} />
          {columns.map((column, i) => (
            <Column
              column={column}
              x={margin + (i + 0.5) * columnWidth}
              middle={middle}
              edge={reach * coneHeight}
              codeAt={footroom + (i % lines) * codeLine}
            />
          ))}
        </svg>
      </div>
    </div>
  );
}

function levels(reach: number): readonly number[] {
  return Array.from({ length: reach * 2 + 1 }, (_, i) => reach - i);
}

function levelWords(cones: number): string {
  if (cones === 0) return "the aim";
  return `${Math.abs(cones)} ${cones > 0 ? "hotter" : "cooler"}`;
}

/** The band within a cone of the aim, and a line at each cone. */
function Levels(props: { readonly view: KilnColumns; readonly middle: number }): VNode {
  const { view, middle } = props;
  return (
    <>
      <rect class="band" width="100%" y={middle - coneHeight} height={2 * coneHeight} />
      {levels(view.reach).map((cones) => {
        const y = middle - cones * coneHeight;
        return <line class={cones === 0 ? "aim" : "hair"} x2="100%" y1={y} y2={y} />;
      })}
    </>
  );
}

function Column(props: {
  readonly column: KilnColumn;
  readonly x: number;
  readonly middle: number;
  readonly edge: number;
  /** How far beneath the cones its code is. */
  readonly codeAt: number;
}): VNode {
  const { column, x, middle, edge, codeAt } = props;
  const { heat, marks, beyond, id } = column;
  const tie = marks.map((mark, i) => `${i === 0 ? "M" : "L"}${mark.x} ${mark.y}`).join("");
  return (
    <svg aria-hidden="true" x={x.toFixed(1)} y={middle} overflow="visible">
      <path class="tie" d={tie} />
      {heat && <circle class="ring" cx={heat.x} cy={heat.y} r="4" />}
      {marks.map((mark) => (
        <Mark mark={mark} />
      ))}
      {beyond && (
        <text class="figures" y={beyond.hot ? -edge - 10 : edge + 20} text-anchor="middle">
          {beyond.hot ? "↑" : "↓"}
          {beyond.cones}
        </text>
      )}
      <text class="code" y={edge + codeAt} text-anchor="middle">
        {id}
      </text>
    </svg>
  );
}

const shapes: Readonly<Record<KilnMark["shape"], string>> = {
  up: "M0 -5L4.5 3.5H-4.5Z",
  down: "M0 5L4.5 -3.5H-4.5Z",
  square: "M-3.5 -3.5H3.5V3.5H-3.5Z",
};

/** Of a shelf; where its cones leave one end open, a line leads that way. */
function Mark({ mark: { x, y, shape, open } }: { readonly mark: KilnMark }): VNode {
  return (
    <g transform={`translate(${x} ${y})`}>
      {open && <path class="tie" d={`M0 0V${open === "up" ? -18 : 18}`} />}
      <path class="point" d={shapes[shape]} />
    </g>
  );
}
