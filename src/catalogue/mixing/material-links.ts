/** The page of a raw material. */

import { findMaterialIdOf } from "../../chemistry/from-records.ts";
import type { CarriedMaterial } from "../../chemistry/minerals/mineral.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { materialUrl } from "../addresses.ts";
import { type Link, linkTo } from "../link.ts";

/** Gives the page of a material, the archive's own or a carried one. */
export type FindMaterialLink = (id: string) => Link | undefined;

export function materialLinkFinder(
  archive: Archive,
  builtIn: readonly CarriedMaterial[],
): FindMaterialLink {
  const findId = findMaterialIdOf(archive);
  const carried = new Map(
    builtIn.map(({ id, name }) => [idKey(id), { id, name, url: materialUrl(id) }]),
  );
  return (word) => {
    const id = findId(word) ?? word;
    return linkTo(findById(archive.materials, id), materialUrl) ?? carried.get(idKey(id));
  };
}
