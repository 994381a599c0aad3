/** The metals that people look for in glazes by their everyday names. */
import type { Oxide, OxideAmounts } from "./oxides.ts";

interface Metal {
  readonly oxides: readonly Oxide[];
  /** What people type. */
  readonly words: readonly string[];
  /** Per cent of the fired glaze from which somebody looking for it means it: less is a trace in clays and feldspars. */
  readonly from: number;
}

/** Colouring and opacifying metals, in the order of their names. Where a trace ends is common practice, no source. */
export const metals: readonly Metal[] = [
  { oxides: ["Cr2O3"], words: ["chrome", "chromium"], from: 0.05 },
  { oxides: ["CoO"], words: ["cobalt"], from: 0.05 },
  { oxides: ["CuO"], words: ["copper"], from: 0.05 },
  { oxides: ["Fe2O3", "FeO"], words: ["iron"], from: 1 },
  { oxides: ["MnO"], words: ["manganese"], from: 0.1 },
  { oxides: ["NiO"], words: ["nickel"], from: 0.05 },
  { oxides: ["Ag2O"], words: ["silver"], from: 0.01 },
  { oxides: ["SnO2"], words: ["tin"], from: 0.5 },
  { oxides: ["TiO2"], words: ["titanium"], from: 1 },
  { oxides: ["V2O5"], words: ["vanadium"], from: 0.1 },
  { oxides: ["ZnO"], words: ["zinc"], from: 0.5 },
  { oxides: ["ZrO2"], words: ["zirconium", "zircon"], from: 0.5 },
];

/** The metals of which a fired glaze holds more than a trace, by all their names. */
export function metalsIn(weightPercent: OxideAmounts): readonly string[] {
  const amountOf = ({ oxides }: Metal) =>
    oxides.reduce((sum, oxide) => sum + (weightPercent[oxide] ?? 0), 0);
  return metals.filter((metal) => amountOf(metal) >= metal.from).flatMap(({ words }) => words);
}
