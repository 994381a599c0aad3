/** How far a glaze must move before anybody says that it ran. */

/**
 * In millimetres: a glaze that moved by less, or two tiles whose runs differ by less, may have done
 * so without any cause, since the edge of a coat is no straight line and is read off with a ruler.
 * Common practice, no source.
 */
export const leastRun = 5;

/** Whether a glaze that moved so many millimetres ran. */
export function hasRun(run: number): boolean {
  return run >= leastRun;
}

/** Whether one of two glazes ran farther than the other by more than chance. */
export function isOtherRun(run: number, other: number): boolean {
  return hasRun(Math.abs(run - other));
}
