/** The answer of `tilebook rework` as a person reads it. */
import type { BroughtBy } from "../chemistry/bringers.ts";
import type { Caution } from "../chemistry/cautions/cautions.ts";
import { findLargestDifference, type Rework, type Unreached } from "../chemistry/rework.ts";
import type { ReworkedGlaze } from "../chemistry/rework-glaze.ts";
import { makeLine } from "../reporting/visible.ts";
import { idKey } from "../terms/ids.ts";
import { type Oxide, type OxideAmounts, oxides } from "../terms/oxides.ts";
import { inColumn, renderTable } from "./text-table.ts";

export interface ReworkQuestion {
  /** Id and name of the glaze. */
  readonly id: string;
  readonly name: string;
  readonly without: string;
}

type NameOf = (material: string) => string;

export function renderReworkAsText(
  { name, without }: ReworkQuestion,
  answer: ReworkedGlaze,
  nameOf: NameOf,
): string {
  const { rework } = answer;
  return [
    `${makeLine(name)} without ${makeLine(nameOf(without))}`,
    ...(rework ? [tellParts(answer, rework, nameOf), tellFormulas(answer.wanted, rework)] : []),
    tellNearness(answer),
    ...(rework ? tellCautions(answer.cautions) : []),
  ].join("\n\n");
}

function tellParts({ before }: ReworkedGlaze, { portions }: Rework, nameOf: NameOf): string {
  const written = new Map(before.map(({ material, parts }) => [idKey(material), parts]));
  const found = new Map(portions.map(({ material, parts }) => [idKey(material), parts]));
  const rows = [...new Set([...written.keys(), ...found.keys()])].map((material) => [
    makeLine(nameOf(material)),
    inColumn(written.get(material) ?? 0),
    inColumn(found.get(material) ?? 0),
    written.has(material) ? "" : "new",
  ]);
  return [
    renderTable(["", "as it was", "as it would be", ""], rows),
    "Parts by weight in 100, additions included.",
  ].join("\n");
}

function tellFormulas(wanted: OxideAmounts, { unity }: Rework): string {
  const rows = oxides
    .filter((oxide) => isWorthTelling(wanted[oxide]) || isWorthTelling(unity[oxide]))
    .map((oxide) => {
      const [before, after] = [wanted[oxide] ?? 0, unity[oxide] ?? 0];
      return [oxide, molesInColumn(before), molesInColumn(after), formatDifference(after - before)];
    });
  return [
    renderTable(["", "as it was", "as it would be", "apart"], rows),
    "Unity formula: moles to one mole of all fluxes together.",
  ].join("\n");
}

/** Moles that do not round to nothing. */
function isWorthTelling(moles = 0): boolean {
  return moles >= 0.0005;
}

function tellNearness({ wanted, rework, brought }: ReworkedGlaze): string {
  if (!rework) return tellWantOfFlux(brought);
  const { oxide, difference } = findLargestDifference(wanted, rework.unity);
  const largest = isWorthTelling(Math.abs(difference))
    ? `The largest difference is ${formatDifference(difference)} moles of ${oxide}.`
    : "No oxide differs by as much as 0.001 mole.";
  if (rework.unreached.length === 0) return `${largest} Every oxide is reached.`;
  return [
    largest,
    ...rework.unreached.map((it) => tellUnreached(it, brought)),
    ...rework.unreached.flatMap(tellMelting),
  ].join("\n");
}

/** Moles to one of flux below which lead or boron does not carry the melting. Common practice, no source. */
const carriesMelting = 0.05;

/** A glaze that has lost the flux which melts it is told so, whatever its formula comes to. */
function tellMelting({ oxide, wanted, reached }: Unreached): readonly string[] {
  const melter = oxide === "PbO" ? "lead" : oxide === "B2O3" ? "boron" : undefined;
  if (melter === undefined || wanted - reached < carriesMelting) return [];
  return [
    `IT WILL NOT MELT AS IT DID: ${melter} melts this glaze at its cone, and ${formatMoles(wanted - reached)} of ${formatMoles(wanted)} moles of it would be gone.`,
  ];
}

function tellWantOfFlux(brought: readonly BroughtBy[]): string {
  const lacking = [...new Set(brought.map(({ oxide }) => oxide))];
  return [
    "Nothing can be made of these materials: none of them holds a flux.",
    ...lacking.map((oxide) => `${oxide} would come with ${listBringers(oxide, brought)}.`),
  ].join("\n");
}

function tellUnreached(
  { oxide, wanted, reached }: Unreached,
  brought: readonly BroughtBy[],
): string {
  const amounts = `${formatMoles(reached)} instead of ${formatMoles(wanted)}`;
  if (reached > wanted) return `Too much ${oxide}: ${amounts}. It comes with the other materials.`;
  const bringers = listBringers(oxide, brought);
  return bringers === ""
    ? `Too little ${oxide}: ${amounts}. More of it would take other oxides farther off.`
    : `${oxide} cannot be reached: ${amounts}. It would come nearer with ${bringers}.`;
}

/** By their ids, as `--with` takes them. */
function listBringers(oxide: Oxide, brought: readonly BroughtBy[]): string {
  const ids = brought.filter((it) => it.oxide === oxide).map(({ material }) => material);
  return makeLine(ids.join(" or "));
}

function tellCautions(cautions: readonly Caution[]): readonly string[] {
  const told = cautions.map(({ isLoud, message, hint }) =>
    makeLine(`${isLoud ? "CAUTION" : "Caution"}: ${message}. ${hint}`, 2000),
  );
  return [...told, newGlaze];
}

/** Common practice, no source. */
const newGlaze =
  "Equal formulas need not melt alike: grain, frits and what clays bring along all count. Fire a test tile before mixing a bucket.";

/** Three figures. */
function formatMoles(moles: number): string {
  return moles.toFixed(moles >= 1 ? 2 : 3);
}

/** With its decimal point under those of amounts below 1. */
function molesInColumn(moles: number): string {
  return moles >= 1 ? `${formatMoles(moles)} ` : formatMoles(moles);
}

function formatDifference(moles: number): string {
  const rounded = Math.abs(moles).toFixed(3);
  if (Number(rounded) === 0) return rounded;
  return `${moles < 0 ? "−" : "+"}${rounded}`;
}
