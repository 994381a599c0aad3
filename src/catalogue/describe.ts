/** A tile in one sentence, written from its record. */
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { coatsThatCount } from "../records/coat-stack.ts";
import { findDecidingFiring, firingsOf } from "./kilns/firings.ts";

/** `Tile TB-014: Tidewrack over Soot on Buff stoneware, cone 6, satin`. */
export function describeTile(tile: Tile, archive: Archive): string {
  const clay = findById(archive.clays, tile.clay)?.record.name;
  const cone = findDecidingFiring(firingsOf(tile, archive, new Map()))?.cone;
  const surface = tile.record.result?.at(-1)?.surface;
  const stack = nameStack(tile, archive);
  const made = [stack, clay && `on ${clay}`].filter(Boolean).join(" ");
  const told = [made, cone && `cone ${cone}`, surface?.join(" and ")].filter(Boolean);
  return told.length > 0 ? `Tile ${tile.id}: ${told.join(", ")}` : `Tile ${tile.id}`;
}

/** The glazes of a tile by name, top coat first: `Tidewrack over Soot`. */
export function nameStack(tile: Tile, archive: Archive): string {
  const names = coatsThatCount(tile.steps).map((coat) =>
    coat.glazes.map((id) => findById(archive.glazes, id)?.record.name ?? id).join(" fading to "),
  );
  const distinct = names.filter((name, i) => names.indexOf(name) === i);
  return distinct.reverse().join(" over ");
}
