/** Measured colour in words, and how far a difference between two colours can be trusted. */
import type { ColourTrust } from "../../src/catalogue/types.ts";
import { count } from "./numbers.ts";

/**
 * What stands wherever a colour difference is shown: `Tiles made and fired alike were measured up
 * to 7 apart here (CIEDE2000; 12 tiles of 5 kinds): a smaller difference means nothing.`
 */
export function trustSentence(trust: ColourTrust | null): string {
  if (trust === null)
    return "No two tiles here that were made and fired alike have been measured yet, so nobody can say which colour difference means something.";
  const { difference, tiles, kinds } = trust;
  const evidence = `${count(tiles, "tile")} of ${count(kinds, "kind")}`;
  return `Tiles made and fired alike were measured up to ${roundDifference(difference)} apart here (CIEDE2000; ${evidence}): a smaller difference means nothing.`;
}

/** A colour difference as it is shown: in whole units, but for the smallest. */
export function roundDifference(difference: number): string {
  return difference > 0 && difference < 1 ? "less than 1" : String(Math.round(difference));
}
