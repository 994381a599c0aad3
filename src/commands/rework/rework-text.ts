/** The answer of `tilebook rework` as a person reads it. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import type { OxideSource } from "../../chemistry/oxide-sources.ts";
import type { Portion } from "../../chemistry/recipe.ts";
import { findLargestDifference, type Unreached } from "../../chemistry/rework-distance.ts";
import type { GlazeProposal, ReworkedGlaze } from "../../chemistry/rework-glaze.ts";
import { makeLine } from "../../reporting/visible.ts";
import { type Oxide, type OxideAmounts, oxides } from "../../terms/oxides.ts";
import { inColumn, renderTable } from "../text-table.ts";
import {
  formatMoles,
  formatParts,
  listed,
  type NameOf,
  tellExchange,
  tellFigures,
  tellMelting,
  tellStrength,
  tellWay,
} from "./rework-words.ts";

export interface ReworkQuestion {
  /** Id and name of the glaze. */
  readonly id: string;
  readonly name: string;
  readonly without: string;
}

export function renderReworkAsText(
  { name, without }: ReworkQuestion,
  answer: ReworkedGlaze,
  nameOf: NameOf,
): string {
  const inLine: NameOf = (material) => makeLine(nameOf(material));
  const { proposals, lostAddition, sources } = answer;
  return [
    `${makeLine(name)} without ${inLine(without)}`,
    ...(lostAddition ? [tellLostAddition(lostAddition, inLine)] : []),
    ...proposals.flatMap((_, i) => tellProposal(answer, i, inLine)),
    ...(proposals.length === 0 ? [tellWantOfFlux(sources)] : tellSources(sources)),
    ...tellCautions([
      ...proposals.flatMap(({ cautions }) => cautions.filter(({ isLoud }) => !isLoud)),
      ...answer.cautions,
    ]),
    ...(proposals.length > 0 ? [newGlaze] : []),
  ].join("\n\n");
}

function tellLostAddition({ material, parts }: Portion, nameOf: NameOf): string {
  return `${nameOf(material)} is added on top: ${formatParts(parts)} for every 100 of the ingredients. Without it the glaze loses what that was there for, unless another addition brings the same.`;
}

function tellProposal(answer: ReworkedGlaze, i: number, nameOf: NameOf): readonly string[] {
  const proposal = answer.proposals[i];
  if (!proposal) return [];
  return [
    tellPlace(i, answer.proposals.length, tellWay(proposal, answer, nameOf)),
    tellParts(answer, proposal, nameOf),
    ...(isBaseKept(proposal) ? [] : [tellFormulas(answer.wanted, proposal)]),
    [...tellNearness(answer, proposal), ...tellChanges(answer, proposal, nameOf)].join("\n"),
    ...tellCautions(proposal.cautions.filter(({ isLoud }) => isLoud)),
  ];
}

function tellPlace(i: number, all: number, way: string): string {
  if (all === 1) return way.charAt(0).toUpperCase() + way.slice(1);
  const which = i === 0 ? ", the nearest" : i === all - 1 ? ", the simplest" : "";
  return `${i + 1} of ${all}${which}: ${way}`;
}

function tellParts({ before }: ReworkedGlaze, proposal: GlazeProposal, nameOf: NameOf): string {
  const { base, additions, exchange, additionExchange, comingIn } = proposal;
  const newly = new Set(comingIn.map(({ material }) => material));
  const rows = [
    ...compareParts(before.base, base, nameOf, newly),
    ...compareParts(before.additions, additions, nameOf, newly, "+ "),
  ];
  const swap = exchange ?? additionExchange;
  return [
    renderTable(["", "as it was", "as it would be", ""], rows),
    additions.length + before.additions.length > 0
      ? "Parts by weight in 100 of the ingredients; what is marked + is added on top of the 100."
      : "Parts by weight in 100.",
    ...(swap ? [tellExchange(swap, nameOf)] : []),
    ...comingIn.map(({ material, why }) => `New: ${nameOf(material)} ${why}.`),
  ].join("\n");
}

function compareParts(
  was: readonly Portion[],
  wouldBe: readonly Portion[],
  nameOf: NameOf,
  newly: ReadonlySet<string>,
  mark = "",
): string[][] {
  const all = [...new Set([...was, ...wouldBe].map(({ material }) => material))];
  return all.map((material) => [
    mark + nameOf(material),
    inColumn(partsOf(was, material)),
    inColumn(partsOf(wouldBe, material)),
    newly.has(material) ? "new" : "",
  ]);
}

function partsOf(portions: readonly Portion[], material: string): number {
  const same = portions.filter((portion) => portion.material === material);
  return same.reduce((sum, { parts }) => sum + parts, 0);
}

function tellFormulas(wanted: OxideAmounts, { rework, additions }: GlazeProposal): string {
  const { unity } = rework;
  const rows = oxides
    .filter((oxide) => isWorthTelling(wanted[oxide]) || isWorthTelling(unity[oxide]))
    .map((oxide) => {
      const [before, after] = [wanted[oxide] ?? 0, unity[oxide] ?? 0];
      return [oxide, molesInColumn(before), molesInColumn(after), formatDifference(after - before)];
    });
  const of = additions.length > 0 ? " of the base, without what is added on top" : "";
  return [
    renderTable(["", "as it was", "as it would be", "apart"], rows),
    `Unity formula${of}: moles to one mole of all fluxes together.`,
  ].join("\n");
}

/** Moles that do not round to nothing. */
function isWorthTelling(moles = 0): boolean {
  return moles >= 0.0005;
}

function isBaseKept({ kind }: GlazeProposal): boolean {
  return kind === "addition" || kind === "bare";
}

function tellNearness({ wanted }: ReworkedGlaze, proposal: GlazeProposal): readonly string[] {
  if (isBaseKept(proposal)) return ["The base, and so its unity formula, stays as it was."];
  const { rework } = proposal;
  const { oxide, difference } = findLargestDifference(wanted, rework.unity);
  const largest = isWorthTelling(Math.abs(difference))
    ? `The largest difference is ${formatDifference(difference)} moles of ${oxide}.`
    : "No oxide differs by as much as 0.001 mole.";
  if (rework.unreached.length === 0) return [`${largest} Every oxide is reached.`];
  return [
    largest,
    ...rework.unreached.map(tellUnreached),
    ...rework.unreached.flatMap(tellMelting),
  ];
}

function tellUnreached({ oxide, wanted, reached }: Unreached): string {
  const amounts = `${formatMoles(reached)} instead of ${formatMoles(wanted)}`;
  return reached > wanted
    ? `Too much ${oxide}: ${amounts}. The other materials bring it in.`
    : `Too little ${oxide}: ${amounts}.`;
}

function tellChanges(
  { before }: ReworkedGlaze,
  proposal: GlazeProposal,
  nameOf: NameOf,
): readonly string[] {
  const { figures } = proposal;
  const typical = listed(figures.typical.map(nameOf));
  return [
    ...tellFigures(before.figures, figures, nameOf),
    ...tellStrength(proposal),
    ...(typical === ""
      ? []
      : [`This rests on typical analyses, not on those of your bags: ${typical}.`]),
  ];
}

function tellWantOfFlux(sources: readonly OxideSource[]): string {
  return [
    "Nothing can be made of these materials: none of them holds a flux.",
    ...listSources(sources, (oxide) => `${oxide} would come with`),
  ].join("\n");
}

function tellSources(sources: readonly OxideSource[]): readonly string[] {
  if (sources.length === 0) return [];
  return [
    [
      "What could be bought to come nearer, with --with:",
      ...listSources(sources, (oxide) => `${oxide} from`),
    ].join("\n"),
  ];
}

/** By their ids, as `--with` takes them, each with what it brings. */
function listSources(
  sources: readonly OxideSource[],
  begin: (oxide: Oxide) => string,
): readonly string[] {
  const lacking = [...new Set(sources.map(({ oxide }) => oxide))];
  return lacking.map((oxide) => {
    const from = sources.filter((it) => it.oxide === oxide);
    const told = from.map(({ material, why }) => `${material} (${why})`);
    return makeLine(`${begin(oxide)} ${told.join(" or ")}.`, 2000);
  });
}

function isSame(a: Caution, b: Caution): boolean {
  return a.message === b.message && a.hint === b.hint;
}

function tellCautions(cautions: readonly Caution[]): readonly string[] {
  const once = cautions.filter((it, i) => cautions.findIndex((other) => isSame(it, other)) === i);
  return once.map(({ isLoud, message, hint }) =>
    makeLine(`${isLoud ? "CAUTION" : "Caution"}: ${message}. ${hint}`, 2000),
  );
}

/** Common practice, no source. */
const newGlaze =
  "Equal formulas need not melt alike: grain, frits and what clays bring along all count. Fire a test tile before mixing a bucket.";

/** With its decimal point under those of amounts below 1. */
function molesInColumn(moles: number): string {
  return moles >= 1 ? `${formatMoles(moles)} ` : formatMoles(moles);
}

function formatDifference(moles: number): string {
  const rounded = Math.abs(moles).toFixed(3);
  if (Number(rounded) === 0) return rounded;
  return `${moles < 0 ? "−" : "+"}${rounded}`;
}
