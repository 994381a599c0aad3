/** Reworking a glaze of an archive when a material has run out. */
import { type Archive, findById } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import type { OxideAmounts } from "../terms/oxides.ts";
import { type BroughtBy, findBringers, suggestibleMaterials } from "./bringers.ts";
import { isShunned } from "./cautions/shunned.ts";
import { findMaterialOf, findRecipe } from "./from-records.ts";
import { chemistryOfGlazes } from "./glazes.ts";
import { notWorked, type Worked } from "./reasons.ts";
import type { Recipe } from "./recipe.ts";
import { type Candidate, findNearestRecipe, type Rework } from "./rework.ts";

export interface ReworkedGlaze {
  /** The unity formula of the glaze as it is written. */
  readonly wanted: OxideAmounts;
  /** Ingredients and additions together, in a hundred parts. */
  readonly rework: Rework;
  /** What could be bought to come nearer. */
  readonly brought: readonly BroughtBy[];
}

type Recipes = Pick<Archive, "glazes" | "materials">;

/**
 * The recipe that comes nearest to a glaze without one of its materials. It is made from the
 * rest of the recipe first, then from what other recipes of the archive use and what has a
 * record in it.
 *
 * @param without the id of the material to do without
 */
export function reworkGlaze(
  archive: Recipes,
  glaze: string,
  without: string,
): Worked<ReworkedGlaze> {
  const filed = findById(archive.glazes, glaze);
  if (!filed) return notWorked("no-such-glaze", `There is no glaze “${glaze}”`, "Mend its id.");
  const { name } = filed.record;
  const recipe = findRecipe(filed.record);
  if (!recipe) return notARecipe(name);
  const result = chemistryOfGlazes(archive).get(idKey(glaze));
  if (!result?.ok) return result ?? notARecipe(name);
  const wanted = result.chemistry.unity;
  if (!wanted) return noFlux(name);
  const candidates = findCandidates(archive, recipe, without);
  const rework = findNearestRecipe(wanted, candidates);
  if (!rework) return nothingToWorkWith(name, without);
  const others = suggestibleMaterials().filter(({ material }) => material !== idKey(without));
  const brought = findBringers(wanted, rework, candidates, others);
  return { ok: true, wanted, rework, brought };
}

/**
 * In order of preference, each once, without the one that has run out. What Tilebook shuns comes
 * in only where it is in the recipe already.
 */
function findCandidates(archive: Recipes, recipe: Recipe, without: string): readonly Candidate[] {
  const own = materialsIn(recipe).map(idKey);
  const elsewhere = [...archive.glazes.values()].flatMap(({ record }) => findRecipe(record) ?? []);
  const stock = [
    ...elsewhere.flatMap(materialsIn).sort(compareIds),
    ...[...archive.materials.values()].map(({ id }) => id).sort(compareIds),
  ].map(idKey);
  const findMaterial = findMaterialOf(archive);
  return [...new Set([...own, ...stock])].flatMap((id) => {
    const found = id === idKey(without) ? undefined : findMaterial(id);
    if (!found?.ok) return [];
    const { id: material, analysis } = found.material;
    return own.includes(id) || !isShunned(material, analysis) ? [{ material, analysis }] : [];
  });
}

function materialsIn({ ingredients, additions }: Recipe): readonly string[] {
  return [...ingredients, ...additions].map(({ material }) => material);
}

function notARecipe(name: string) {
  return notWorked(
    "not-a-recipe",
    `${name} is not weighed out of materials`,
    "Only a glaze with ingredients can be reworked.",
  );
}

function noFlux(name: string) {
  return notWorked(
    "no-flux",
    `${name} holds no flux, so it has no unity formula to come near to`,
    "Weigh it out otherwise by hand.",
  );
}

function nothingToWorkWith(name: string, without: string) {
  return notWorked(
    "nothing-to-work-with",
    `No recipe near ${name} can be made without ${without} from the materials of this archive`,
    "Add records of other materials that are in stock.",
  );
}
