/** Stretches of a tile's width, from 0 at its left edge to 1 at its right. */
import type { Area } from "../../src/terms/choices.ts";

export type Span = readonly [from: number, to: number];

/** The four raised places of a section; the hollows are what lies between them. */
const raised: readonly Span[] = [
  [0.06, 0.19],
  [0.31, 0.44],
  [0.56, 0.69],
  [0.81, 0.94],
];

/**
 * Where an area lies in the drawing. A tile's top and left share the drawing's left side, its
 * bottom and right the other: a section has one direction, and the words beside it tell which.
 */
const places: Readonly<Record<Area, readonly Span[]>> = {
  all: [[0, 1]],
  background: [
    [0, 0.38],
    [0.62, 1],
  ],
  bottom: [[0.6, 1]],
  centre: [[0.3, 0.7]],
  hollows: subtract([[0, 1]], raised),
  left: [[0, 0.5]],
  motif: [[0.38, 0.62]],
  raised,
  right: [[0.5, 1]],
  rim: [[0, 0.12]],
  top: [[0, 0.4]],
};

/** The stretches that some areas cover, in order and without overlap. */
export function spansOf(areas: readonly Area[]): readonly Span[] {
  return unite(areas.flatMap((area) => places[area]));
}

/** Joins stretches that overlap or touch. */
export function unite(spans: readonly Span[]): readonly Span[] {
  const joined: Span[] = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last && from <= last[1]) joined[joined.length - 1] = [last[0], Math.max(last[1], to)];
    else joined.push([from, to]);
  }
  return joined;
}

/** What is left of some stretches where others were taken away. */
export function subtract(spans: readonly Span[], away: readonly Span[]): readonly Span[] {
  return away.reduce<readonly Span[]>(
    (left, [from, to]) =>
      left.flatMap(([a, b]) => {
        const pieces: Span[] = [
          [a, Math.min(b, from)],
          [Math.max(a, to), b],
        ];
        return pieces.filter(([x, y]) => y > x);
      }),
    spans,
  );
}

/** Where two sets of stretches overlap. */
export function intersect(spans: readonly Span[], others: readonly Span[]): readonly Span[] {
  return unite(
    spans.flatMap(([a, b]) =>
      others
        .map(([x, y]): Span => [Math.max(a, x), Math.min(b, y)])
        .filter(([from, to]) => to > from),
    ),
  );
}

/** A few narrow cuts in each stretch, as a scratching tool leaves them. */
export function cutsIn(spans: readonly Span[]): readonly Span[] {
  return spans.flatMap(([from, to]) => {
    const count = Math.max(2, Math.round((to - from) * 10));
    const pitch = (to - from) / count;
    return Array.from({ length: count }, (_, i): Span => {
      const middle = from + (i + 0.5) * pitch;
      return [middle - pitch * 0.22, middle + pitch * 0.22];
    });
  });
}
