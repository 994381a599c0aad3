/** Raw materials: their pages, what they are made of, what to mind with them. */
import { cautionsOfMaterial } from "../../chemistry/cautions/cautions.ts";
import { type FindIngredient, ingredientFinder } from "../../chemistry/cautions/ingredients.ts";
import { findMaterialOf } from "../../chemistry/from-records.ts";
import type { FindMaterial } from "../../chemistry/materials.ts";
import { tellReasons } from "../../chemistry/reasons.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { materialUrl } from "../addresses.ts";
import type { BuiltInMaterial } from "../findings.ts";
import { linkTo } from "../tiles.ts";
import type { CatalogueGlaze, CatalogueMaterial, Link } from "../types.ts";

/** Gives the page of a material, the archive's own or a built-in one. */
export type FindMaterialLink = (id: string) => Link | undefined;

export function materialLinkFinder(
  archive: Archive,
  builtIn: readonly BuiltInMaterial[],
): FindMaterialLink {
  const carried = new Map(
    builtIn.map(({ id, name }) => [idKey(id), { id, name, url: materialUrl(id) }]),
  );
  return (id) => linkTo(findById(archive.materials, id), materialUrl) ?? carried.get(idKey(id));
}

/** The archive's own materials and the built-in ones that some glaze holds, by name. */
export function listMaterials(
  archive: Archive,
  builtIn: readonly BuiltInMaterial[],
  glazes: readonly CatalogueGlaze[],
): readonly CatalogueMaterial[] {
  const holding = glazesByMaterial(glazes);
  const findMaterial = findMaterialOf(archive);
  const findIngredient = ingredientFinder(archive);
  const own = [...archive.materials.values()].map((material) => ({
    id: material.id,
    name: material.record.name,
    url: materialUrl(material.id),
    record: material.record,
    builtIn: false,
    notes: material.notes,
    glazes: holding.get(idKey(material.id)) ?? [],
    ...describeMakeUp(material.id, findMaterial, findIngredient),
  }));
  const carried = builtIn
    .filter(({ id }) => holding.has(idKey(id)) && !archive.materials.has(idKey(id)))
    .map(({ id, name, formula }) => ({
      id,
      name,
      url: materialUrl(id),
      record: { name, formula },
      builtIn: true,
      notes: "",
      glazes: holding.get(idKey(id)) ?? [],
      ...describeMakeUp(id, findMaterial, findIngredient),
    }));
  return [...own, ...carried].sort((a, b) => compareIds(a.name, b.name));
}

/** What a material comes to in the fire, and what to mind with it in the bag. */
function describeMakeUp(
  id: string,
  findMaterial: FindMaterial,
  findIngredient: FindIngredient,
): Pick<CatalogueMaterial, "analysis" | "hazards" | "whyNoAnalysis"> {
  const found = findMaterial(id);
  return {
    analysis: found.ok ? found.material.analysis : null,
    hazards: cautionsOfMaterial(findIngredient(id)),
    whyNoAnalysis: found.ok ? null : tellReasons(found.reasons),
  };
}

function glazesByMaterial(glazes: readonly CatalogueGlaze[]): ReadonlyMap<string, Link[]> {
  const holding = new Map<string, Link[]>();
  for (const { id, name, url, record } of glazes) {
    const portions = [...(record.ingredients ?? []), ...(record.additions ?? [])];
    for (const key of new Set(portions.map(({ material }) => idKey(material)))) {
      holding.set(key, [...(holding.get(key) ?? []), { id, name, url }]);
    }
  }
  return holding;
}
