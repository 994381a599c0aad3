/** A number to so many decimals, so that the last bits of a sum never show. */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
