/** What the pages of a site are about, in the words of schema.org: docs/decisions.md says why these. */
import type {
  Collection,
  CreativeWork,
  ImageObject,
  Organization,
  Person,
  WebSite,
} from "schema-dts";
import { firingsOf } from "../../src/catalogue/kilns/tile-firings.ts";
import { stackTopFirst } from "../../src/catalogue/stack.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import type { Frame } from "../parts/frame.ts";
import { type LeadPicture, leadPictureOf } from "../parts/lead-picture.ts";
import { addressOf } from "./addresses.ts";
import type { Linked } from "./data-block.tsx";

/** A test tile: somebody made it of clay and glazes, and nobody calls it a work of art or sells it. */
export function tileWork(
  frame: Frame,
  tile: CatalogueTile,
  title: string,
): Exclude<CreativeWork, string> {
  const { id, url, set, maker, clay } = tile;
  const made = dayMade(tile);
  return {
    "@type": "CreativeWork",
    url: addressOf(frame, url),
    name: `${id}: ${title}`,
    identifier: id,
    ...withImage(frame, leadPictureOf(tile)),
    ...(maker && { creator: person(frame, maker) }),
    ...(set && {
      isPartOf: { "@type": "Collection", name: set.name, url: addressOf(frame, set.url) },
    }),
    ...withMaterial([...(clay ? [clay.name] : []), ...glazesOn(tile)]),
    ...(made && { dateCreated: made }),
  };
}

/** The day of the last firing, which made it what it is; nothing where that is to come or not known. */
function dayMade({ stage, steps }: CatalogueTile): string | null {
  return stage === "waiting" ? null : (firingsOf(steps).at(-1)?.on ?? null);
}

/** The glazes that it has, the lowest first, each once: what was taken off again is none of them. */
function glazesOn({ steps, glazes }: CatalogueTile): readonly string[] {
  const ids = stackTopFirst(steps)
    .toReversed()
    .flatMap((coat) => coat.glazes);
  return [...new Set(ids.map((id) => glazes[id]?.name ?? id))];
}

function withMaterial(names: readonly string[]) {
  return names.length > 0 ? { material: names } : {};
}

/** As the maker asked to be named, and no more. */
function person(
  frame: Frame,
  { name, url }: NonNullable<CatalogueTile["maker"]>,
): Exclude<Person, string> {
  return { "@type": "Person", name, ...(url !== null && { url: addressOf(frame, url) }) };
}

/**
 * A glaze is a thing that tiles are made with: schema.org's recipes are food, its products for sale.
 *
 * @param alone a photograph that shows it and no other glaze
 */
export function glazeThing(
  frame: Frame,
  glaze: { readonly name: string; readonly url: string },
  description: string,
  alone: LeadPicture | null,
): Linked {
  return {
    "@type": "Thing",
    url: addressOf(frame, glaze.url),
    name: glaze.name,
    description,
    ...withImage(frame, alone),
  };
}

/** A set of tiles, with how many it has. */
export function setCollection(
  frame: Frame,
  set: { readonly name: string; readonly sentence: string; readonly tiles: number },
  lead: LeadPicture | null,
): Exclude<Collection, string> {
  return {
    "@type": "Collection",
    url: addressOf(frame, frame.path),
    name: set.name,
    description: set.sentence,
    collectionSize: set.tiles,
    ...withImage(frame, lead),
  };
}

/** The site, and the studio that publishes it. */
export function siteOf(frame: Frame, description: string): Exclude<WebSite, string> {
  return {
    "@type": "WebSite",
    url: addressOf(frame, "index.html"),
    name: frame.studio,
    description,
    publisher: studioOf(frame),
  };
}

/** The studio by its name, and its own website where it has one. */
export function studioOf({ studio, website }: Frame): Exclude<Organization, string> {
  return { "@type": "Organization", name: studio, ...(website !== null && { url: website }) };
}

function withImage(frame: Frame, picture: LeadPicture | null) {
  return picture ? { image: imageOf(frame, picture) } : {};
}

/** A photograph, with the licence where it is known which one the studio gave it. */
function imageOf(frame: Frame, { url, alt }: LeadPicture): Exclude<ImageObject, string> {
  const known = frame.licence?.known;
  return {
    "@type": "ImageObject",
    contentUrl: addressOf(frame, url),
    caption: alt,
    ...(known && { license: known.address }),
  };
}
