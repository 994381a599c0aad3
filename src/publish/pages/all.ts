/** Which pages a site has. */
import type { Catalogue } from "../../catalogue/types.ts";
import type { Page } from "../page.ts";
import { colourPages } from "./colours.tsx";
import { conePages, firingPages } from "./firings.tsx";
import { glazePages } from "./glazes.tsx";
import { clayPages, makerPages, setPages, surfacePages } from "./groups.tsx";
import { standingPages, wallPages } from "./home.tsx";
import { kilnPages } from "./kilns.tsx";
import { blendPages, mapPages } from "./mixing.tsx";
import { makeSite, type SitePlace } from "./site.ts";
import { tilePages } from "./tiles.tsx";

/** A site of its own, of which nothing was left out. */
const wholeSite: SitePlace = { under: "", waiting: [] };

/** Every page of a catalogue, each ready to be rendered; a pure function of what it is given. */
export function listPages(catalogue: Catalogue, place: SitePlace = wholeSite): readonly Page[] {
  const site = makeSite(catalogue, place);
  return [
    wallPages,
    tilePages,
    glazePages,
    colourPages,
    blendPages,
    mapPages,
    clayPages,
    conePages,
    surfacePages,
    firingPages,
    kilnPages,
    setPages,
    makerPages,
    standingPages,
  ].flatMap((pages) => pages(site));
}
