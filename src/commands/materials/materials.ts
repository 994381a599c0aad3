/** `tilebook materials`: what a recipe may name without a record. */
import { existsSync } from "node:fs";
import { makeUpWords, sourceOfFigures } from "../../../templates/words/mixing/material.ts";
import type { Analysis } from "../../chemistry/analysis.ts";
import { cautionsOfMaterial } from "../../chemistry/cautions/cautions.ts";
import { ingredientFinder } from "../../chemistry/cautions/ingredients.ts";
import { materialFinder } from "../../chemistry/materials.ts";
import type { CarriedMaterial } from "../../chemistry/minerals/mineral.ts";
import { carriedMaterials } from "../../chemistry/minerals/minerals.ts";
import { rounded } from "../../publish/data/numbers.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { makeLine } from "../../reporting/visible.ts";
import { presentOxides } from "../../terms/oxides.ts";
import { exitCodes } from "../failure.ts";
import { liesIn, openArchive } from "../open-archive.ts";

export interface MaterialsOptions {
  /** Left out: the folder that the command is run in, where an archive is there. */
  readonly archive?: string;
  readonly format: "json" | "text";
}

/** A carried material as the command tells it. */
interface Told {
  readonly material: CarriedMaterial;
  readonly analysis: Analysis;
  readonly cautions: readonly string[];
  /** The name of the archive's own record, which is used in its place. */
  readonly instead: string | null;
}

/** Prints what is carried, where its figures come from, and what the archive has in its place. */
export async function materials({ archive: dir, format }: MaterialsOptions): Promise<number> {
  const isThere = dir !== undefined || existsSync("studio.yaml");
  const archive = isThere
    ? await openArchive(dir ?? ".", (file) => liesIn("recipes/materials", file))
    : null;
  if (archive === undefined) return exitCodes.faulty;
  const told = carriedMaterials.flatMap((material) => describe(material, archive));
  console.log(format === "json" ? renderJson(told) : renderText(told));
  return exitCodes.done;
}

/** As the bag by itself, whatever records there are. */
const findIngredient = ingredientFinder({ materials: new Map() });

function describe(material: CarriedMaterial, archive: Archive | null): readonly Told[] {
  const found = materialFinder([])(material.id);
  if (!found.ok) return [];
  const own = archive && findById(archive.materials, material.id);
  return [
    {
      material,
      analysis: found.material.analysis,
      cautions: cautionsOfMaterial(findIngredient(material.id)).map(({ message }) => message),
      instead: own ? own.record.name : null,
    },
  ];
}

function renderJson(told: readonly Told[]): string {
  const all = told.map(({ material, analysis, cautions, instead }) => ({
    id: material.id,
    name: material.name,
    tradeNames: material.tradeNames,
    formula: material.formula,
    analysis: Object.fromEntries(
      presentOxides(analysis.oxides).map(([oxide, weight]) => [oxide, rounded(weight, 4)]),
    ),
    loss: rounded(analysis.loss, 4),
    fluorine: rounded(analysis.fluorine, 4),
    basis: material.basis,
    source: material.source,
    tag: material.tag,
    note: material.note === "" ? null : material.note,
    cautions,
    overriddenBy: instead,
  }));
  return JSON.stringify(all, null, 2);
}

function renderText(told: readonly Told[]): string {
  return [...told.map(renderOne), howToWriteOver].join("\n\n");
}

function renderOne({ material, analysis, cautions, instead }: Told): string {
  const { id, name, tradeNames, formula, basis, note } = material;
  const lines = [
    ...(instead === null ? [] : [`not used here: the archive has its own, ${makeLine(instead)}`]),
    ...(tradeNames.length > 0 ? [`also ${tradeNames.join(", ")}`] : []),
    ...(formula === null ? [] : [formula]),
    makeUpWords({ analysis }),
    `${basis === "typical" ? "typical" : "the pure mineral"}: ${sourceOfFigures(material)}`,
    ...(note === "" ? [] : [`to be minded: ${note}`]),
    ...cautions.map((caution) => `caution: ${caution}`),
  ];
  return [`${id}: ${name}`, ...lines.map((line) => `  ${line}`)].join("\n");
}

const howToWriteOver = `A recipe may name any of these by the first word or by what it is also called. The figures are
those of a pure mineral, of one published sample or of a type of frit, not those of the bag on your
shelf. To reckon with your supplier's own, write recipes/materials/ID.md:

  ---
  name: Ball clay
  analysis: {SiO2: 54.0, Al2O3: 29.0, K2O: 2.1, loss: 10.2}
  ---

It is used instead, in every recipe. Labels, safety sheets and local rules decide what to mind.`;
