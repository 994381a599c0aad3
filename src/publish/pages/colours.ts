/** The colour of a glaze by itself: what was measured on tiles that have no other glaze. */
import type { Catalogue, CatalogueTile } from "../../catalogue/types.ts";
import { idKey } from "../../terms/ids.ts";

/**
 * A colour for each glaze that some measured tile has alone, by `idKey`. Of several tiles the one
 * of middling lightness speaks for the glaze: a mean would be a colour that no tile has.
 */
export function glazeColours({ glazes, tileById }: Catalogue): ReadonlyMap<string, string> {
  const colours = new Map<string, string>();
  for (const { id, alone } of glazes) {
    const tiles = alone.flatMap((code) => tileById.get(idKey(code)) ?? []);
    const hex = middlingColour(tiles);
    if (hex !== undefined) colours.set(idKey(id), hex);
  }
  return colours;
}

function middlingColour(tiles: readonly CatalogueTile[]): string | undefined {
  const sound = tiles.filter((tile) => tile.faults.length === 0);
  const measured = (sound.some((tile) => tile.colour) ? sound : tiles)
    .flatMap((tile) => tile.colour ?? [])
    .sort((a, b) => a.lab[0] - b.lab[0]);
  return measured[Math.floor(measured.length / 2)]?.hex;
}
