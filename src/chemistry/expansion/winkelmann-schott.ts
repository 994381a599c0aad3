import {
  checked,
  type ExpansionSet,
  mostBoricOxide,
  mostJenaLithia,
  recalled,
} from "./expansion-set.ts";

/** Winkelmann and Schott's factors of 1894. */
export const winkelmannSchott: ExpansionSet = {
  model: "winkelmann-schott",
  name: "Winkelmann & Schott",
  basis: "weight per cent",
  published: "cubical",
  between: [20, 100],
  limits:
    "thermometer and optical glasses; glasses rich in silica come out far too high; poor for MgO and B2O3",
  source:
    "A. Winkelmann & O. Schott, Ann. Phys. Chem. (Wied.) 51 (1894) 730-746; Hovestadt, Jena Glass (1902)",
  rmsError: 12e-7,
  endsAt: { B2O3: mostBoricOxide, Li2O: mostJenaLithia },
  factors: {
    ...checked({ SiO2: 0.8, B2O3: 0.1, MgO: 0.1 }),
    ...recalled({
      Al2O3: 5,
      Na2O: 10,
      K2O: 8.5,
      Li2O: 2,
      CaO: 5,
      BaO: 3,
      ZnO: 1.8,
      PbO: 3,
      P2O5: 2,
    }),
  },
  outsideLimits: () => [],
};
