/** The blends that a set's tiles show, laid out on its page as far as there is room. */
import type { SetBlend } from "../../../templates/pages/set-page.tsx";
import type { BlendLayout, CatalogueBlend } from "../../catalogue/mixing/blends.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import { idKey } from "../../terms/ids.ts";
import type { Site } from "./site.ts";

/** So many blends are named; a set of tests has one or two. */
const blendsNamed = 12;

/** So many places of all of them together: a triangle of eleven a side, or a few lines. */
const placesOnAPage = 66;

export function setBlends(site: Site, { id }: Pick<CatalogueSet, "id">): readonly SetBlend[] {
  const found = site.catalogue.blends.flatMap((blend) => {
    const layout = blend.layouts.find(({ set }) => set?.id === id);
    return layout ? [{ blend, layout }] : [];
  });
  let room = placesOnAPage;
  return found.slice(0, blendsNamed).map(({ blend, layout }) => {
    const { name, url, members } = blend;
    const fits = members.length <= room;
    if (fits) room -= members.length;
    return { name, url, layout: fits ? laidOut(site, blend, layout) : null };
  });
}

function laidOut(site: Site, blend: CatalogueBlend, { tiles }: BlendLayout): SetBlend["layout"] {
  const { kind, ends, members } = blend;
  const { glazeById } = site.catalogue;
  return {
    blend: { kind, ends, members },
    glazes: members.map(({ glaze }) => ({
      hazards: glazeById.get(idKey(glaze.id))?.hazards ?? [],
    })),
    tiles: tiles.map((code) => (code === null ? null : (site.entries([code])[0] ?? null))),
  };
}
