/** A stretch of the line of cones, as wide as some accounts need it. */
import type { FiringAccount } from "../../src/catalogue/kilns/story.ts";
import { type Cone, chartedCones, conesHotter } from "../../src/terms/cones.ts";

/** All places along it are in per cent of its width. */
export interface ConeLine {
  readonly cones: readonly { readonly x: number; readonly cone: Cone; readonly named: boolean }[];
  readonly aim: number | null;
  /** What lies within a cone of the aim. */
  readonly band: { readonly x: number; readonly width: number } | null;
  /** Where a place on the line of cones stands; what lies beyond an end stands at that end. */
  readonly clamp: (place: number) => number;
}

/** Room left and right of what is shown, and the least that is shown, in cones. */
const [room, least] = [0.8, 4.4];

/** So many names of cones have room beside one another on a narrow screen. */
const mostNames = 8;

/** The line that some accounts stand on; undefined where none of them is known. */
export function coneLine(accounts: readonly FiringAccount[]): ConeLine | undefined {
  const known = accounts.flatMap(({ low, high }) => [low, high]).filter(Number.isFinite);
  if (known.length === 0) return undefined;
  const middle = (Math.min(...known) + Math.max(...known)) / 2;
  const half = Math.max(least / 2, (Math.max(...known) - Math.min(...known)) / 2 + room);
  const [first, last] = [middle - half, middle + half];
  const x = (place: number) => ((place - first) / (last - first)) * 100;
  const clamp = (place: number) => Math.min(100, Math.max(0, x(place)));
  const aim = accounts.find(({ of }) => of === "aim")?.low ?? null;
  const shown = wholeCones.filter(({ place }) => place >= first && place <= last);
  const every = Math.ceil(shown.length / mostNames);
  const start =
    Math.max(
      0,
      shown.findIndex(({ place }) => place === aim),
    ) % every;
  return {
    cones: shown.map(({ cone, place }, i) => ({
      cone,
      x: x(place),
      named: (i - start) % every === 0,
    })),
    aim: aim === null ? null : x(aim),
    band: aim === null ? null : { x: clamp(aim - 1), width: clamp(aim + 1) - clamp(aim - 1) },
    clamp,
  };
}

const one = chartedCones.find((cone) => cone === "1") as Cone;

/** Every whole cone and its place: 1 at 0, 01 at −1. */
const wholeCones = chartedCones
  .filter((cone) => !cone.endsWith("½"))
  .map((cone) => ({ cone, place: conesHotter(cone, one) }));
