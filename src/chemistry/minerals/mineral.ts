import type { Tag } from "../../terms/atomic-weights.ts";
import type { StatedAnalysis } from "../stated-analysis.ts";
import { tradeNames } from "./trade-names.ts";

/** A material that every archive may use without a record of its own. */
export interface CarriedMaterial {
  /** What a recipe calls it by. */
  readonly id: string;
  readonly name: string;
  /** What the trade also calls it, as a recipe may write it. */
  readonly tradeNames: readonly string[];
  /** The mineral or chemical that stands for it; empty where that is its name. */
  readonly mineral: string;
  readonly role: string;
  /** Null where it is carried by a published analysis. */
  readonly formula: string | null;
  /** Null where it follows from the formula. */
  readonly analysis: StatedAnalysis | null;
  /**
   * `theoretical`: the pure substance, without the impurities of what is dug and sold. `typical`:
   * one analysis, or the make-up of a type, that stands for many which differ.
   */
  readonly basis: "theoretical" | "typical";
  readonly source: string;
  readonly tag: Tag;
  /** What a potter should know before trusting the figures; empty where there is nothing. */
  readonly note: string;
}

/** A material as its formula has it, without the impurities of what is dug and sold. */
export interface TheoreticalMaterial extends CarriedMaterial {
  readonly formula: string;
  readonly basis: "theoretical";
}

/** Id, name, mineral, formula and, where there is one, a note. */
export type MineralRow =
  | readonly [id: string, name: string, mineral: string, formula: string]
  | readonly [id: string, name: string, mineral: string, formula: string, note: string];

const source =
  "formula from standard mineralogy or chemistry, computed with the CIAAW 2021 atomic weights";

/** Materials of one role whose analysis follows from their formula. */
export function ofRole(role: string, rows: readonly MineralRow[]): readonly TheoreticalMaterial[] {
  return rows.map(([id, name, mineral, formula, note = ""]) => ({
    id,
    name,
    tradeNames: tradeNames[id] ?? [],
    mineral,
    role,
    formula,
    analysis: null,
    basis: "theoretical",
    source,
    tag: "derived",
    note,
  }));
}
