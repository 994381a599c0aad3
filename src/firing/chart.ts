/** What the published chart says of a cone's temperature, and where it says nothing. */
import { type Cone, chartedCones } from "../terms/cones.ts";
import { type ChartTag, type ConeKind, chartRows } from "./chart-rows.ts";

/** One value of the chart. */
export interface ChartValue {
  /** °C an hour over the last 100 °C. */
  readonly ratePerHour: number;
  readonly celsius: number;
  readonly tag: ChartTag;
}

/** What the chart answers when it is asked for a cone at a rate. */
export type ChartReading =
  | {
      readonly inside: true;
      readonly celsius: number;
      /** False where the chart prints this very rate. */
      readonly interpolated: boolean;
      /** "from memory" where any value that was used is so. */
      readonly tag: ChartTag;
      /**
       * True where what is printed is likely a misprint: large cone 14 hotter at 60 °C an hour
       * (1388) than at 150 (1366), which no other cone is.
       */
      readonly isDoubtful?: true;
    }
  | {
      readonly inside: false;
      /** The rates between which the chart gives this cone; null where it has none. */
      readonly rates: { readonly from: number; readonly to: number } | null;
    };

/** The chart's values for a cone of one kind, slowest rate first; empty where it has none. */
export function chartValues(cone: Cone, kind: ConeKind = "self-supporting"): readonly ChartValue[] {
  return chartRows
    .filter((row) => row[0] === cone && row[1] === kind)
    .map(([, , ratePerHour, celsius, tag]) => ({ ratePerHour, celsius, tag }));
}

/**
 * The temperature at which a cone is down when the last 100 °C are climbed at a steady rate.
 *
 * Between two rates of the chart it is interpolated in the logarithm of the rate, as equal steps
 * of it give nearly equal steps of temperature (the form of Kissinger, Anal. Chem. 29 (1957)
 * 1702, from memory). Outside the chart's rates nothing is extrapolated.
 *
 * @param ratePerHour °C an hour
 */
export function coneTemperature(
  cone: Cone,
  ratePerHour: number,
  kind: ConeKind = "self-supporting",
): ChartReading {
  const values = chartValues(cone, kind);
  const upper = values.findIndex((value) => value.ratePerHour >= ratePerHour);
  const above = values[upper];
  if (!above) return outside(values);
  if (above.ratePerHour === ratePerHour) return inside(cone, kind, above.celsius, [above]);
  const below = values[upper - 1];
  if (!below) return outside(values);
  const share =
    Math.log(ratePerHour / below.ratePerHour) / Math.log(above.ratePerHour / below.ratePerHour);
  const celsius = below.celsius + share * (above.celsius - below.celsius);
  return inside(cone, kind, celsius, [below, above]);
}

/** The cones that the chart gives at a rate, coolest first: a scale to set beside a curve. */
export function conesAtRate(
  ratePerHour: number,
  kind: ConeKind = "self-supporting",
): readonly { readonly cone: Cone; readonly celsius: number }[] {
  return chartedCones.flatMap((cone) => {
    const reading = coneTemperature(cone, ratePerHour, kind);
    return reading.inside ? [{ cone, celsius: reading.celsius }] : [];
  });
}

function inside(
  cone: Cone,
  kind: ConeKind,
  celsius: number,
  used: readonly ChartValue[],
): ChartReading {
  return {
    inside: true,
    celsius,
    interpolated: used.length > 1,
    tag: used.every((value) => value.tag === "checked") ? "checked" : "from memory",
    ...(kind === "large" && cone === "14" ? { isDoubtful: true } : {}),
  };
}

function outside(values: readonly ChartValue[]): ChartReading {
  const [from, to] = [values[0]?.ratePerHour, values.at(-1)?.ratePerHour];
  return { inside: false, rates: from === undefined || to === undefined ? null : { from, to } };
}
