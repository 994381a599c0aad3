/** Silica across, alumina up: where points of a way from one melt to another are. */
import { scaleLinear } from "d3-scale";
import type { Place } from "./place-marks.ts";

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

export interface MapPoint {
  /** Moles to one of flux. */
  readonly silica: number;
  readonly alumina: number;
}

export interface Tick {
  readonly at: number;
  readonly words: string;
}

/** Points by silica and alumina, and the ticks along both axes. */
export interface Plot {
  readonly points: readonly Place[];
  readonly silica: readonly Tick[];
  readonly alumina: readonly Tick[];
  readonly scales: { readonly x: Scale; readonly y: Scale };
  readonly frame: DrawingFrame;
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

/** From the least to the most with some room around, and never narrower than `least`. */
function domainOf(values: readonly number[], least: number): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const half = Math.max((high - low) * 0.6, least / 2);
  const middle = (low + high) / 2;
  return [Math.max(0, middle - half), middle + half];
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;
