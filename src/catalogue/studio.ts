/** What every page says of the studio. */
import type { Archive } from "../records/archive.ts";
import type { WayOfHandingIn } from "../terms/choices.ts";
import { setUrl } from "./addresses.ts";
import { type Link, linkTo } from "./link.ts";

/** How a site shows one set and nothing else of the archive. */
export interface Alone {
  readonly unlisted: boolean;
  /** How many tiles the set has, those that are not shown among them. */
  readonly tiles: number;
  readonly forFamilies: boolean;
}

export interface CatalogueStudio {
  readonly name: string;
  readonly address: string | null;
  readonly repository: string | null;
  readonly licence: string | null;
  readonly temperature: "celsius" | "fahrenheit";
  /** In its own words. */
  readonly handingIn: string | null;
  /** How the tile form ends. */
  readonly handsInBy: WayOfHandingIn;
  /** True for a site that is reached only by its link: no search engine may list it. */
  readonly unlisted: boolean;
  /** Of a site that shows one set alone, that set; null where it shows more. */
  readonly alone: (Pick<Alone, "tiles" | "forFamilies"> & { readonly set: Link }) | null;
}

export function describeStudio({ studio, sets }: Archive, alone: Alone | null): CatalogueStudio {
  return {
    name: studio.studio,
    address: studio.address ?? null,
    repository: studio.repository ?? null,
    licence: studio.licence ?? null,
    temperature: studio.temperature ?? "celsius",
    handingIn: studio.handingIn?.words ?? null,
    handsInBy: studio.handingIn?.by ?? "download",
    unlisted: alone?.unlisted ?? false,
    alone: describeAlone(sets, alone),
  };
}

function describeAlone(sets: Archive["sets"], alone: Alone | null): CatalogueStudio["alone"] {
  const set = linkTo([...sets.values()][0], setUrl);
  if (set === null || alone === null) return null;
  const { tiles, forFamilies } = alone;
  return { set, tiles, forFamilies };
}
