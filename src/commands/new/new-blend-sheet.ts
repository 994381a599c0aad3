/** The weighing sheet of a whole blend: plain text that prints on paper as it stands. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import { cautionsOfGlazes } from "../../chemistry/cautions/cautions-of-glazes.ts";
import { findMaterialOf, findRecipe } from "../../chemistry/from-records.ts";
import { weighOutDry } from "../../chemistry/weighing.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { makeLine } from "../../reporting/visible.ts";
import { idKey } from "../../terms/ids.ts";
import { inColumn, renderTable } from "../text-table.ts";
import type { BlendOrder, PlannedGlaze } from "./new-blend-plan.ts";

export interface BlendSheet {
  readonly order: BlendOrder;
  readonly title: string;
  readonly glazes: readonly PlannedGlaze[];
  /** A code for each glaze. */
  readonly codes: readonly string[];
  /** How much of each: grams of dry glaze, or millilitres where blended by volume. */
  readonly batch: number;
}

/** Cautions first, then what to weigh out for each end, then what to mix for each tile. */
export function renderBlendSheet(archive: Archive, sheet: BlendSheet): string {
  const { order, title, glazes, batch } = sheet;
  const how = order.by === "volume" ? "ml of each by volume" : "g of each by dry weight";
  const cautions = listCautions(archive, sheet);
  return [
    `${makeLine(title)}: ${glazes.length} tiles, ${batch} ${how}`,
    ...cautions.loud,
    ...order.ends.map((end, i) => renderEnd(archive, sheet, end, i)),
    renderMixing(sheet),
    ...cautions.quiet,
  ].join("\n\n");
}

function amountOf({ order, batch }: BlendSheet, { parts }: PlannedGlaze, end: number): number {
  return (batch * (parts[end] ?? 0)) / order.steps;
}

function renderEnd(
  archive: Archive,
  sheet: BlendSheet,
  { record }: Filed<GlazeRecord>,
  place: number,
): string {
  const needed = sheet.glazes.reduce((sum, glaze) => sum + amountOf(sheet, glaze, place), 0);
  const name = makeLine(record.name);
  if (sheet.order.by === "volume")
    return `[ ] ${name}: ${formatAmount(needed)} ml in all, stirred and sieved`;
  const recipe = findRecipe(record);
  if (!recipe) return `[ ] ${name}: ${formatAmount(needed)} g of it in all, dry`;
  const findMaterial = findMaterialOf(archive);
  let running = 0;
  const rows = weighOutDry(recipe, needed).items.map(({ material, grams }) => {
    const found = findMaterial(material);
    running += grams;
    const called = makeLine(found.ok ? found.material.name : material);
    return [`[ ] ${called}`, inColumn(grams), inColumn(running)];
  });
  return `${name}: ${formatAmount(needed)} g in all, dry\n${renderTable(["", "grams", "together"], rows)}`;
}

function renderMixing(sheet: BlendSheet): string {
  const { order, glazes, codes } = sheet;
  const unit = order.by === "volume" ? "ml" : "g";
  const head = ["", ...order.ends.map(({ record }) => `${makeLine(record.name)}, ${unit}`)];
  const rows = glazes.map((glaze, i) => [
    `[ ] ${codes[i]}`,
    ...order.ends.map((_, end) => inColumn(amountOf(sheet, glaze, end))),
  ]);
  return renderTable(head, rows);
}

function formatAmount(amount: number): string {
  return String(Number(amount.toFixed(1)));
}

/** The loud cautions of every glaze by its name, and what is to be minded with the materials. */
function listCautions(archive: Archive, { order, glazes }: BlendSheet) {
  const all = withNewGlazes(archive, glazes);
  const byGlaze = cautionsOfGlazes(all);
  const of = (id: string) => byGlaze.get(idKey(id)) ?? [];
  const loud = glazes.flatMap(({ id, record }) =>
    of(id)
      .filter(({ isLoud }) => isLoud)
      .map((caution) => `CAUTION, ${makeLine(record.name)}: ${tell(caution)}`),
  );
  const quiet = order.ends.flatMap(({ id }) => of(id).filter(({ isLoud }) => !isLoud));
  return { loud, quiet: [...new Set(quiet.map((caution) => `Caution: ${tell(caution)}`))] };
}

function tell({ message, hint }: Caution): string {
  return makeLine(`${message}. ${hint}`, 2000);
}

function withNewGlazes(archive: Archive, planned: readonly PlannedGlaze[]): Archive {
  const added = planned
    .filter(({ isNew }) => isNew)
    .map(({ id, record }) => [idKey(id), { id, file: "", record, notes: "" }] as const);
  return { ...archive, glazes: new Map([...archive.glazes, ...added]) };
}
