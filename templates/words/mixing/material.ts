/** What the figures of a material rest on, in words. */

import type { MaterialMakeUp } from "../../../src/catalogue/mixing/materials.ts";
import type { CarriedMaterial } from "../../../src/chemistry/minerals/mineral.ts";
import { presentOxides } from "../../../src/terms/oxides.ts";
import { asAnalysed } from "./chemistry.ts";

/** What a material's figures are, without a full stop. */
export function originWords({ carried }: { readonly carried: CarriedMaterial | null }): string {
  if (carried === null) return "A raw material with a record of its own";
  if (carried.basis === "theoretical")
    return "A theoretical mineral: the formula of the pure substance, which no sack holds exactly";
  return carried.formula === null
    ? "One typical analysis: a published sample, and not the bag on your shelf"
    : "A type in round numbers, and no product: not the bag on your shelf";
}

/** How to write a supplier's own figures over those that are carried. */
export function writeOverWords({ id }: CarriedMaterial): string {
  return `To use your supplier’s own figures, write recipes/materials/${id}.md with a name and the analysis from the sheet. Every recipe then uses it instead.`;
}

/** Where figures come from, and whether anybody compared them. */
export function sourceOfFigures({ source, tag }: CarriedMaterial): string {
  const isSaid = tag !== "from memory" || source.endsWith("no published source");
  return isSaid ? source : `${source} (from memory, not compared)`;
}

/** An amount of something, in per cent of the raw weight; what it is may be a formula. */
export type MadeOf = readonly [of: string, amount: string];

/** What stays in the fire, most first, and what goes. */
export function makeUpOfMaterial({
  analysis,
}: Pick<MaterialMakeUp, "analysis">): readonly MadeOf[] {
  if (!analysis) return [];
  const oxides = presentOxides(analysis.oxides)
    .filter(([, weight]) => weight >= 0.005)
    .sort(([, a], [, b]) => b - a)
    .map(([oxide, weight]): MadeOf => [oxide, asAnalysed(weight)]);
  const fluorine =
    analysis.fluorine > 0 ? [["fluorine", asAnalysed(analysis.fluorine)] as const] : [];
  return [...oxides, ...fluorine, ...lossOf(analysis.loss)];
}

/** The same in one line of plain text. */
export function makeUpWords(material: Pick<MaterialMakeUp, "analysis">): string {
  return makeUpOfMaterial(material)
    .map((made) => made.join(" "))
    .join(", ");
}

function lossOf(loss: number): readonly MadeOf[] {
  const amount = asAnalysed(Math.abs(loss));
  if (Math.abs(loss) < 0.005) return [];
  return [[loss < 0 ? "taken up in firing" : "lost in firing", amount]];
}
