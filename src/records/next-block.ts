/** The block of codes that a set gets after another's: as many, and none that is anybody's. */
import { findIdFault, splitCode } from "../terms/ids.ts";
import { longestRange } from "../terms/limits.ts";
import { type Archive, findById } from "./archive.ts";
import { freeCodes, type WhyTaken } from "./next-code.ts";

/** So far is looked for room behind a block: further on nobody would look for the next term's codes. */
const farthest = 100_000;

/**
 * The first codes in a row behind some others, as many as those, that are all free: `TB-101` to
 * `TB-140` are followed by `TB-141` to `TB-180`.
 *
 * @returns undefined where those end in no number, are more than a range may name, or leave no room
 */
export function nextBlock(
  codes: readonly string[],
  taken: WhyTaken,
): readonly string[] | undefined {
  const last = splitCode(codes.at(-1) ?? "");
  if (!last || codes.length > longestRange) return undefined;
  const { stem, digits } = last;
  const from = Number(digits) + 1;
  let block: string[] = [];
  for (let number = from; number < from + farthest; number += 1) {
    const code = `${stem}${String(number).padStart(digits.length, "0")}`;
    const isFree = findIdFault(code) === undefined && taken(code) === undefined;
    block = isFree ? [...block, code] : [];
    if (block.length === codes.length) return block;
  }
  return undefined;
}

/**
 * The next code for a tile that cannot have its own: of its set's block; where the set has none left,
 * or no block, the next free one after the tile's.
 *
 * @param set the id of its set; null for none
 */
export function nextFreeCode(
  { sets }: Pick<Archive, "sets">,
  code: string,
  set: string | null,
  taken: WhyTaken,
): string | undefined {
  const record = findById(sets, set)?.record;
  return (record && freeCodes(record, taken)[0]) ?? nextBlock([code], taken)?.[0];
}
