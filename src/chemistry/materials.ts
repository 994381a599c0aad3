/** What a raw material is made of: by its formula, its analysis, or as the mineral of its name. */
import { idKey } from "../terms/ids.ts";
import { type Analysis, analyseFormula } from "./analysis.ts";
import { findTheoreticalMaterial } from "./minerals/minerals.ts";
import type { Note } from "./notes.ts";
import { notWorked, type Worked } from "./reasons.ts";
import { readStatedAnalysis, type StatedAnalysis } from "./stated-analysis.ts";

/** A material as an archive describes it. */
export interface MaterialSource {
  readonly id: string;
  readonly name: string;
  readonly formula?: string | undefined;
  readonly analysis?: StatedAnalysis | undefined;
}

export interface AnalysedMaterial {
  readonly id: string;
  readonly name: string;
  readonly analysis: Analysis;
  /** The formula that its analysis follows from; null where it was stated as an analysis. */
  readonly formula: string | null;
  /** Where its analysis comes from. */
  readonly basis: "analysis" | "formula" | "theoretical";
  /** What was done with the figures, and what to mind. */
  readonly notes: readonly Note[];
}

export type MaterialResult = Worked<{ readonly material: AnalysedMaterial }>;

/** Gives the analysis of the material of an id, as a recipe names it. */
export type FindMaterial = (id: string) => MaterialResult;

/**
 * Looks materials up among those of an archive and then among the theoretical minerals. A record
 * of the archive wins; one that gives neither formula nor analysis but bears a theoretical
 * mineral's id (it may hold a price alone) is taken as that mineral, and a note says so.
 */
export function materialFinder(sources: readonly MaterialSource[]): FindMaterial {
  const results = new Map(sources.map((source) => [idKey(source.id), analyseMaterial(source)]));
  return (id) => {
    const found = results.get(idKey(id)) ?? findTheoretical(id);
    if (!found) return noSuchMaterial(id);
    results.set(idKey(id), found);
    return found;
  };
}

/** The analysis of one material of an archive, or the reason why there is none. */
export function analyseMaterial(source: MaterialSource): MaterialResult {
  if (source.formula !== undefined) return byFormula(source, source.formula);
  if (source.analysis !== undefined) return byAnalysis(source, source.analysis);
  return byTheory(source) ?? notAnalysed(source);
}

function byFormula({ id, name }: MaterialSource, formula: string): MaterialResult {
  const reading = analyseFormula(formula);
  if (!reading.ok) {
    const { message, hint, position } = reading.problem;
    return notWorked(
      "formula-unreadable",
      `The formula of ${name} cannot be read at character ${position}: ${lowerFirst(message)}`,
      hint,
    );
  }
  const notes = reading.balanced ? [] : [unbalanced(formula)];
  const { analysis } = reading;
  return { ok: true, material: { id, name, analysis, formula, basis: "formula", notes } };
}

function unbalanced(formula: string): Note {
  return {
    code: "charges-do-not-balance",
    message: `The charges in ${formula} do not balance: look for a missing · or a wrong number`,
  };
}

function byAnalysis({ id, name }: MaterialSource, stated: StatedAnalysis): MaterialResult {
  const reading = readStatedAnalysis(stated);
  if (!reading.ok) {
    const { message, hint } = reading.problem;
    return notWorked(
      "analysis-unreadable",
      `The analysis of ${name} cannot be used: ${lowerFirst(message)}`,
      hint,
    );
  }
  const { analysis, notes } = reading;
  return {
    ok: true,
    material: { id, name, analysis, formula: null, basis: "analysis", notes },
  };
}

function lowerFirst(message: string): string {
  return message.charAt(0).toLowerCase() + message.slice(1);
}

function byTheory({ id, name }: MaterialSource): MaterialResult | undefined {
  const mineral = findTheoretical(id);
  if (!mineral?.ok) return mineral;
  const note: Note = {
    code: "theoretical",
    message: `${name} is reckoned as the theoretical mineral of its name, since its record gives neither formula nor analysis`,
  };
  return { ok: true, material: { ...mineral.material, id, name, notes: [note] } };
}

function findTheoretical(id: string): MaterialResult | undefined {
  const mineral = findTheoreticalMaterial(id);
  if (!mineral) return undefined;
  const reading = analyseFormula(mineral.formula);
  if (!reading.ok) return undefined;
  const { analysis } = reading;
  const { id: plainId, name, formula } = mineral;
  return {
    ok: true,
    material: { id: plainId, name, analysis, formula, basis: "theoretical", notes: [] },
  };
}

function notAnalysed({ id, name }: MaterialSource): MaterialResult {
  return notWorked(
    "material-not-analysed",
    `${name} has neither a formula nor an analysis`,
    `Add formula: or analysis: to the record of the material “${id}”.`,
  );
}

function noSuchMaterial(id: string): MaterialResult {
  return notWorked(
    "no-such-material",
    `There is no material “${id}”`,
    `Add a record for it, recipes/materials/${id}.md, with its formula or analysis.`,
  );
}
