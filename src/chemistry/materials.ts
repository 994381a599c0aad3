/** What a raw material is made of: by its formula, its analysis, or as Tilebook carries it. */
import { idKey } from "../terms/ids.ts";
import { type Analysis, analyseFormula } from "./analysis.ts";
import type { CarriedMaterial } from "./minerals/mineral.ts";
import { findCarriedMaterial } from "./minerals/minerals.ts";
import type { Note } from "./notes.ts";
import { readStatedAnalysis, type StatedAnalysis } from "./stated-analysis.ts";
import { notWorked, type Worked } from "./why-no-chemistry.ts";

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
  /** Where its analysis comes from; `theoretical` and `typical` ones are carried by Tilebook. */
  readonly basis: "analysis" | "formula" | "theoretical" | "typical";
  /** What was done with the figures, and what to mind. */
  readonly notes: readonly Note[];
}

export type MaterialResult = Worked<{ readonly material: AnalysedMaterial }>;

/** Gives the analysis of the material of an id, as a recipe names it. */
export type FindMaterial = (id: string) => MaterialResult;

/** Gives the id of the material that a recipe means by a word; undefined where nobody knows. */
export type FindMaterialId = (word: string) => string | undefined;

/**
 * Follows what a recipe writes: to the archive's record of that id, then to what Tilebook carries
 * under that id or trade name, of which a record of the archive wins in its turn.
 *
 * @param own the ids of the archive's records of materials
 */
export function materialIdFinder(own: Iterable<string>): FindMaterialId {
  const records = new Map([...own].map((id) => [idKey(id), id]));
  return (word) => {
    const carried = findCarriedMaterial(word);
    return records.get(idKey(word)) ?? (carried && (records.get(idKey(carried.id)) ?? carried.id));
  };
}

/**
 * Looks materials up among those of an archive and then among those that Tilebook carries, by id
 * or trade name. A record of the archive wins; one that gives neither formula nor analysis but
 * bears the id of a carried material (it may hold a price alone) is taken as that, and a note
 * says so.
 */
export function materialFinder(sources: readonly MaterialSource[]): FindMaterial {
  const results = new Map(sources.map((source) => [idKey(source.id), analyseMaterial(source)]));
  const findId = materialIdFinder(sources.map(({ id }) => id));
  return (word) => {
    const key = idKey(findId(word) ?? word);
    const found = results.get(key) ?? findCarried(key);
    if (!found) return noSuchMaterial(word);
    results.set(key, found);
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
  const carried = findCarried(id);
  if (!carried?.ok) return carried;
  const { material } = carried;
  const stand = material.basis === "typical" ? "typical analysis" : "theoretical mineral";
  const note: Note = {
    code: material.basis === "typical" ? "typical" : "theoretical",
    message: `${name} is reckoned as the ${stand} of its name, since its record gives neither formula nor analysis`,
    ...(material.basis === "typical" && { material: id }),
  };
  return { ok: true, material: { ...material, id, name, notes: [note] } };
}

function findCarried(word: string): MaterialResult | undefined {
  const carried = findCarriedMaterial(word);
  return carried && analyseCarried(carried);
}

/** A material that Tilebook carries. What is typical says so in a note. */
function analyseCarried(carried: CarriedMaterial): MaterialResult | undefined {
  const { id, name, basis, formula } = carried;
  const analysis = readCarried(carried);
  if (!analysis) return undefined;
  const notes = basis === "typical" ? [typical(carried)] : [];
  return { ok: true, material: { id, name, analysis, formula, basis, notes } };
}

function readCarried({ formula, analysis }: CarriedMaterial): Analysis | undefined {
  const reading = formula === null ? readStatedAnalysis(analysis ?? {}) : analyseFormula(formula);
  return reading.ok ? reading.analysis : undefined;
}

function typical({ id, name, formula }: CarriedMaterial): Note {
  const figures = formula === null ? "a typical analysis" : "the formula of its type";
  const message = `${name} is reckoned by ${figures}, not by that of your bag`;
  return { code: "typical", material: id, message };
}

function notAnalysed({ id, name }: MaterialSource): MaterialResult {
  return notWorked(
    "material-not-analysed",
    `${name} has no formula and no analysis`,
    `Add formula: or analysis: to the record of the material “${id}”.`,
  );
}

function noSuchMaterial(id: string): MaterialResult {
  return notWorked(
    "no-such-material",
    `There is no material “${id}”`,
    `Add a record for it, recipes/materials/${id}.md, with its formula or analysis; “tilebook materials” lists what needs none.`,
  );
}
