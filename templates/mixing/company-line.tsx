/** A number line of one figure: the studio's glazes as numbered marks, a row for each outcome. */
import type { VNode } from "preact";
import { readableOn } from "../drawing/colours.ts";
import { type NumberLine, numberLine, type SetMark } from "./number-line.ts";

interface CompanyLineProps {
  readonly rows: Parameters<typeof numberLine>[0];
  readonly here: number | null;
  /** The narrowest stretch worth showing. */
  readonly least: number;
  readonly name: string;
}

const mark = { width: 18, height: 18, gap: 3 } as const;

/** Decorative: the words and the table beside it say the same. */
export function CompanyLine({ rows, here, least, name }: CompanyLineProps): VNode {
  const line = numberLine(rows, here, least);
  return (
    <div class="company-line" aria-hidden="true">
      {line.rows.map((row) => (
        <>
          <span class="row-name">{row.name}</span>
          <Row row={row} here={line.here} />
        </>
      ))}
      <span class="row-name">{line.here === null ? "" : name}</span>
      <Axis line={line} />
    </div>
  );
}

interface RowProps {
  readonly row: NumberLine["rows"][number];
  readonly here: number | null;
}

function Row({ row, here }: RowProps): VNode {
  const height = row.levels * (mark.height + mark.gap) + mark.gap;
  return (
    <svg width="100%" height={height} aria-hidden="true">
      <line class="base" x1="0" x2="100%" y1={height - 0.5} y2={height - 0.5} />
      <Here at={here} />
      {row.marks.map((set) => (
        <Mark set={set} bottom={height} />
      ))}
    </svg>
  );
}

function Here({ at, to = "100%" }: { readonly at: number | null; readonly to?: string }) {
  return at === null ? null : (
    <line class="here" x1={perCent(at)} x2={perCent(at)} y1="0" y2={to} />
  );
}

/** A band of the glaze with its number: hatched where its colour is not known. */
function Mark({ set, bottom }: { readonly set: SetMark; readonly bottom: number }): VNode {
  const { width, height, gap } = mark;
  const { at, level, colour, isThis, label } = set;
  const top = bottom - (level + 1) * (height + gap);
  return (
    <g class="mark">
      <rect
        class={isThis ? "glazed this" : "glazed"}
        x={perCent(at)}
        y={top}
        width={width}
        height={height}
        fill={colour ?? "url(#hatch)"}
      />
      <text x={perCent(at)} y={top + 13} {...(colour && { fill: readableOn(colour) })}>
        {label}
      </text>
    </g>
  );
}

function Axis({ line }: { readonly line: NumberLine }): VNode {
  return (
    <svg width="100%" height="26" aria-hidden="true">
      <Here at={line.here} to="5" />
      {line.ticks.map(({ at, value }) => (
        <>
          <line class="base" x1={perCent(at)} x2={perCent(at)} y1="0" y2="5" />
          <text class="tick" x={perCent(at)} y="19">
            {value}
          </text>
        </>
      ))}
    </svg>
  );
}

function perCent(value: number): string {
  return `${value.toFixed(1)}%`;
}
