/**
 * Where everything stands on the site, relative to its root. A tile's address never changes:
 * labels outlive sets.
 */

import type { Surface } from "../terms/choices.ts";
import { type Cone, coneSlug } from "../terms/cones.ts";
import { idSlug } from "../terms/ids.ts";

export const tileUrl = (id: string) => `tiles/${idSlug(id)}.html`;
export const glazeUrl = (id: string) => `glazes/${idSlug(id)}.html`;
export const clayUrl = (id: string) => `clays/${idSlug(id)}.html`;
export const firingUrl = (id: string) => `firings/${idSlug(id)}.html`;
export const kilnUrl = (slug: string) => `kilns/${slug}.html`;
export const setUrl = (id: string) => `sets/${idSlug(id)}.html`;
export const materialUrl = (id: string) => `materials/${idSlug(id)}.html`;
export const coneUrl = (cone: Cone) => `cones/${coneSlug(cone)}.html`;
export const coneSurfaceUrl = (cone: Cone, surface: Surface) =>
  `cones/${coneSlug(cone)}-${surface}.html`;
/** `--` cannot come from joining two ids by accident, as an id's parts are parted by one `-`. */
export const pairUrl = (over: string, under: string) =>
  `pairs/${idSlug(over)}--over--${idSlug(under)}.html`;
/** A series of blends: by its ends, and apart from the same ends measured otherwise. */
export const blendUrl = (ends: readonly string[], by: "volume" | "weight") =>
  `blends/${ends.map(idSlug).join("--")}${by === "volume" ? "--by-volume" : ""}.html`;
export const mapUrl = (cone: Cone) => `maps/${coneSlug(cone)}.html`;
export const makerUrl = (slug: string) => `makers/${slug}.html`;
