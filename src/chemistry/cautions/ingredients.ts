/** A material as hazards are read from it. */
import type { Archive } from "../../records/archive.ts";
import { findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { findMaterialIdOf, findMaterialOf } from "../from-records.ts";
import { findCarriedMaterial } from "../minerals/minerals.ts";
import {
  type Contents,
  contentsOfAnalysis,
  contentsOfFormula,
  unknownContents,
} from "./contents.ts";
import { elementsInWords, wordFinder } from "./element-names.ts";

export interface Ingredient {
  readonly id: string;
  readonly name: string;
  readonly contents: Contents;
  /** The elements that its name speaks of, where nobody wrote down what it is made of. */
  readonly spoken: readonly string[];
  /** Whether it was melted to a glass already. */
  readonly isGlass: boolean;
  /** What its record warns of, in the studio's own words. */
  readonly cautions: readonly string[];
}

export type FindIngredient = (id: string) => Ingredient;

/**
 * Gives every material that a recipe names: as its record, or what Tilebook carries of its id or
 * trade name, tells; one of which nothing is written down is known by its name alone.
 */
export function ingredientFinder(archive: Pick<Archive, "materials">): FindIngredient {
  const findMaterial = findMaterialOf(archive);
  const findId = findMaterialIdOf(archive);
  const known = new Map<string, Ingredient>();
  return (word) => {
    const id = findId(word) ?? word;
    const key = idKey(id);
    const found = known.get(key) ?? makeIngredient(id, archive, findMaterial);
    known.set(key, found);
    return found;
  };
}

function makeIngredient(
  id: string,
  archive: Pick<Archive, "materials">,
  findMaterial: ReturnType<typeof findMaterialOf>,
): Ingredient {
  const record = findById(archive.materials, id)?.record;
  const found = findMaterial(id);
  const material = found.ok ? found.material : undefined;
  const formula = record?.formula ?? material?.formula ?? undefined;
  const name = record?.name ?? material?.name ?? id;
  const contents = readContents(formula, record?.analysis ?? findCarriedMaterial(id)?.analysis);
  const called = `${id} ${name}`;
  const isUnread = contents.elements.size === 0;
  return {
    id,
    name,
    contents,
    spoken: isUnread ? elementsInWords(called) : [],
    isGlass: record?.frit ?? isCalledGlass(called),
    cautions: record?.cautions ?? [],
  };
}

function readContents(
  formula: string | undefined,
  analysis: Readonly<Record<string, number>> | null | undefined,
): Contents {
  if (formula !== undefined) return contentsOfFormula(formula);
  return analysis ? contentsOfAnalysis(analysis) : unknownContents;
}

/** What was melted before it was ground is called so in the trade; no analysis can tell it. */
const isCalledGlass = wordFinder(["frits?", "fritt", "glass", "cullet", "obsidian"]);
