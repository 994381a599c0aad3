/** Reworking a glaze of an archive when a material has run out. */
import { type Archive, findById } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import type { OxideAmounts } from "../terms/oxides.ts";
import { type BroughtBy, findBringers, suggestibleMaterials } from "./bringers.ts";
import { inOrder } from "./cautions/caution.ts";
import { type Caution, cautionsOfMaterial, cautionsOfMixture } from "./cautions/cautions.ts";
import { type FindIngredient, ingredientFinder } from "./cautions/ingredients.ts";
import { isShunned } from "./cautions/shunned.ts";
import { findMaterialIdOf, findMaterialOf, findRecipe } from "./from-records.ts";
import { chemistryOfGlazes } from "./glazes.ts";
import type { AnalysedMaterial, FindMaterialId } from "./materials.ts";
import { notWorked, type Worked } from "./reasons.ts";
import { type Portion, type Recipe, recipeToBatch } from "./recipe.ts";
import { findNearestRecipe, type Rework } from "./rework.ts";

export interface ReworkedGlaze {
  /** The recipe as it is written, ingredients and additions together, in a hundred parts. */
  readonly before: readonly Portion[];
  /** The unity formula of the glaze as it is written. */
  readonly wanted: OxideAmounts;
  /**
   * Ingredients and additions together, in a hundred parts; null where no material that may be
   * used holds a flux.
   */
  readonly rework: Rework | null;
  /** What could be bought to come nearer. */
  readonly brought: readonly BroughtBy[];
  /** What is to be minded with the recipe as it is fired, and with what comes in or could be bought. */
  readonly cautions: readonly Caution[];
}

/** What a glaze is to be made without, and of what else. */
export interface ReworkOrder {
  /** The id of the material to do without. */
  readonly without: string;
  /**
   * Ids of the only materials that may come in besides the rest of the recipe; where left out,
   * what other recipes of the archive use and what has a record in it.
   */
  readonly withOthers?: readonly string[] | undefined;
}

type Recipes = Pick<Archive, "glazes" | "materials">;

/**
 * The recipe that comes nearest to a glaze without one of its materials: of the rest of the
 * recipe first, then of what may come in.
 */
export function reworkGlaze(
  archive: Recipes,
  glaze: string,
  order: ReworkOrder,
): Worked<ReworkedGlaze> {
  const filed = findById(archive.glazes, glaze);
  if (!filed) return notWorked("no-such-glaze", `There is no glaze “${glaze}”`, "Mend its id.");
  const { name } = filed.record;
  const written = findRecipe(filed.record);
  if (!written) return notARecipe(name);
  const recipe = byIds(written, findMaterialIdOf(archive));
  const result = chemistryOfGlazes(archive).get(idKey(glaze));
  if (!result?.ok) return result ?? notARecipe(name);
  const wanted = result.chemistry.unity;
  if (!wanted) return noFlux(name);
  return { ok: true, before: inAHundred(recipe), wanted, ...work(archive, recipe, wanted, order) };
}

function work(
  archive: Recipes,
  recipe: Recipe,
  wanted: OxideAmounts,
  order: ReworkOrder,
): Pick<ReworkedGlaze, "brought" | "cautions" | "rework"> {
  const findId = findMaterialIdOf(archive);
  const keyOf = (word: string) => idKey(findId(word) ?? word);
  const asked = new Set([...materialsIn(recipe), ...(order.withOthers ?? [])].map(keyOf));
  const materials = findUsableMaterials(archive, recipe, order);
  const candidates = materials.map(({ id, analysis }) => ({
    material: id,
    analysis,
    isNew: !asked.has(idKey(id)),
  }));
  const rework = findNearestRecipe(wanted, candidates) ?? null;
  const others = suggestibleMaterials().filter(({ material }) => material !== keyOf(order.without));
  const brought = findBringers(wanted, rework, candidates, others);
  const cautions = [
    ...(rework ? cautionsOfRework(rework, recipe, ingredientFinder(archive)) : []),
    ...cautionsOfSuggested(brought),
  ];
  return { rework, brought, cautions: inOrder(cautions) };
}

/** The recipe with the ids of its materials, whatever words it was written in. */
function byIds({ ingredients, additions }: Recipe, findId: FindMaterialId): Recipe {
  const byId = (portion: Portion) => ({
    ...portion,
    material: findId(portion.material) ?? portion.material,
  });
  return { ingredients: ingredients.map(byId), additions: additions.map(byId) };
}

function inAHundred(recipe: Recipe): readonly Portion[] {
  const batch = recipeToBatch(recipe);
  const total = batch.reduce((sum, { weight }) => sum + weight, 0);
  return batch.map(({ material, weight }) => ({ material, parts: (100 * weight) / total }));
}

/**
 * In order of preference, each once, without the one that has run out. What Tilebook shuns, and
 * what would bring in a harmful metal that the glaze never held, comes in only where it is in the
 * recipe already, or was asked for by name.
 */
function findUsableMaterials(
  archive: Recipes,
  recipe: Recipe,
  { without, withOthers }: ReworkOrder,
): readonly AnalysedMaterial[] {
  const findId = findMaterialIdOf(archive);
  const keyOf = (word: string) => idKey(findId(word) ?? word);
  const named = [...materialsIn(recipe), ...(withOthers ?? [])].map(keyOf);
  const stock = withOthers ? [] : listStock(archive).map(keyOf);
  const findMaterial = findMaterialOf(archive);
  const findIngredient = ingredientFinder(archive);
  const find = (id: string) => {
    const found = findMaterial(id);
    return found.ok ? [found.material] : [];
  };
  const held = materialsIn(recipe).flatMap(find);
  return [...new Set([...named, ...stock])].flatMap((id) => {
    if (id === keyOf(without)) return [];
    const mayComeIn = (material: AnalysedMaterial) =>
      named.includes(id) || !(isShunned(findIngredient(id)) || bringsMetal(material, held));
    return find(id).filter(mayComeIn);
  });
}

/** What other recipes use, then what has a record. */
function listStock(archive: Recipes): readonly string[] {
  const recipes = [...archive.glazes.values()].flatMap(({ record }) => findRecipe(record) ?? []);
  return [
    ...recipes.flatMap(materialsIn).sort(compareIds),
    ...[...archive.materials.values()].map(({ id }) => id).sort(compareIds),
  ].map(idKey);
}

/** Metals that harm as powder, or in food: common practice, no source. */
const metalsToAskFor = [
  ...(["BaO", "Li2O", "MnO", "CoO", "NiO", "CuO", "Cr2O3", "V2O5", "Sb2O3"] as const),
];

/** Per cent of the raw material below which a metal in it is a trace. */
const trace = 1;

/** Whether a material would bring a metal that the glaze never held. */
function bringsMetal({ analysis }: AnalysedMaterial, held: readonly AnalysedMaterial[]): boolean {
  return metalsToAskFor.some(
    (oxide) =>
      (analysis.oxides[oxide] ?? 0) >= trace &&
      held.every((material) => (material.analysis.oxides[oxide] ?? 0) < trace),
  );
}

/** Of what could be bought: what is in the bag, for nobody has mixed it yet. */
function cautionsOfSuggested(brought: readonly BroughtBy[]): readonly Caution[] {
  const findIngredient = ingredientFinder({ materials: new Map() });
  const ids = [...new Set(brought.map(({ material }) => material))];
  return ids
    .flatMap((id) => cautionsOfMaterial(findIngredient(id)))
    .filter(({ code }) => code !== "kiln-fumes");
}

/** Of the recipe as it is fired, and in the bag of what comes in. */
function cautionsOfRework(
  { portions }: Rework,
  recipe: Recipe,
  findIngredient: FindIngredient,
): readonly Caution[] {
  const before = new Set(materialsIn(recipe).map(idKey));
  const batch = portions.map(({ material, parts }) => ({
    ingredient: findIngredient(material),
    weight: parts,
  }));
  const ingredients = batch.map(({ ingredient }) => ingredient);
  const comingIn = ingredients.filter(({ id }) => !before.has(idKey(id)));
  const fired = cautionsOfMixture({ ingredients, batch });
  const handled = cautionsOfMixture({ ingredients: comingIn, batch: null });
  return inOrder([
    ...fired.filter(({ isLoud }) => isLoud),
    ...handled,
    ...fired.filter(({ code }) => code === "only-tests-tell"),
  ]);
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
