/** Ink that can be seen on a glaze's colour. */

/** Black or white, whichever is easier to see on a colour. */
export function readableOn(hex: string): "black" | "white" {
  const channel = (at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  const light = 0.299 * channel(1) + 0.587 * channel(3) + 0.114 * channel(5);
  return light > 140 ? "black" : "white";
}
