/** Which pages a site has. */
import type { Catalogue } from "../../catalogue/types.ts";
import type { Page } from "../page.ts";
import { colourPages } from "./colours.ts";
import { conePages, firingPages } from "./firings.ts";
import { glazePages } from "./glazes.ts";
import { gridPages } from "./grid.ts";
import { clayPages, makerPages, setPages, surfacePages } from "./groups.ts";
import { standingPages, wallPages } from "./home.ts";
import { kilnPages } from "./kilns.ts";
import { materialPages } from "./materials.ts";
import { blendPages, mapPages } from "./mixing.ts";
import { pairPages } from "./pairs.ts";
import { runsPages } from "./runs.ts";
import { makeSite, type SitePlace } from "./site.ts";
import { tilePages } from "./tiles.ts";

/** A site of its own, of which nothing was left out. */
const wholeSite: SitePlace = { under: "", waiting: [] };

/** Every page of a catalogue, each ready to be rendered; a pure function of what it is given. */
export function listPages(catalogue: Catalogue, place: SitePlace = wholeSite): readonly Page[] {
  const site = makeSite(catalogue, place);
  return [
    wallPages,
    tilePages,
    glazePages,
    pairPages,
    runsPages,
    gridPages,
    materialPages,
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
