/**
 * Materials as they are dug, milled and sold, each by one published analysis, and types of frit by
 * the formula of the type. They stand for many that differ: a record of the archive wins.
 *
 * Analyses are in weight per cent, as printed. None is scaled to 100.
 */
import type { CarriedMaterial } from "./mineral.ts";
import { tradeNames } from "./trade-names.ts";
import { typicalClays } from "./typical-clays.ts";
import type { TypicalRow } from "./typical-row.ts";
import { typicalStones } from "./typical-stones.ts";

const rows: readonly TypicalRow[] = [
  ...typicalClays,
  ...typicalStones,
  ...frits([
    ["alkali-frit", "Alkali frit, high in soda", "0.65Na2O·0.05K2O·0.3CaO·0.1Al2O3·0.1B2O3·3SiO2"],
    [
      "calcium-borosilicate-frit",
      "Calcium borosilicate frit, without alumina",
      "0.3Na2O·0.7CaO·0.6B2O3·1.5SiO2",
    ],
    [
      "alumina-borosilicate-frit",
      "Boron frit with alumina",
      "0.3Na2O·0.7CaO·0.25Al2O3·0.55B2O3·2.5SiO2",
    ],
    ["soft-borax-frit", "Soft borax frit", "0.6Na2O·0.4CaO·0.1Al2O3·B2O3·2SiO2"],
  ]),
  {
    id: "lead-borosilicate-frit",
    name: "Lead borosilicate frit",
    role: "lead",
    formula: "0.5Na2O·0.5PbO·B2O3·2SiO2",
    source:
      "the melt of Seger cone 022 after Hecht, in H. A. Seger, Collected Writings (Am. Ceram. Soc. 1902) and later tables",
    tag: "from memory",
    note: "holds lead: for old recipes alone",
  },
];

function frits(
  types: readonly (readonly [id: string, name: string, formula: string])[],
): readonly TypicalRow[] {
  return types.map(([id, name, formula]) => ({
    id,
    name,
    role: "frit",
    formula,
    source: "the type in round numbers, common practice, no published source",
    tag: "from memory",
    note: "a type and no product: only the supplier's sheet says what the bag holds",
  }));
}

/** Clays first, then feldspars, glass and frits. */
export const typicalMaterials: readonly CarriedMaterial[] = rows.map((row) => ({
  mineral: "",
  formula: null,
  analysis: null,
  ...row,
  tradeNames: tradeNames[row.id] ?? [],
  basis: "typical",
}));
