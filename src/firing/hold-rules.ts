/**
 * What is said of how long a hold at the peak must be to bring down the next cone. Nobody knows
 * better than the others, so that a hold is told as the range that covers them all.
 */

export interface HoldRule {
  /** What it rests on. */
  readonly source: string;
  /** Cones further down the chart after so many minutes; 0 without a hold, and it never falls. */
  readonly conesAfter: (minutes: number) => number;
}

/**
 * A cone after `first` minutes, two after `second`: a hold slows down as a climb does, by the
 * logarithm of its length, which these two settle.
 */
function byTwoTimes(first: number, second: number): HoldRule["conesAfter"] {
  const scale = first ** 2 / (second - 2 * first);
  return (minutes) => Math.log1p(minutes / scale) / Math.log1p(first / scale);
}

/** Of the makers of the cones. */
const source =
  "Orton Ceramic Foundation, cone chart notes: about one to two hours for the next cone, four to six for two (hours from memory)";

/** Slowest first. The model of heat work is one more witness, and stands in heat-work.ts. */
export const holdRules: readonly HoldRule[] = [
  { source, conesAfter: byTwoTimes(120, 360) },
  { source, conesAfter: byTwoTimes(60, 240) },
  {
    source: "middle of the model over all cones of the chart: three quarters of an hour",
    conesAfter: byTwoTimes(45, 180),
  },
  {
    source: "half an hour for the next cone: common practice, no source",
    conesAfter: byTwoTimes(30, 120),
  },
];
