/** Raw materials: their pages, what they are made of, what to mind with them. */
import type { Analysis } from "../../chemistry/analysis.ts";
import { type Caution, cautionsOfMaterial } from "../../chemistry/cautions/cautions.ts";
import { type FindIngredient, ingredientFinder } from "../../chemistry/cautions/ingredients.ts";
import { findMaterialIdOf, findMaterialOf } from "../../chemistry/from-records.ts";
import {
  type AnalysedMaterial,
  type FindMaterial,
  type FindMaterialId,
  materialFinder,
} from "../../chemistry/materials.ts";
import type { CarriedMaterial } from "../../chemistry/minerals/mineral.ts";
import { tellReasons } from "../../chemistry/why-no-chemistry.ts";
import { type Archive, findById } from "../../records/archive.ts";
import type { MaterialRecord } from "../../records/material.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { remember, rememberFor } from "../../terms/remember.ts";
import { materialUrl } from "../addresses.ts";
import type { CatalogueGlaze } from "../glazes.ts";
import { type Link, linkTo } from "../link.ts";

/** What is known of a raw material by its formula or analysis. */
export interface MaterialMakeUp {
  /** What it comes to in the fire; null where nobody wrote it down, and why. */
  readonly analysis: Analysis | null;
  /** What the analysis rests on. */
  readonly basis: AnalysedMaterial["basis"] | null;
  readonly whyNoAnalysis: string | null;
  /** What was done with its figures, sentences without their full stops. */
  readonly remarks: readonly string[];
  /** What is to be minded with it in the bag and in the kiln. */
  readonly hazards: readonly Caution[];
}

/** What somebody wrote of a raw material and everyone may read. */
export interface MaterialFacts {
  readonly formula: string | null;
  /** Weight per cent of what its sheet names, as it was written. */
  readonly stated: NonNullable<MaterialRecord["analysis"]> | null;
  /** What its label and safety sheet warn of, in the studio's words. */
  readonly warnings: readonly string[];
  /** What a kilogram costs, in the studio's own currency. */
  readonly price: number | null;
}

export interface CatalogueMaterial extends Link, MaterialFacts, MaterialMakeUp {
  /** What Tilebook carries of it, where the studio has no record of its own. */
  readonly carried: CarriedMaterial | null;
  readonly notes: string;
  /** Glazes that hold it. */
  readonly glazes: readonly Link[];
}

/** A material that needs no record. */
export interface CarriedLine extends MaterialMakeUp {
  readonly material: CarriedMaterial;
  /** The archive's own record, which is used in its place. */
  readonly instead: Link | null;
}

/** All materials of a site. */
export interface DescribedMaterials {
  readonly materials: readonly CatalogueMaterial[];
  /** All that need no record, in their own order. */
  readonly carriedMaterials: readonly CarriedLine[];
}

/** Gives what is known of the material of an id by its formula or analysis. */
export type DescribeMaterial = (id: string) => MaterialMakeUp;

/** Describes materials as an archive's records, and what Tilebook carries, tell of them. */
export function materialDescriber(archive: Pick<Archive, "materials">): DescribeMaterial {
  const findMaterial = findMaterialOf(archive);
  const findIngredient = ingredientFinder(archive);
  return remember(mostMaterials, (id) => describeMakeUp(id, findMaterial, findIngredient), idKey);
}

/** More than any archive has. */
const mostMaterials = 10_000;

/** All materials: those with pages of their own, and those that need no record. */
export function describeMaterials(
  archive: Archive,
  builtIn: readonly CarriedMaterial[],
  glazes: readonly CatalogueGlaze[],
  describe: DescribeMaterial,
): DescribedMaterials {
  return {
    materials: listMaterials(archive, builtIn, glazes, describe),
    carriedMaterials: listCarried(archive, builtIn),
  };
}

/** The archive's own materials and the carried ones that some glaze holds, by name. */
function listMaterials(
  archive: Archive,
  builtIn: readonly CarriedMaterial[],
  glazes: readonly CatalogueGlaze[],
  describe: DescribeMaterial,
): readonly CatalogueMaterial[] {
  const holding = glazesByMaterial(glazes, findMaterialIdOf(archive));
  const own = [...archive.materials.values()].map((material) => ({
    id: material.id,
    name: material.record.name,
    url: materialUrl(material.id),
    ...factsOf(material.record),
    carried: null,
    notes: material.notes,
    glazes: holding.get(idKey(material.id)) ?? [],
    ...describe(material.id),
  }));
  const carried = builtIn
    .filter(({ id }) => holding.has(idKey(id)) && !archive.materials.has(idKey(id)))
    .map((material) => ({
      id: material.id,
      name: material.name,
      url: materialUrl(material.id),
      ...factsOfCarried(material),
      carried: material,
      notes: "",
      glazes: holding.get(idKey(material.id)) ?? [],
      ...describe(material.id),
    }));
  return [...own, ...carried].sort((a, b) => compareIds(a.name, b.name));
}

function factsOf({ formula, analysis, cautions, price }: MaterialRecord): MaterialFacts {
  return {
    formula: formula ?? null,
    stated: analysis ?? null,
    warnings: cautions ?? [],
    price: price ?? null,
  };
}

function factsOfCarried({ formula, analysis }: CarriedMaterial): MaterialFacts {
  return { formula, stated: analysis, warnings: [], price: null };
}

/** All that need no record, whether a glaze holds them or not, and what the archive has instead. */
function listCarried(
  archive: Archive,
  builtIn: readonly CarriedMaterial[],
): readonly CarriedLine[] {
  return describeCarried(builtIn).map((line) => ({
    ...line,
    instead: linkTo(findById(archive.materials, line.material.id), materialUrl) ?? null,
  }));
}

type DescribedMaterial = Omit<CarriedLine, "instead">;

/** No archive changes what they are, and each unlisted set's site lists them too. */
const describeCarried = rememberFor((builtIn: readonly CarriedMaterial[]) => {
  const findCarried = materialFinder([]);
  const findIngredient = ingredientFinder({ materials: new Map() });
  return builtIn.map(
    (material): DescribedMaterial => ({
      material,
      ...describeMakeUp(material.id, findCarried, findIngredient),
    }),
  );
});

/** What a material comes to in the fire, and what to mind with it in the bag. */
function describeMakeUp(
  id: string,
  findMaterial: FindMaterial,
  findIngredient: FindIngredient,
): MaterialMakeUp {
  const found = findMaterial(id);
  const hazards = cautionsOfMaterial(findIngredient(id));
  if (!found.ok)
    return {
      analysis: null,
      basis: null,
      hazards,
      remarks: [],
      whyNoAnalysis: tellReasons(found.reasons),
    };
  const { analysis, basis, notes } = found.material;
  return {
    analysis,
    basis,
    hazards,
    remarks: notes.map(({ message }) => message),
    whyNoAnalysis: null,
  };
}

function glazesByMaterial(
  glazes: readonly CatalogueGlaze[],
  findId: FindMaterialId,
): ReadonlyMap<string, Link[]> {
  const holding = new Map<string, Link[]>();
  for (const { id, name, url, ingredients, additions } of glazes) {
    const portions = [...(ingredients ?? []), ...additions];
    const keys = portions.map(({ material }) => idKey(findId(material) ?? material));
    for (const key of new Set(keys)) {
      addTo(holding, key, { id, name, url });
    }
  }
  return holding;
}
