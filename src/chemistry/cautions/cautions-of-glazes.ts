/** The cautions for every glaze of an archive, with or without chemistry. */
import type { Archive } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { mixedGlazesOf } from "../from-records.ts";
import { rawRecipeFinder } from "../raw-batch.ts";
import { recipeToBatch } from "../recipe.ts";
import type { WeighedIngredient } from "./amounts.ts";
import { type Caution, inOrder } from "./caution.ts";
import { cautionsOfMixture } from "./cautions.ts";
import { elementsInWords } from "./element-names.ts";
import { ingredientFinder } from "./ingredients.ts";
import { cautionsOfLoads } from "./loud-cautions.ts";
import { substances } from "./substances.ts";

type Recipes = Pick<Archive, "glazes" | "materials">;

/**
 * The cautions of every glaze, from all that can be read of it and of everything it is mixed
 * from, down to raw materials and to labels of jars.
 *
 * @returns by the keys of `archive.glazes`
 */
export function cautionsOfGlazes(archive: Recipes): ReadonlyMap<string, readonly Caution[]> {
  const find = cautionFinder(archive);
  return new Map([...archive.glazes.keys()].map((key) => [key, find(key)]));
}

function cautionFinder(archive: Recipes): (key: string) => readonly Caution[] {
  const findIngredient = ingredientFinder(archive);
  const findRecipe = rawRecipeFinder(mixedGlazesOf(archive));
  const weigh = (key: string): readonly WeighedIngredient[] | null => {
    const recipe = findRecipe(key);
    if (!recipe) return null;
    return recipeToBatch(recipe).map(({ material, weight }) => ({
      ingredient: findIngredient(material),
      weight,
    }));
  };
  return (key) => {
    const within = glazesIn(key, archive.glazes);
    const batch = weigh(key);
    const ingredients = batch
      ? batch.map(({ ingredient }) => ingredient)
      : within.flatMap(({ record }) => ownMaterials(record).map(findIngredient));
    return inOrder([
      ...within.flatMap((glaze) => cautionsOfJar(glaze, glaze.key === key)),
      ...(batch ? [] : loadsOfParts(key, archive.glazes, weigh)),
      ...cautionsOfMixture({ ingredients, batch }),
    ]);
  };
}

interface KeyedGlaze {
  readonly key: string;
  readonly record: GlazeRecord;
}

/** A glaze and all that it is blended from, each once, itself first. */
function glazesIn(key: string, glazes: Archive["glazes"]): readonly KeyedGlaze[] {
  const found = new Map<string, KeyedGlaze>();
  const visit = (at: string) => {
    const record = glazes.get(at)?.record;
    if (!record || found.has(at)) return;
    found.set(at, { key: at, record });
    const parts = (record.blend ?? []).map(({ glaze }) => idKey(glaze));
    for (const part of parts.sort(compareIds)) visit(part);
  };
  visit(key);
  return [...found.values()];
}

function ownMaterials({ ingredients = [], additions = [] }: GlazeRecord): readonly string[] {
  return [...ingredients, ...additions].map(({ material }) => material);
}

/** What a part holds much of, told of it by name, where nobody knows how much of it is in. */
function loadsOfParts(
  key: string,
  glazes: Archive["glazes"],
  weigh: (key: string) => readonly WeighedIngredient[] | null,
): readonly Caution[] {
  return partsThatCanBeWeighed(key, glazes, weigh, new Set()).flatMap(({ name, batch }) =>
    cautionsOfLoads(`${name}, which is mixed into it,`, batch),
  );
}

interface WeighedPart {
  readonly name: string;
  readonly batch: readonly WeighedIngredient[];
}

/** @param seen the glazes whose parts are found already; this one is added */
function partsThatCanBeWeighed(
  key: string,
  glazes: Archive["glazes"],
  weigh: (key: string) => readonly WeighedIngredient[] | null,
  seen: Set<string>,
): readonly WeighedPart[] {
  if (seen.has(key)) return [];
  seen.add(key);
  const parts = (glazes.get(key)?.record.blend ?? []).map(({ glaze }) => idKey(glaze));
  return parts.sort(compareIds).flatMap((part): readonly WeighedPart[] => {
    const name = glazes.get(part)?.record.name ?? part;
    const batch = weigh(part);
    if (batch) return [{ name, batch }];
    return partsThatCanBeWeighed(part, glazes, weigh, seen);
  });
}

/** What the label of a jar says, and what its name speaks of where nothing else is known. */
function cautionsOfJar({ record }: KeyedGlaze, isItself: boolean): readonly Caution[] {
  const whose = isItself ? "Its label" : `The label of ${record.name}, which is mixed into it,`;
  return [
    ...(record.label?.includes("not-for-food") ? [notForFood(whose)] : []),
    ...(record.bought ? [...cautionsOfJarsName(record), onlyItsMakerKnows(record, isItself)] : []),
  ];
}

function onlyItsMakerKnows({ name }: GlazeRecord, isItself: boolean): Caution {
  return {
    code: "not-known",
    about: `what is in ${name}`,
    isLoud: false,
    inShort: `what is in ${isItself ? "it" : name} is not known here`,
    message: `${name} was bought, and only its maker knows what is in it, so this archive cannot say how it may harm`,
    hint: "Read its label and its safety sheet before it is mixed, sprayed, sanded or fired.",
    sources: [{ source: "the studio’s record", tag: "checked" }],
  };
}

function notForFood(whose: string): Caution {
  return {
    code: "not-for-food",
    about: "not for food",
    isLoud: true,
    inShort: "not for food",
    message: `${whose} says: not for food`,
    hint: "That holds for whatever it is put under, over or into: the ware is for looking at.",
    sources: [{ source: "the label, by the studio’s record", tag: "checked" }],
  };
}

function cautionsOfJarsName({ name, bought }: GlazeRecord): readonly Caution[] {
  const called = [name, bought?.range, bought?.colour].filter(Boolean).join(" ");
  const spoken = elementsInWords(called);
  return substances
    .filter(({ isPoison, element }) => isPoison && spoken.includes(element))
    .map(
      (substance): Caution => ({
        code: "poison",
        about: substance.name,
        isLoud: true,
        inShort: `may hold ${substance.name}`,
        message: `There may be ${substance.name} in ${name}: it is named after it`,
        hint: "Its label and safety sheet tell. Until then keep the ware from food and drink, and the jar from children.",
        sources: substance.statements,
      }),
    );
}
