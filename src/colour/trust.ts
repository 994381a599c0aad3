import type { Lab } from "./cielab.ts";
import { differenceCiede2000 } from "./difference.ts";

/** How far apart the same thing was measured in this studio. */
export interface Repeatability {
  /**
   * Two measurements of the same differ by no more than this in 19 cases of 20, in CIEDE2000. A
   * smaller difference between two tiles means nothing here.
   */
  difference: number;
  /** How many independent repeats it rests on: with few, it is wide because little is known. */
  degreesOfFreedom: number;
}

/**
 * Tells from replicates how large a colour difference must be to mean anything. Each group holds
 * the colours of tiles that should be the same: replicates, or the twins of a control tile from
 * different loads. Gives undefined where no group holds two.
 *
 * The statistic is the repeatability limit of ISO 5725-6, t·√2·s. Here √2·s is the root mean
 * square of the differences (CIEDE2000) between pairs of a group, groups weighted by their degrees
 * of freedom (members less one), and t is Student's for 95 per cent and all degrees together. It is
 * exact where the scatter lies along one direction of colour, as that of exposure does, and on the
 * careful side where it goes in all directions.
 */
export function measureRepeatability(
  groups: readonly (readonly Lab[])[],
): Repeatability | undefined {
  let [sum, degreesOfFreedom] = [0, 0];
  for (const group of groups.filter((labs) => labs.length >= 2)) {
    sum += (group.length - 1) * meanSquareDifference(group);
    degreesOfFreedom += group.length - 1;
  }
  if (degreesOfFreedom === 0) return undefined;
  const difference = studentT95(degreesOfFreedom) * Math.sqrt(sum / degreesOfFreedom);
  return { difference, degreesOfFreedom };
}

function meanSquareDifference(labs: readonly Lab[]): number {
  const squares = labs.flatMap((one, at) =>
    labs.slice(at + 1).map((other) => differenceCiede2000(one, other) ** 2),
  );
  return squares.reduce((sum, square) => sum + square, 0) / squares.length;
}

/** Student's t, two-sided, 95 per cent, for 1 to 30 degrees of freedom (standard table). */
const studentT = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145,
  2.131, 2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048,
  2.045, 2.042,
];

/** Beyond the table, the first terms of its expansion about the normal distribution. */
export function studentT95(degreesOfFreedom: number): number {
  const z = 1.959964;
  const beyond = z + (z ** 3 + z) / (4 * degreesOfFreedom);
  return studentT[degreesOfFreedom - 1] ?? beyond;
}
