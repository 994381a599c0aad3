/** The three figures that a mixer of glazes looks for first. */
import { alkalis, type Oxide } from "../terms/oxides.ts";
import type { FiredChemistry } from "./fired-chemistry.ts";
import { sumOf } from "./oxide-sums.ts";

export type MixFigure = "alkaliToEarth" | "boron" | "silicaToAlumina";

/** In the order in which they are told. */
export const mixFigures: readonly MixFigure[] = ["silicaToAlumina", "alkaliToEarth", "boron"];

/** Null where it cannot be told: without alumina, without either, without fluxes. */
export type MixFigures = Readonly<Record<MixFigure, number | null>>;

const alkalineEarths = ["MgO", "CaO", "SrO", "BaO"] as const satisfies readonly Oxide[];

/**
 * Silica to one of alumina; the alkalis' share of alkalis and alkaline earths together, from 0 to
 * 1, which leaves zinc and lead out; boric oxide to one of all fluxes. All by moles.
 */
export function mixFiguresOf({ molePercent, silicaToAlumina, unity }: FiredChemistry): MixFigures {
  const [alkali, earth] = [sumOf(molePercent, alkalis), sumOf(molePercent, alkalineEarths)];
  return {
    silicaToAlumina,
    alkaliToEarth: unity && alkali + earth > 0 ? alkali / (alkali + earth) : null,
    boron: unity && (unity.B2O3 ?? 0),
  };
}
