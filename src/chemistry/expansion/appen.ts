import { alkalis, type OxideAmounts } from "../../terms/oxides.ts";
import { sumOf, sumOfOxides } from "../oxide-sums.ts";
import { checked, type ExpansionSet, mostBoricOxide, recalled } from "./expansion-set.ts";

/** Oxides of divalent metals, as Appen's conditions count them. */
const divalent = ["MgO", "CaO", "SrO", "BaO", "ZnO", "PbO", "CdO"] as const;

/** 38, and less as silica rises above 67 mol%. */
function silica({ SiO2 = 0 }: OxideAmounts): number {
  return SiO2 <= 67 ? 38 : 105 - SiO2;
}

/** Falls with the alkalis and earths that alumina leaves for boron, but not below -50. */
function boricOxide(mole: OxideAmounts): number {
  const { B2O3 = 0, Al2O3 = 0 } = mole;
  if (B2O3 === 0) return 0;
  const left = (sumOf(mole, alkalis) + sumOf(mole, divalent) - Al2O3) / B2O3;
  return Math.max(-50, -12.5 * left);
}

/** 465 beside soda, 425 where there is less than 1 mol% of it. */
function potash({ Na2O = 0 }: OxideAmounts): number {
  return Na2O < 1 ? 425 : 465;
}

/**
 * 130 with little alkali or with a third as much of other oxides as of alkali, else rising with
 * the alkalis. The lead oxide is counted among the others, as the printed condition has it.
 */
function leadOxide(mole: OxideAmounts): number {
  const alkali = sumOf(mole, alkalis);
  const others = sumOfOxides(mole) - alkali - (mole.SiO2 ?? 0);
  return alkali < 3 || others / alkali > 1 / 3 ? 130 : 115 + 5 * alkali;
}

/** Falls with silica; made for 50 to 80 mol% of it. */
function titania({ SiO2 = 0 }: OxideAmounts): number {
  return 105 - 1.5 * SiO2;
}

/** Appen's factors, with their conditions. */
export const appen: ExpansionSet = {
  model: "appen",
  name: "Appen",
  basis: "mole per cent",
  published: "linear",
  between: [20, 400],
  limits: "silicate glasses with 45 to 80 mole per cent of SiO2",
  source:
    "A. A. Appen, Khimiya Stekla, Leningrad 1970/1974; conditions compared with Ceramic Industry, glass special report, table 1",
  rmsError: 2.8e-7,
  endsAt: { B2O3: mostBoricOxide, Li2O: 10 },
  factors: {
    ...checked({ SiO2: silica, B2O3: boricOxide, K2O: potash, PbO: leadOxide, TiO2: titania }),
    ...recalled({
      Al2O3: -30,
      Li2O: 270,
      Na2O: 395,
      MgO: 60,
      CaO: 130,
      SrO: 160,
      BaO: 200,
      ZnO: 50,
      CdO: 115,
      ZrO2: -60,
      SnO2: -45,
      P2O5: 140,
      MnO: 105,
      Fe2O3: 55,
      CoO: 50,
      NiO: 50,
      CuO: 30,
    }),
  },
  outsideLimits: ({ molePercent: { SiO2 = 0, TiO2 = 0 } }) => {
    if (SiO2 >= 50 && SiO2 <= 80) return [];
    const titania = TiO2 > 0 ? (["TiO2"] as const) : [];
    return SiO2 >= 45 && SiO2 <= 80 ? titania : ["SiO2", ...titania];
  },
};
