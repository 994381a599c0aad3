/** Reworking a glaze of an archive when a material has run out. */
import { type Archive, findById } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import type { OxideAmounts } from "../terms/oxides.ts";
import { tellBrings } from "./brings.ts";
import type { Caution } from "./cautions/cautions.ts";
import { ingredientFinder } from "./cautions/ingredients.ts";
import { findMaterialIdOf, findMaterialOf, findRecipe } from "./from-records.ts";
import { chemistryOfGlazes } from "./glazes.ts";
import type { AnalysedMaterial } from "./materials.ts";
import { findOxideSources, type OxideSource, suggestibleMaterials } from "./oxide-sources.ts";
import { findProposals, type Proposal } from "./proposals.ts";
import type { Portion, Recipe } from "./recipe.ts";
import { type Candidate, describeRework, type Rework, type Share } from "./rework.ts";
import { findAdditionSources, type KeptAdditions, keepAdditions } from "./rework-additions.ts";
import { cautionsOfRework, cautionsOfSources } from "./rework-cautions.ts";
import { findFigures, findStrength, type ReworkFigures } from "./rework-figures.ts";
import type { Exchange } from "./swap.ts";
import { bringsMetal, findMaterialsToBringIn, materialsIn } from "./usable-materials.ts";
import { notWorked, type Worked } from "./why-no-chemistry.ts";

/** A glaze as it is written, or as it would be. */
export interface WeighedGlaze {
  /** The base: parts by weight in a hundred. */
  readonly base: readonly Portion[];
  /** Parts for every hundred of the base. */
  readonly additions: readonly Portion[];
  readonly figures: ReworkFigures;
}

/**
 * A way to make the glaze. `addition`: the base stays, and another material brings what a missing
 * addition brought; `bare`: the base stays, and the addition is left out.
 */
export interface GlazeProposal extends WeighedGlaze {
  readonly kind: Proposal["kind"] | "addition" | "bare";
  /** The base, and how near it comes. */
  readonly rework: Rework;
  /** One material of the base that took the place of another. */
  readonly exchange: Exchange | null;
  /** One addition that took the place of another. */
  readonly additionExchange: Exchange | null;
  /** Materials that the glaze never held, and what each brings. */
  readonly comingIn: readonly { readonly material: string; readonly why: string }[];
  /** How much more of the additions there is to one of flux: 1 where it is as much. */
  readonly additionStrength: number;
  readonly cautions: readonly Caution[];
}

export interface ReworkedGlaze {
  readonly before: WeighedGlaze;
  /** The unity formula of the base as it is written, without what is added on top. */
  readonly wanted: OxideAmounts;
  /** The nearest first; none where nothing that may be used holds a flux. */
  readonly proposals: readonly GlazeProposal[];
  /** The addition that is missing; null where the missing material is none. */
  readonly lostAddition: Portion | null;
  /** What could be bought to come nearer than the nearest. */
  readonly sources: readonly OxideSource[];
  /** What is to be minded with what could be bought. */
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
 * The ways to make a glaze without one of its materials, from the nearest to the simplest: of the
 * rest of the recipe, and of what may come in. The base alone is reckoned anew; additions stay on
 * top as they are written.
 */
export function reworkGlaze(
  archive: Recipes,
  glaze: string,
  order: ReworkOrder,
): Worked<ReworkedGlaze> {
  const filed = findById(archive.glazes, glaze);
  if (!filed) return notWorked("no-such-glaze", `There is no glaze “${glaze}”`, "Correct its id.");
  const { name } = filed.record;
  const recipe = findRecipe(filed.record);
  if (!recipe) return notARecipe(name);
  const result = chemistryOfGlazes(archive).get(idKey(glaze));
  if (!result?.ok) return result ?? notARecipe(name);
  const bench = layOut(archive, recipe, order);
  const written = describeRework({}, bench.base);
  return written ? { ok: true, ...work(bench, written.unity) } : noFlux(name);
}

/** All that a rework is made from, by the keys of ids. */
interface Bench {
  readonly base: readonly Share[];
  readonly additions: readonly Share[];
  readonly without: string;
  readonly others: readonly Share[];
  readonly isNamed: boolean;
  readonly shareOf: (portion: Portion) => Share;
  readonly figuresOf: (recipe: Recipe) => ReworkFigures;
  readonly cautionsOf: (recipe: Recipe, comingIn: readonly string[]) => readonly Caution[];
}

function layOut(archive: Recipes, recipe: Recipe, order: ReworkOrder): Bench {
  const findId = findMaterialIdOf(archive);
  const idOf = (word: string) => findId(word) ?? word;
  const findMaterial = findMaterialOf(archive);
  const find = (id: string) => {
    const found = findMaterial(id);
    if (!found.ok) throw new Error(`${id} has no analysis`);
    return found.material;
  };
  const shareOf = ({ material, parts }: Portion) => ({
    material: idOf(material),
    parts,
    analysis: find(material).analysis,
  });
  const without = idOf(order.without);
  const byId = { ingredients: eachOnce(recipe.ingredients.map(shareOf)) };
  const additions = recipe.additions.map(shareOf);
  const others = findMaterialsToBringIn(archive, { ...byId, additions }, order.withOthers);
  const known = (material: string) => ({
    isTypical: find(material).basis === "typical",
    price: findById(archive.materials, idOf(material))?.record.price,
  });
  const findIngredient = ingredientFinder(archive);
  return {
    base: byId.ingredients,
    additions,
    without,
    others: others.map((material) => asShare(material)),
    isNamed: order.withOthers !== undefined,
    shareOf,
    figuresOf: (made) => findFigures(made, shareOf, known),
    cautionsOf: (made, comingIn) => cautionsOfRework(made, comingIn, findIngredient),
  };
}

function asShare({ id, analysis }: AnalysedMaterial): Share {
  return { material: id, analysis, parts: 0 };
}

/** A recipe may name one material in two words, flint and silica. */
function eachOnce(shares: readonly Share[]): readonly Share[] {
  const once = new Map<string, Share>();
  for (const share of shares) {
    const parts = (once.get(share.material)?.parts ?? 0) + share.parts;
    once.set(share.material, { ...share, parts });
  }
  return [...once.values()];
}

function work(bench: Bench, wanted: OxideAmounts): ReworkedGlaze {
  const { base, additions, without, others, isNamed, figuresOf } = bench;
  const added = keepAdditions(additions, without, [...base, ...others]);
  const isInBase = base.some(({ material }) => material === without);
  const proposals = isInBase
    ? findProposals(wanted, { written: base, without, others, isNamed }).map((proposal) =>
        complete(bench, proposal, added),
      )
    : proposeAdditions(bench, wanted, added);
  const before = {
    base: inAHundred(base),
    additions: additions.map(({ material, parts }) => ({ material, parts })),
  };
  const sources = [
    ...(isInBase ? sourcesFor(bench, wanted, proposals) : []),
    ...(added.lost && !added.instead ? findAdditionSources(added.lost, listBuyable(bench)) : []),
  ];
  return {
    before: {
      ...before,
      figures: figuresOf({ ingredients: before.base, additions: before.additions }),
    },
    wanted,
    proposals,
    lostAddition: added.lost && { material: added.lost.material, parts: added.lost.parts },
    sources,
    cautions: cautionsOfSources(sources),
  };
}

function inAHundred(shares: readonly Share[]): readonly Portion[] {
  const total = shares.reduce((sum, { parts }) => sum + parts, 0);
  return shares.map(({ material, parts }) => ({ material, parts: (100 * parts) / total }));
}

function sourcesFor(
  bench: Bench,
  wanted: OxideAmounts,
  [nearest]: readonly GlazeProposal[],
): readonly OxideSource[] {
  const { base, without, others } = bench;
  const comingIn = new Set(nearest?.comingIn.map(({ material }) => material));
  const used = [
    ...base.filter(({ material }) => material !== without),
    ...others.filter(({ material }) => comingIn.has(material)),
  ];
  return findOxideSources(wanted, nearest?.rework ?? null, used, listBuyable(bench));
}

/** No metal that harms and that the glaze never held. */
function listBuyable({ base, additions, without }: Bench): readonly Candidate[] {
  return suggestibleMaterials().filter(
    (candidate) =>
      idKey(candidate.material) !== idKey(without) &&
      !bringsMetal(candidate, [...base, ...additions]),
  );
}

/** With the base as it is written: another addition that brings the same, and none at all. */
function proposeAdditions(
  bench: Bench,
  wanted: OxideAmounts,
  added: KeptAdditions,
): readonly GlazeProposal[] {
  const rework = describeRework(wanted, bench.base);
  if (!rework) return [];
  const asWritten = { rework, exchange: null, comingIn: [] };
  const bare = complete(bench, { kind: "bare", ...asWritten }, { ...added, instead: null });
  if (!added.instead) return [bare];
  return [complete(bench, { kind: "addition", ...asWritten }, added), bare];
}

type Draft = Omit<Proposal, "kind"> & Pick<GlazeProposal, "kind">;

function complete(bench: Bench, draft: Draft, { kept, instead }: KeptAdditions): GlazeProposal {
  const { base, additions: written, others, shareOf } = bench;
  const { rework } = draft;
  const added = instead ? [{ material: instead.into.material, parts: instead.into.parts }] : [];
  const recipe = { ingredients: rework.portions, additions: [...kept, ...added] };
  const held = new Set([...base, ...written].map(({ material }) => material));
  const comingIn = others.filter(
    ({ material }) => !held.has(material) && materialsIn(recipe).includes(material),
  );
  const ids = comingIn.map(({ material }) => material);
  return {
    ...draft,
    base: rework.portions,
    additions: recipe.additions,
    additionExchange: instead,
    figures: bench.figuresOf(recipe),
    comingIn: comingIn.map(({ material, analysis }) => ({ material, why: tellBrings(analysis) })),
    additionStrength: findStrength(base, rework.portions.map(shareOf)),
    cautions: bench.cautionsOf(recipe, ids),
  };
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
