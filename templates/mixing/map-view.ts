/** Where everything of a map stands: a plain view, without markup. */
import { scaleLinear } from "d3-scale";
import type { RatioLine } from "../../src/chemistry/stull.ts";
import { chooseScattered, gatherNear, type Place, placeBoxes } from "./place-marks.ts";

/** A drawing in its own units, and the plot inside it. */
export interface DrawingFrame {
  readonly width: number;
  readonly height: number;
  readonly plot: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
  /** About how many ticks an axis has. */
  readonly ticks: number;
}

export const mapFrame: DrawingFrame = {
  width: 1000,
  height: 760,
  plot: { left: 52, top: 12, right: 988, bottom: 708 },
  ticks: 8,
};
const { plot } = mapFrame;

/** A mark with its name beneath: the photograph is as wide as high. */
export const mark = { photograph: 64, width: 122, height: 120 } as const;

/** More photographs than this leave no room to see where they stand. */
const mostPhotographs = 40;

export interface MapPoint {
  /** Moles to one of flux. */
  readonly silica: number;
  readonly alumina: number;
}

export interface Tick {
  readonly at: number;
  readonly words: string;
}

export interface PlacedMark {
  /** Where its formula puts it. */
  readonly point: Place;
  /** The middle of its photograph; null where it is a point alone, or in a crowd. */
  readonly place: Place | null;
}

/** Several points that the drawing cannot tell apart. */
export interface Crowd {
  readonly point: Place;
  /** The middle of its photographs, which stand together as one mark. */
  readonly place: Place;
  /** Indexes of the points. */
  readonly members: readonly number[];
}

/** Points by silica and alumina, and the ticks along both axes. */
export interface Plot {
  readonly points: readonly Place[];
  readonly silica: readonly Tick[];
  readonly alumina: readonly Tick[];
  readonly scales: { readonly x: Scale; readonly y: Scale };
  readonly frame: DrawingFrame;
}

export interface MapView extends Plot {
  readonly marks: readonly PlacedMark[];
  readonly crowds: readonly Crowd[];
  readonly lines: readonly PlacedLine[];
}

/** The part of a ratio line that lies in the plot. */
export interface PlacedLine {
  readonly from: Place;
  readonly to: Place;
  readonly line: RatioLine;
}

/** Places points; silica runs across, alumina up. */
export function plotPoints(formulas: readonly MapPoint[], frame: DrawingFrame): Plot {
  const { left, top, right, bottom } = frame.plot;
  const silicas = formulas.map(({ silica }) => silica);
  const aluminas = formulas.map(({ alumina }) => alumina);
  const x = scaleLinear(domainOf(silicas, 2), [left, right]).nice();
  const y = scaleLinear(domainOf(aluminas, 0.3), [bottom, top]).nice();
  return {
    points: formulas.map(({ silica, alumina }) => ({ x: x(silica), y: y(alumina) })),
    silica: x.ticks(frame.ticks).map((value) => ({ at: x(value), words: String(value) })),
    alumina: y.ticks(frame.ticks).map((value) => ({ at: y(value), words: String(value) })),
    scales: { x, y },
    frame,
  };
}

/** Places points, and photographs for as many of them as there is room for. */
export function mapView(formulas: readonly MapPoint[], lines: readonly RatioLine[]): MapView {
  const plotted = plotPoints(formulas, mapFrame);
  return {
    ...plotted,
    ...placeAll(plotted.points),
    lines: lines.flatMap((line) => clip(line, plotted.scales) ?? []),
  };
}

/** From the least to the most with some room around, and never narrower than `least`. */
function domainOf(values: readonly number[], least: number): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const half = Math.max((high - low) * 0.6, least / 2);
  const middle = (low + high) / 2;
  return [Math.max(0, middle - half), middle + half];
}

/** Points this near to one another cannot be told apart. */
const nearby = 14;

/** So many points in one place are shown as one crowd; fewer find room beside one another. */
const leastCrowd = 4;

/** More crowds than this leave no room for anything else; the smaller ones are points. */
const mostCrowds = 12;

/** The crowds that a map of some formulas has, as indexes of them. */
export function findCrowds(formulas: readonly MapPoint[]): readonly (readonly number[])[] {
  return crowdsOf(plotPoints(formulas, mapFrame).points).crowds;
}

function crowdsOf(points: readonly Place[]) {
  const groups = gatherNear(points, nearby);
  const large = groups.filter((group) => group.length >= leastCrowd);
  const largest = new Set([...large].sort((a, b) => b.length - a.length).slice(0, mostCrowds));
  return { groups, crowds: groups.filter((group) => largest.has(group)) };
}

function placeAll(points: readonly Place[]): Pick<MapView, "crowds" | "marks"> {
  const { groups, crowds } = crowdsOf(points);
  const single = groups.filter((group) => !crowds.includes(group)).flat();
  const scattered = chooseScattered(
    single.map((i) => points[i] ?? origin),
    mostPhotographs - crowds.length,
  ).map((i) => single[i] ?? 0);
  const shown = [...crowds.map(([first = 0]) => first), ...scattered];
  const room = { width: plot.right - plot.left, height: plot.bottom - plot.top };
  const places = placeBoxes(
    shown.map((i) => toPlot(points[i])),
    mark,
    room,
  ).map(fromPlot);
  const placeOf = new Map(scattered.map((index, i) => [index, places[crowds.length + i]]));
  return {
    marks: points.map((point, i) => ({ point, place: placeOf.get(i) ?? null })),
    crowds: crowds.map((members, i) => ({
      point: points[members[0] ?? 0] ?? origin,
      place: places[i] ?? origin,
      members,
    })),
  };
}

const origin: Place = { x: 0, y: 0 };

/** The photograph is to stand on the point, not the middle of photograph and name. */
const nameBelow = (mark.height - mark.photograph) / 2;

function toPlot({ x, y }: Place = origin): Place {
  return { x: x - plot.left, y: y - plot.top + nameBelow };
}

function fromPlot({ x, y }: Place): Place {
  return { x: x + plot.left, y: y + plot.top - nameBelow };
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

function clip(line: RatioLine, { x, y }: Plot["scales"]): PlacedLine | undefined {
  const { silicaToAlumina: ratio } = line;
  const [left = 0, right = 0] = x.domain();
  const [low = 0, high = 0] = y.domain();
  const from = Math.max(left, low * ratio);
  const to = Math.min(right, high * ratio);
  if (from >= to) return undefined;
  const at = (silica: number) => ({ x: x(silica), y: y(silica / ratio) });
  return { from: at(from), to: at(to), line };
}
