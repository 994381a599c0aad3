import type { Tag } from "../../terms/atomic-weights.ts";

/** A material as its formula has it, without the impurities of what is dug and sold. */
export interface TheoreticalMaterial {
  /** What a recipe calls it by. */
  readonly id: string;
  readonly name: string;
  /** The mineral or chemical that stands for it; empty where that is its name. */
  readonly mineral: string;
  readonly role: string;
  readonly formula: string;
  readonly source: string;
  readonly tag: Tag;
  /** What a potter should know before trusting the figures; empty where there is nothing. */
  readonly note: string;
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
    mineral,
    role,
    formula,
    source,
    tag: "derived",
    note,
  }));
}
