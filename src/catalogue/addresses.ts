/**
 * Where everything stands on the site, relative to its root. A tile's address never changes:
 * labels outlive sets. Every address is made here: no two things share one, and each is a name that
 * every common file system can store.
 */

import type { Surface } from "../terms/choices.ts";
import { type Cone, coneSlug } from "../terms/cones.ts";
import { bytesOf, idSlug, isDeviceName, longestId } from "../terms/ids.ts";

export const tileUrl = (id: string) => `tiles/${idSlug(id)}.html`;

export const glazeUrl = (id: string) => `glazes/${idSlug(id)}.html`;

export const clayUrl = (id: string) => `clays/${idSlug(id)}.html`;

export const firingUrl = (id: string) => `firings/${idSlug(id)}.html`;

export const kilnUrl = (slug: string) => `kilns/${slug}.html`;

export const setUrl = (id: string) => `sets/${idSlug(id)}.html`;

/** Sheets of a set, to be printed before glazing. */
export const sheetsUrl = (what: "labels" | "notes" | "shelf", set: string) =>
  `${what}/${idSlug(set)}.html`;

/** A sheet for each tile of a set, to be printed. */
export const bookUrl = (set: string) => `book/${idSlug(set)}.html`;

/** All that a set found out, where that is more than its own page shows. */
export const foundUrl = (set: string) => `found/${idSlug(set)}.html`;

export const materialUrl = (id: string) => `materials/${idSlug(id)}.html`;

export const coneUrl = (cone: Cone) => `cones/${coneSlug(cone)}.html`;

export const coneSurfaceUrl = (cone: Cone, surface: Surface) =>
  `cones/${coneSlug(cone)}-${surface}.html`;

export const pairUrl = (over: string, under: string) =>
  `pairs/${joinable(over)}--over--${joinable(under)}.html`;

/**
 * The address of a page of a list that goes on over several, counted from 0: the first has the
 * list's own, the others a number behind a sign that no id has, nor the name of a pair at its end.
 */
export function turnedUrl(url: string, page: number): string {
  if (page === 0) return url;
  if (url === "index.html") return `wall-${page + 1}.html`;
  const sign = url.startsWith("pairs/") ? "--" : "~";
  return url.replace(/\.html$/u, `${sign}${page + 1}.html`);
}

/** The list of all glazes that one lay over, or under, where its own page cannot name them all. */
export function pairingsUrl(glaze: string, which: "over" | "under"): string {
  return glaze.replace(/\.html$/u, `~${which}.html`);
}

/** All strips of a glaze, where its own page cannot show them all. */
export function stripsUrl(glaze: string): string {
  return glaze.replace(/\.html$/u, "~series.html");
}

/** A site's address as one that its pages' addresses can be put behind. */
export const withSlash = (address: string) => (address.endsWith("/") ? address : `${address}/`);

/** The folder in which an unlisted set has its own site. */
export const unlistedUrl = (link: string) => `s/${link}`;

export const pageUrl = (id: string) => `pages/${idSlug(id)}.html`;

export const markUrl = (format: "svg" | "png") => `assets/mark.${format}`;

export const mapUrl = (cone: Cone) => `maps/${coneSlug(cone)}.html`;

export const runsUrl = "runs.html";

export const makerUrl = (slug: string) => `makers/${slug}.html`;

/** A series of blends: by its ends, and apart from the same ends measured otherwise. */
export function blendUrl(ends: readonly string[], by: "volume" | "weight"): string {
  // A glaze may be called “by-volume” itself: `~` is in no id, so nothing else leads there.
  const joined = ends.map((end) => (idSlug(end) === "by-volume" ? `~${end}` : joinable(end)));
  return `blends/${joined.join("--")}${by === "volume" ? "--by-volume" : ""}.html`;
}

/**
 * An id that is joined to others by `--`. Hyphens in a row, which would read as such a joint, become
 * one `~` fewer, a letter that is in no id.
 */
function joinable(id: string): string {
  return idSlug(id).replace(/-{2,}/gu, (run) => "~".repeat(run.length - 1));
}

/**
 * Gives names of somebody's own words, people's or kilns', their part of an address: each call
 * another one, never empty, and never that of the page that lists them all, of a device of Windows,
 * or too long to store.
 *
 * @param otherwise what stands for a name that holds no letter and no digit
 */
export function nameSlugs(otherwise: string): (name: string) => string {
  const taken = new Set(["index"]);
  return (name) => {
    const slug = shorten(bareSlug(name)).replace(/[.-]+$/u, "");
    const usable = slug === "" ? otherwise : isDeviceName(slug) ? `${otherwise}-${slug}` : slug;
    let free = usable;
    for (let n = 2; taken.has(free); n += 1) free = `${usable}-${n}`;
    taken.add(free);
    return free;
  };
}

/** A name without case, and without signs before and after it: under which two spellings meet. */
export function bareSlug(name: string): string {
  return idSlug(name.trim()).replace(/^[._-]+|[.-]+$/gu, "");
}

function shorten(slug: string): string {
  const letters = Array.from(slug);
  while (bytesOf(letters.join("")) > longestId) letters.pop();
  return letters.join("");
}
