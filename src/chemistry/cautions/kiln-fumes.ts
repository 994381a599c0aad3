/** What leaves a material in the kiln. */
import type { Ingredient } from "./ingredients.ts";
import type { Source } from "./statement.ts";

export interface Fume {
  readonly gas: string;
  readonly source: Source;
  readonly isFrom: (ingredient: Ingredient) => boolean;
}

const derived: Source = { source: "chemistry of the materials", tag: "derived" };
const kilnGases: Source = {
  source: "Haz-Map, Ceramics making, for fluorides and sulphur dioxide from kilns",
  tag: "checked",
};
const nitrateGases: Source = {
  source: "Stern, High temperature properties of inorganic salts, for nitrates",
  tag: "checked",
};
const saltGas: Source = {
  source: "Western Carolina University, Ceramics safety, for salt",
  tag: "checked",
};
const kilnMetals: Source = {
  source:
    "US Environmental Protection Agency, clay ceramics area sources, for lead, manganese and chromium from kilns",
  tag: "checked",
};
const metalsInTheTrade: Source = {
  source: "common practice, no source, for other metals",
  tag: "common practice",
};

/** Per cent of a raw material below which an element in it makes no gas worth telling. */
const traceOfGas = 0.1;
/** The same for metals, of which most stay in the glaze. Common practice, no source. */
const traceOfMetal = 1;

const hasAtLeast =
  (least: number) =>
  (element: string) =>
  ({ contents, spoken }: Ingredient) =>
    spoken.includes(element) ||
    (contents.elements.has(element) && (contents.elements.get(element) ?? least) >= least);

const hasElement = hasAtLeast(traceOfGas);
const hasMuch = hasAtLeast(traceOfMetal);

/** Carbon with all the oxygen that it can take: a carbonate, or CO2 in an analysis. */
function isCarbonate({ contents: { formula, lines } }: Ingredient): boolean {
  if (!formula) return lines.some((line) => /^CO[23]$/iu.test(line));
  return (formula.atoms.O ?? 0) >= 3 * (formula.atoms.C ?? 0);
}

function isAmmonium({ contents: { formula, lines } }: Ingredient): boolean {
  return [formula?.written ?? "", ...lines].some((written) => /NH[34]/u.test(written));
}

/** Nitrogen with oxygen of its own, and not only as ammonium. */
function isNitrate({ contents: { formula, lines }, spoken }: Ingredient): boolean {
  if (spoken.includes("N")) return true;
  const withoutAmmonium = [formula?.written ?? "", ...lines].map((written) =>
    written.replace(/NH[34]/gu, ""),
  );
  return withoutAmmonium.some((written) => /N(?![a-z])/u.test(written));
}

const hasCarbon = hasElement("C");

export const fumes: readonly Fume[] = [
  {
    gas: "carbon dioxide",
    source: derived,
    isFrom: (ingredient) => hasCarbon(ingredient) && isCarbonate(ingredient),
  },
  {
    gas: "carbon monoxide and carbon dioxide",
    source: derived,
    isFrom: (ingredient) => hasCarbon(ingredient) && !isCarbonate(ingredient),
  },
  { gas: "hydrogen chloride", source: saltGas, isFrom: hasElement("Cl") },
  { gas: "hydrogen fluoride and silicon fluoride", source: kilnGases, isFrom: hasElement("F") },
  { gas: "sulphur dioxide and trioxide", source: kilnGases, isFrom: hasElement("S") },
  {
    gas: "nitrogen oxides",
    source: nitrateGases,
    isFrom: (ingredient) => hasElement("N")(ingredient) && isNitrate(ingredient),
  },
  { gas: "ammonia", source: derived, isFrom: isAmmonium },
  ...(["Pb", "Mn"] as const).map((element) => ({
    gas: { Pb: "fume of lead", Mn: "fume of manganese" }[element],
    source: kilnMetals,
    isFrom: hasMuch(element),
  })),
  ...Object.entries({
    As: "arsenic",
    Cd: "cadmium",
    Sb: "antimony",
    Se: "selenium",
    Tl: "thallium",
  }).map(([element, name]) => ({
    gas: `fume of ${name}`,
    source: metalsInTheTrade,
    isFrom: hasMuch(element),
  })),
];
