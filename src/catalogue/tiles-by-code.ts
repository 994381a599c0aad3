/** Tiles by their codes. */
import { idKey } from "../terms/ids.ts";
import type { CatalogueTile } from "./tiles.ts";

/** The tiles that have some codes, in the order given; what is no tile here is passed over. */
export function tilesByCode(
  { tileById }: { readonly tileById: ReadonlyMap<string, CatalogueTile> },
  codes: readonly string[],
): readonly CatalogueTile[] {
  return codes.flatMap((code) => tileById.get(idKey(code)) ?? []);
}
