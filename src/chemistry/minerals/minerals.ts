/** The theoretical materials that every archive may use without a record of its own. */
import { idKey } from "../../terms/ids.ts";
import { clays } from "./clays.ts";
import { colourants } from "./colourants.ts";
import { everyday } from "./everyday.ts";
import { fluxes } from "./fluxes.ts";
import type { TheoreticalMaterial } from "./mineral.ts";

/** In the order of their roles: clays first, then feldspars, silica, fluxes, opacifiers, colourants. */
export const theoreticalMaterials: readonly TheoreticalMaterial[] = [
  ...clays,
  ...fluxes,
  ...colourants,
  ...everyday,
];

const byId: ReadonlyMap<string, TheoreticalMaterial> = new Map(
  theoreticalMaterials.map((material) => [idKey(material.id), material]),
);

/** The theoretical material of an id, compared without regard to case. */
export function findTheoreticalMaterial(id: string): TheoreticalMaterial | undefined {
  return byId.get(idKey(id));
}
