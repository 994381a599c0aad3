/** A tile by its glazes, and what its photographs show of it. */
import type { Picture } from "../../../src/catalogue/pictures.ts";
import { stackTopFirst } from "../../../src/catalogue/stack.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";

/**
 * The glazes of a tile by name, top coat first: `Mist over Sandbar and Kelp` where those two lie
 * side by side.
 */
export function namesTopFirst({ steps, glazes }: Pick<CatalogueTile, "glazes" | "steps">): string {
  const named = new Set<string>();
  let words = "";
  for (const coat of stackTopFirst(steps)) {
    const name = coat.glazes.map((id) => glazes[id]?.name ?? id).join(" fading to ");
    if (named.has(name)) continue;
    words += coat.under ? `${joins[coat.under]}${name}` : name;
    named.add(name);
  }
  return words;
}

const joins = { beside: " and ", over: " over " } as const;

/** What a photograph shows, for who cannot see it: the maker's own words where there are some. */
export function pictureAlt(tile: CatalogueTile, { alt, role }: Picture): string {
  return alt ?? [roleWords[role], describeTile(tile)].filter(Boolean).join(" ");
}

const roleWords = {
  result: "",
  before: "Before the last firing:",
  detail: "A detail:",
  back: "The back:",
} as const;

/** `Tile TB-014: Tidewrack over Soot on Buff stoneware, cone 6, satin` */
function describeTile(tile: CatalogueTile): string {
  const { id, clay, cone } = tile;
  const surface = tile.results.at(-1)?.surface;
  const made = [namesTopFirst(tile), clay && `on ${clay.name}`].filter(Boolean).join(" ");
  const told = [made, cone && `cone ${cone}`, surface?.join(" and ")].filter(Boolean);
  return told.length > 0 ? `Tile ${id}: ${told.join(", ")}` : `Tile ${id}`;
}
