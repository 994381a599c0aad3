/** The materials that may be meant by a word that nobody knows. */
import { findNearest } from "../../records/suggest.ts";
import { idKey } from "../../terms/ids.ts";

/** More than these few help nobody. */
const mostNamed = 3;

/** A part of a name as short as this says nothing of the material. */
const shortestPart = 4;

/**
 * The word that is one slip away, then those that share a part of their name with it: `spar-x` has
 * none, `hill-feldspar` has every feldspar.
 */
export function findNearMaterials(written: string, known: Iterable<string>): readonly string[] {
  const words = [...known];
  const parts = partsOf(written);
  const nearest = findNearest(written, words);
  const sharing = words.filter((word) => partsOf(word).some((part) => parts.includes(part)));
  const named = new Set([...(nearest === undefined ? [] : [nearest]), ...sharing]);
  return [...named].slice(0, mostNamed);
}

function partsOf(word: string): readonly string[] {
  return idKey(word)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length >= shortestPart && !saysLittle.has(part));
}

/** What too many names share. */
const saysLittle: ReadonlySet<string> = new Set(["black", "carbonate", "oxide", "sold"]);
