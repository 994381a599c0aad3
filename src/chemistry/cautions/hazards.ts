/**
 * Hazards of raw materials and of what can leach from a fired glaze. They orient; the product's
 * label and safety sheet, local rules and a laboratory decide.
 */
import type { FumeElement } from "../fumes.ts";
import type { MaterialHazard, OxideHazard, Statement } from "./hazard.ts";

const highlyToxic: Statement = {
  says: "is listed as highly toxic to breathe in as a raw material",
  source: "Western Carolina University, Ceramics safety",
  tag: "checked",
};

const hurtsSkin: Statement = {
  says: "can cause eczema where it touches the skin",
  source: "Haz-Map, Ceramics making",
  tag: "checked",
};

function cancer(says: string, volume: string): Statement {
  return { says, source: `IARC vol. ${volume}`, tag: "from memory" };
}

/** In the order of `oxides`. */
export const oxideHazards: readonly OxideHazard[] = [
  {
    oxide: "Li2O",
    substance: "lithium",
    statements: [highlyToxic],
    isAlwaysLoud: false,
    heavyFrom: null,
  },
  {
    oxide: "BaO",
    substance: "barium",
    statements: [
      highlyToxic,
      {
        says: "is acutely poisonous to swallow as carbonate, and can leach from a fired glaze that does not hold it",
        source: "toxicology handbooks",
        tag: "from memory",
      },
    ],
    isAlwaysLoud: false,
    heavyFrom: 10,
  },
  {
    oxide: "PbO",
    substance: "lead",
    statements: [highlyToxic, cancer("is probably carcinogenic, inorganic (group 2A)", "87")],
    isAlwaysLoud: true,
    heavyFrom: null,
  },
  {
    oxide: "MnO",
    substance: "manganese",
    statements: [
      highlyToxic,
      {
        says: "harms the nerves as dust or fume, and fumes at stoneware temperatures",
        source: "occupational-health texts",
        tag: "from memory",
      },
    ],
    isAlwaysLoud: false,
    heavyFrom: 4,
  },
  {
    oxide: "CoO",
    substance: "cobalt",
    statements: [
      highlyToxic,
      hurtsSkin,
      cancer("is probably carcinogenic as metal and soluble salts (group 2A)", "131"),
    ],
    isAlwaysLoud: false,
    heavyFrom: 2,
  },
  {
    oxide: "NiO",
    substance: "nickel",
    statements: [highlyToxic, hurtsSkin, cancer("is carcinogenic (group 1)", "100C")],
    isAlwaysLoud: false,
    heavyFrom: 2,
  },
  {
    oxide: "CuO",
    substance: "copper",
    statements: [
      {
        says: "irritates as dust or fume, and leaches into food from glazes that hold much of it",
        source: "general occupational-health texts",
        tag: "from memory",
      },
    ],
    isAlwaysLoud: false,
    heavyFrom: 4,
  },
  {
    oxide: "Cr2O3",
    substance: "chromium",
    statements: [highlyToxic, hurtsSkin],
    isAlwaysLoud: false,
    heavyFrom: 2,
  },
  {
    oxide: "V2O5",
    substance: "vanadium",
    statements: [highlyToxic, cancer("is possibly carcinogenic as pentoxide (group 2B)", "86")],
    isAlwaysLoud: false,
    heavyFrom: 2,
  },
  {
    oxide: "CdO",
    substance: "cadmium",
    statements: [highlyToxic, cancer("is carcinogenic (group 1)", "100C")],
    isAlwaysLoud: true,
    heavyFrom: null,
  },
  {
    oxide: "Sb2O3",
    substance: "antimony",
    statements: [
      highlyToxic,
      cancer("is probably carcinogenic as trivalent antimony (group 2A)", "131"),
    ],
    isAlwaysLoud: false,
    heavyFrom: 2,
  },
];

/** Materials that are hazardous in a way their oxides do not tell. */
export const materialHazards: readonly MaterialHazard[] = [
  {
    material: "potassium-dichromate",
    isShunned: true,
    statement: cancer("is hexavalent chromium, which is carcinogenic (group 1)", "100C"),
  },
  {
    material: "talc",
    isShunned: false,
    statement: {
      says: "can hold asbestos, depending on its deposit: ask for an assay",
      source: "Princeton EHS, ceramics",
      tag: "checked",
    },
  },
  {
    material: "salt",
    isShunned: true,
    statement: {
      says: "gives off hydrogen chloride in the kiln: outdoors only",
      source: "Western Carolina University, Ceramics safety",
      tag: "checked",
    },
  },
];

/** Of every dry mixture that holds silica. */
export const silicaDust: Statement = cancer(
  "is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1)",
  "100C",
);

/** What leaves in the fire, by the element that it comes from. */
export const fumes: Readonly<Record<FumeElement, string>> = {
  C: "carbon dioxide and carbon monoxide",
  Cl: "hydrogen chloride",
  F: "hydrogen fluoride and silicon fluoride",
  S: "sulphur dioxide and trioxide",
};

export const fumesSource = { source: "chemistry of the materials", tag: "derived" } as const;
