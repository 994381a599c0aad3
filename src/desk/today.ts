/** The day it is on this computer. */

/** As ISO 8601, by the computer's own clock and place. */
export function today(now: Date = new Date()): string {
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
