/** Which pages a site has. */
import type { Catalogue } from "../../catalogue/types.ts";
import type { Page } from "../page.ts";
import { addPages } from "./add.ts";
import { besidePages } from "./beside.ts";
import { bookPages } from "./book.ts";
import { colourPages } from "./colours.ts";
import { dataPages } from "./data.ts";
import { conePages, firingPages } from "./firings.ts";
import { foundPages } from "./found-out.ts";
import { glazePages } from "./glazes.ts";
import { gridPages } from "./grid.ts";
import { clayPages, makerPages, setPages, surfacePages } from "./groups.ts";
import { guidePages } from "./guide.ts";
import { standingPages, wallPages } from "./home.ts";
import { kilnPages } from "./kilns.ts";
import { materialPages } from "./materials.ts";
import { blendPages, mapPages } from "./mixing.ts";
import { ownPages } from "./own.ts";
import { pairPages } from "./pairs.ts";
import { runsPages } from "./runs.ts";
import { sheetPages } from "./sheets.ts";
import { makeSite, type Site, type SitePlace } from "./site.ts";
import { tilePages } from "./tiles.ts";

/** A site of its own, of which nothing was left out. */
const wholeSite: SitePlace = { under: "", waiting: [] };

const kinds: readonly ((site: Site) => readonly Page[])[] = [
  wallPages,
  tilePages,
  glazePages,
  pairPages,
  runsPages,
  gridPages,
  besidePages,
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
  sheetPages,
  bookPages,
  addPages,
  foundPages,
  makerPages,
  ownPages,
  guidePages,
  dataPages,
  standingPages,
];

/** The pages of a catalogue, for whoever wants all of them, or some and soon. */
export interface SitePages {
  /** Every page, each ready to be rendered. */
  readonly all: () => readonly Page[];
  /** The page at a path; lists no more kinds of page than are needed to find it. */
  readonly find: (path: string) => Page | undefined;
}

/** Opens the pages of a catalogue; they follow from what is given and from nothing else. */
export function openPages(catalogue: Catalogue, place: SitePlace = wholeSite): SitePages {
  const site = makeSite(catalogue, place);
  const listed: Page[] = [];
  const byPath = new Map<string, Page>();
  const left = [...kinds];
  const listMore = (): boolean => {
    const pages = left.shift()?.(site);
    for (const page of pages ?? []) {
      listed.push(page);
      byPath.set(page.path, page);
    }
    return pages !== undefined;
  };
  return {
    all() {
      while (listMore());
      return listed;
    },
    find(path) {
      while (!byPath.has(path) && listMore());
      return byPath.get(path);
    },
  };
}
