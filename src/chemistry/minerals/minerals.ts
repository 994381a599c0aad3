/** The materials that every archive may use without a record of its own. */
import { idKey } from "../../terms/ids.ts";
import { clays } from "./clays.ts";
import { colourants } from "./colourants.ts";
import { everyday } from "./everyday.ts";
import { fluxes } from "./fluxes.ts";
import type { CarriedMaterial, TheoreticalMaterial } from "./mineral.ts";
import { typicalMaterials } from "./typical.ts";

/** In the order of their roles: clays first, then feldspars, silica, fluxes, opacifiers, colourants. */
export const theoreticalMaterials: readonly TheoreticalMaterial[] = [
  ...clays,
  ...fluxes,
  ...colourants,
  ...everyday,
];

/** The theoretical materials, then those that a typical analysis stands for. */
export const carriedMaterials: readonly CarriedMaterial[] = [
  ...theoreticalMaterials,
  ...typicalMaterials,
];

const byWord: ReadonlyMap<string, CarriedMaterial> = new Map(
  carriedMaterials.flatMap((material) =>
    [material.id, ...material.tradeNames].map((word) => [idKey(word), material] as const),
  ),
);

/** The carried material of an id or a trade name, compared without regard to case. */
export function findCarriedMaterial(word: string): CarriedMaterial | undefined {
  return byWord.get(idKey(word));
}

/** Every word that leads to a carried material: ids first, then trade names. */
export const carriedWords: readonly string[] = [
  ...carriedMaterials.map(({ id }) => id),
  ...carriedMaterials.flatMap(({ tradeNames }) => tradeNames),
];
