/** How the figures and the ways of a rework are told. */

import type { Unreached } from "../../chemistry/rework-distance.ts";
import type { KnownExpansion, ReworkFigures } from "../../chemistry/rework-figures.ts";
import type { GlazeProposal, ReworkedGlaze } from "../../chemistry/rework-glaze.ts";
import type { Exchange } from "../../chemistry/swap.ts";

export type NameOf = (material: string) => string;

/** What is done, in a line without a full stop. */
export function tellWay(proposal: GlazeProposal, answer: ReworkedGlaze, nameOf: NameOf): string {
  const { kind, exchange, additionExchange, comingIn } = proposal;
  const coming = listed(comingIn.map(({ material }) => nameOf(material)));
  if (kind === "swap" && exchange) return tellSwap(exchange, nameOf);
  if (kind === "addition" && additionExchange) return tellSwap(additionExchange, nameOf);
  if (kind === "bare") {
    const lost = answer.lostAddition ? nameOf(answer.lostAddition.material) : "the addition";
    return `the base as it is written, and no ${lost} on top`;
  }
  return coming === "" || kind === "rest"
    ? "the rest of the recipe, weighed anew"
    : `with ${coming}, the rest weighed anew`;
}

function tellSwap({ out, into }: Exchange, nameOf: NameOf): string {
  return `${nameOf(into.material)} for ${nameOf(out.material)}, mole for mole`;
}

/** What a swap comes to on the scale, as the recipe is written. */
export function tellExchange({ out, into, of }: Exchange, nameOf: NameOf): string {
  const what = of.length > 1 ? "alkalis" : (of[0] ?? "");
  return `${formatParts(into.parts)} parts of ${nameOf(into.material)} bring as many moles of ${what} as ${formatParts(out.parts)} of ${nameOf(out.material)}. Everything else stays as it is written.`;
}

/** Silica to alumina, expansion and cost: as they would be, and as they were. */
export function tellFigures(
  before: ReworkFigures,
  after: ReworkFigures,
  nameOf: NameOf,
): readonly string[] {
  return [
    `Silica to alumina: ${tellRatio(after)}; it was ${tellRatio(before)}.`,
    tellExpansions(before, after),
    `Cost of a kilogram, dry: ${tellCost(after)}; it was ${tellCost(before)}.${tellUnpriced(after, nameOf)}`,
  ];
}

function tellRatio({ silicaToAlumina }: ReworkFigures): string {
  return silicaToAlumina === null ? "no alumina" : silicaToAlumina.toFixed(1);
}

/** By the set that the pages trust most, of those with a figure for both. */
function tellExpansions(before: ReworkFigures, after: ReworkFigures): string {
  const was = before.expansions.find(({ model }) => findBy(after, model));
  const willBe = was && findBy(after, was.model);
  if (!was || !willBe)
    return "Expansion: not known, for no one set of factors covers it both as it was and as it would be.";
  const change = willBe.perKelvin - was.perKelvin;
  const isTold = Math.abs(change) > was.doubt + willBe.doubt;
  const tendency = isTold
    ? `it would tend more towards ${change > 0 ? "crazing" : "shivering"}`
    : "too small a difference to tell";
  const outside = [...new Set([...was.outside, ...willBe.outside])];
  const uncovered =
    outside.length > 0 ? ` These factors do not cover ${outside.join(", ")} here.` : "";
  return `Expansion by the factors of ${willBe.by}: ${tellExpansion(willBe)}; it was ${tellExpansion(was)}, × 10⁻⁶/°C: ${tendency}.${uncovered}`;
}

function findBy({ expansions }: ReworkFigures, model: string): KnownExpansion | undefined {
  return expansions.find((expansion) => expansion.model === model);
}

function tellExpansion({ perKelvin, doubt }: KnownExpansion): string {
  return `${perMillion(perKelvin)} ± ${perMillion(doubt)}`;
}

function perMillion(perKelvin: number): string {
  return (perKelvin * 1e6).toFixed(1);
}

/** What is not known stays so. */
function tellCost({ cost }: ReworkFigures): string {
  const amount = cost.known.toFixed(2);
  if (cost.unpriced.length === 0) return amount;
  return cost.known === 0 ? "not known" : `${amount} in part`;
}

function tellUnpriced({ cost }: ReworkFigures, nameOf: NameOf): string {
  if (cost.unpriced.length === 0) return "";
  return ` No price is known for ${listed([...cost.unpriced].map(nameOf).sort())}.`;
}

/** Moles to one of flux below which lead or boron does not carry the melting. Common practice, no source. */
const carriesMelting = 0.05;

/** A glaze that has lost the flux which melts it is told so, whatever its formula comes to. */
export function tellMelting({ oxide, wanted, reached }: Unreached): readonly string[] {
  const melter = oxide === "PbO" ? "lead" : oxide === "B2O3" ? "boron" : undefined;
  if (melter === undefined || wanted - reached < carriesMelting) return [];
  return [
    `IT WILL NOT MELT AS IT DID: ${melter} melts this glaze at its cone, and ${formatMoles(wanted - reached)} of ${formatMoles(wanted)} moles of it would be gone.`,
  ];
}

/** Below this a strength is told as unchanged: scales and hands differ by as much. */
const worthTelling = 0.05;

/** Additions stay as written, and may be stronger or weaker for it. */
export function tellStrength({ additions, additionStrength }: GlazeProposal): readonly string[] {
  const change = additionStrength - 1;
  if (additions.length === 0 || Math.abs(change) < worthTelling) return [];
  const way = change > 0 ? "more" : "less";
  return [
    `What is added on top stays as it is written. Measured against the fluxes that is ${Math.abs(100 * change).toFixed(0)} per cent ${way} than it was, for the base loses ${change > 0 ? "more" : "less"} in the fire.`,
  ];
}

/** Three figures. */
export function formatMoles(moles: number): string {
  return moles.toFixed(moles >= 1 ? 2 : 3);
}

export function formatParts(parts: number): string {
  return String(Number(parts.toFixed(parts >= 10 ? 1 : 2)));
}

export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${last}` : last;
}
