/** Where marks go on a number line with a row for every outcome: a plain view, without markup. */
import { scaleLinear } from "d3-scale";

export interface LineMark {
  readonly label: string;
  readonly value: number;
  readonly colour: string | null;
  /** The glaze that the page is about. */
  readonly isThis: boolean;
}

export interface LineRow {
  readonly name: string;
  readonly marks: readonly LineMark[];
}

export interface SetMark extends LineMark {
  /** The middle, in per cent of the width. */
  readonly at: number;
  /** 0 on the line; others are set above it, where it is taken. */
  readonly level: number;
}

export interface NumberLine {
  readonly rows: readonly {
    readonly name: string;
    readonly marks: readonly SetMark[];
    readonly levels: number;
  }[];
  readonly ticks: readonly { readonly at: number; readonly value: number }[];
  /** Where the glaze of the page is, in per cent; null where its figure is not known. */
  readonly here: number | null;
}

/** A mark takes so much of the width on the narrowest screen, in per cent. */
const markWidth = 9.5;

/** Above this, marks are set over one another: the table below tells them apart. */
const mostLevels = 12;

/** Room at both ends, so that no mark is cut off. */
const inset = 6;

/**
 * @param rows at least one mark, unless `here` is given
 * @param here the figure of the page's glaze
 * @param least the narrowest stretch that the line shows
 */
export function numberLine(
  rows: readonly LineRow[],
  here: number | null,
  least: number,
): NumberLine {
  const values = [
    ...rows.flatMap(({ marks }) => marks.map(({ value }) => value)),
    here ?? [],
  ].flat();
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const spare = Math.max(0, least - (high - low)) / 2;
  const from = Math.max(0, low - spare);
  const scale = scaleLinear([from, Math.max(high + spare, from + least)], [inset, 100 - inset]);
  return {
    rows: rows.map(({ name, marks }) => setRow(name, marks, scale)),
    ticks: scale.ticks(4).map((value) => ({ at: scale(value), value })),
    here: here === null ? null : scale(here),
  };
}

function setRow(name: string, marks: readonly LineMark[], scale: (value: number) => number) {
  const ends: number[] = [];
  const set = [...marks]
    .sort((a, b) => a.value - b.value)
    .map((mark) => {
      const at = scale(mark.value);
      const free = ends.findIndex((end) => at - end >= markWidth);
      const level = free >= 0 ? free : Math.min(ends.length, mostLevels - 1);
      ends[level] = at;
      return { ...mark, at, level };
    });
  return { name, marks: set, levels: Math.max(1, ends.length) };
}
