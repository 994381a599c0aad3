/** Where marks are on a map so that none hides another. */

export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly width: number;
  readonly height: number;
}

const rounds = 200;

/**
 * Moves boxes of one size off one another, each as near to its own point as the others let it.
 * Boxes that share a point part in a fixed order, so that the same map always looks the same.
 * Pushing can go round in circles where many points crowd a corner: what still overlaps in the end
 * is set in rows and columns instead, as long as there is room.
 *
 * @param points where the middle of each is to stand
 * @param room what they stand in, from 0, 0
 * @returns the middle of each
 */
export function placeBoxes(points: readonly Place[], box: Box, room: Box): readonly Place[] {
  const places = points.map(spread);
  for (let round = 0; round < rounds; round++) {
    for (const place of places) keepInside(place, box, room);
    if (!pushApart(places, box, round)) return places;
    for (const place of places) keepInside(place, box, room);
    if (round < rounds / 2) for (const [i, place] of places.entries()) pull(place, points[i]);
  }
  return (hidesAny(places, box) && placeInRows(points, box, room)) || places;
}

/** Less than this nobody sees. */
const unseen = 1;

function hidesAny(places: readonly Place[], { width, height }: Box): boolean {
  return places.some((a, i) =>
    places
      .slice(i + 1)
      .some((b) => width - Math.abs(b.x - a.x) >= unseen && height - Math.abs(b.y - a.y) >= unseen),
  );
}

/** Each at the nearest place that is free in rows and columns; undefined where they are too many. */
function placeInRows(points: readonly Place[], box: Box, room: Box): readonly Place[] | undefined {
  let free = middlesAlong(room.height, box.height).flatMap((y) =>
    middlesAlong(room.width, box.width).map((x) => ({ x, y })),
  );
  if (free.length < points.length) return undefined;
  return points.map((point) => {
    const nearest = free.reduce((a, b) => (distance(b, point) < distance(a, point) ? b : a));
    free = free.filter((place) => place !== nearest);
    return nearest;
  });
}

/** The middles of as many boxes as a length holds, evenly apart. */
function middlesAlong(length: number, size: number): readonly number[] {
  const many = Math.floor(length / size);
  return Array.from({ length: many }, (_, i) => ((i + 0.5) * length) / many);
}

interface Moving {
  x: number;
  y: number;
}

/** A little off its point, each in another direction. */
function spread({ x, y }: Place, i: number): Moving {
  const angle = i * 2.399963;
  return { x: x + Math.cos(angle) * (1 + i / 10), y: y + Math.sin(angle) * (1 + i / 10) };
}

function pull(place: Moving, point: Place | undefined): void {
  if (!point) return;
  place.x += (point.x - place.x) * 0.02;
  place.y += (point.y - place.y) * 0.02;
}

/** Moves every two that overlap; false where none do. */
function pushApart(places: readonly Moving[], box: Box, round: number): boolean {
  let moved = false;
  for (let i = 0; i < places.length; i++) {
    for (let j = i + 1; j < places.length; j++) {
      const isLate = round > rounds / 2 && (i + j + round) % 5 === 0;
      moved = pushTwo(places[i], places[j], box, isLate) || moved;
    }
  }
  return moved;
}

/**
 * Moves two that overlap half of the way each, along the shorter way out; late, and now and then,
 * along the longer one, or a full column would never spill into the next.
 */
function pushTwo(
  a: Moving | undefined,
  b: Moving | undefined,
  { width, height }: Box,
  isLongWay: boolean,
): boolean {
  if (!a || !b) return false;
  const x = width - Math.abs(b.x - a.x);
  const y = height - Math.abs(b.y - a.y);
  if (x <= 0.01 || y <= 0.01) return false;
  if (x < y !== isLongWay) shift(a, b, "x", x / 2);
  else shift(a, b, "y", y / 2);
  return true;
}

function shift(a: Moving, b: Moving, along: "x" | "y", by: number): void {
  const side = b[along] >= a[along] ? 1 : -1;
  a[along] -= side * by;
  b[along] += side * by;
}

function keepInside(place: Moving, { width, height }: Box, room: Box): void {
  place.x = Math.min(Math.max(place.x, width / 2), room.width - width / 2);
  place.y = Math.min(Math.max(place.y, height / 2), room.height - height / 2);
}

/**
 * Chooses points that lie far from one another, the first always among them.
 *
 * @returns indexes, in the order of the points
 */
export function chooseScattered(points: readonly Place[], most: number): readonly number[] {
  if (points.length <= most) return points.map((_, i) => i);
  const chosen = [0];
  const nearest = points.map((point) => distance(point, points[0]));
  while (chosen.length < most) {
    const next = nearest.indexOf(Math.max(...nearest));
    chosen.push(next);
    for (const [i, point] of points.entries())
      nearest[i] = Math.min(nearest[i] ?? 0, distance(point, points[next]));
  }
  return chosen.sort((a, b) => a - b);
}

function distance(a: Place, b: Place | undefined): number {
  return b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
}
