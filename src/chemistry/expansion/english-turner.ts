import { type ExpansionSet, recalled, traceOfLithia } from "./expansion-set.ts";

/** English and Turner's factors of 1927, soda as corrected in 1929. */
export const englishTurner: ExpansionSet = {
  model: "english-turner",
  name: "English & Turner",
  basis: "weight per cent",
  published: "linear",
  between: [25, 90],
  limits:
    "simple soda-lime-silica glasses; boric oxide up to about 12 per cent by weight, where its effect turns round; reprints disagree on Al2O3 (0.14, 0.17), BaO (1.40, 1.73) and ZnO (0.70, 0.07)",
  source: "S. English & W. E. S. Turner, J. Am. Ceram. Soc. 10 (1927) 551-560, 12 (1929) 760",
  rmsError: 11.3e-7,
  endsAt: { B2O3: 12, Li2O: traceOfLithia },
  factors: recalled({
    SiO2: 0.05,
    B2O3: -0.653,
    Al2O3: 0.14,
    Na2O: 4.32,
    K2O: 3.9,
    MgO: 0.45,
    CaO: 1.63,
    BaO: 1.4,
    ZnO: 0.7,
    PbO: 1.06,
    ZrO2: 0.23,
  }),
  outsideLimits: ({ weightPercent: { B2O3 = 0 } }) => (B2O3 > 12 ? ["B2O3"] : []),
};
