/** The edges of a frame, in per cent of the photograph, as hands and keys change them. */
import type { Edges } from "../../copystand/types.ts";

/** The least width and height of a frame: smaller than this nobody can take hold of it. */
export const leastSize = 1;

/** Which corner of a frame is dragged. */
export interface Corner {
  readonly x: "left" | "right";
  readonly y: "top" | "bottom";
}

/** Moves a frame as far as the photograph goes; its size stays. */
export function moveBy([left, top, right, bottom]: Edges, across: number, down: number): Edges {
  const x = within(across, -left, 100 - right);
  const y = within(down, -top, 100 - bottom);
  return [left + x, top + y, right + x, bottom + y];
}

/** Drags one corner; the opposite one stays. */
export function dragCorner(
  [left, top, right, bottom]: Edges,
  corner: Corner,
  across: number,
  down: number,
): Edges {
  const [newLeft, newRight] =
    corner.x === "left"
      ? [within(left + across, 0, right - leastSize), right]
      : [left, within(right + across, left + leastSize, 100)];
  const [newTop, newBottom] =
    corner.y === "top"
      ? [within(top + down, 0, bottom - leastSize), bottom]
      : [top, within(bottom + down, top + leastSize, 100)];
  return [newLeft, newTop, newRight, newBottom];
}

/** Brings every edge to the nearest step. */
export function roundTo(step: number, edges: Edges): Edges {
  const round = (edge: number) => Math.round(Math.round(edge / step) * step * 10) / 10;
  const [left, top, right, bottom] = [
    round(edges[0]),
    round(edges[1]),
    round(edges[2]),
    round(edges[3]),
  ];
  return [left, top, Math.max(right, left + leastSize), Math.max(bottom, top + leastSize)];
}

/** What was typed, where it makes a frame. */
export function parseEdges(typed: readonly string[]): Edges | undefined {
  const [left = Number.NaN, top = Number.NaN, right = Number.NaN, bottom = Number.NaN] = typed.map(
    (text) => (text.trim() === "" ? Number.NaN : Math.round(Number(text) * 10) / 10),
  );
  const isFrame =
    left >= 0 && top >= 0 && right <= 100 && bottom <= 100 && left < right && top < bottom;
  return isFrame ? [left, top, right, bottom] : undefined;
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
