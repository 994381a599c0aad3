/** What to mind with materials in the bag, on the table and in the kiln. */
import { rememberFor } from "../../terms/remember.ts";
import { amountIn, substancesIn } from "./amounts.ts";
import { type Caution, filterClasses } from "./caution.ts";
import { isHexavalent } from "./forms.ts";
import type { Ingredient } from "./ingredients.ts";
import { type Fume, fumes } from "./kiln-fumes.ts";
import { type MineralHazard, mineralHazards } from "./minerals.ts";
import { cancer, checked, commonPractice } from "./statement.ts";
import type { Substance } from "./substances.ts";
import { listed, namesOf, saysOf, trueOf } from "./words.ts";

/** Per cent of a raw material below which a metal in it is a trace. Common practice, no source. */
const trace = 1;

const masksAndGloves =
  "Wear gloves and a fitted mask (FFP3 or P100, or what the safety sheet asks for) with the powder, clean up wet, and keep food and children away.";

/** Everything that is to be minded with some materials, whatever is made of them. */
export function cautionsOfHandling(ingredients: readonly Ingredient[]): readonly Caution[] {
  return [
    ...cautionOfHexavalent(ingredients),
    ...substancesIn(ingredients).flatMap((substance) => cautionOfRaw(substance, ingredients)),
    ...mineralHazards.flatMap((hazard) => cautionOfMineral(hazard, ingredients)),
    ...cautionOfSilica(ingredients),
    ...cautionOfGlass(ingredients),
    ...cautionOfSalt(ingredients),
    ...cautionOfFumes(ingredients),
    ...cautionOfChromium(ingredients),
  ];
}

function cautionOfRaw(
  substance: Substance,
  ingredients: readonly Ingredient[],
): readonly Caution[] {
  const { name, statements } = substance;
  const holding = ingredients.filter(
    (it) => (amountIn(it, substance) ?? trace) >= (substance.isPoison ? 0.1 : trace),
  );
  const told = trueOf(statements, holding);
  if (holding.length === 0 || told.length === 0) return [];
  const concerned = holding.filter((it) => trueOf(statements, [it]).length > 0);
  return [
    {
      code: "raw-material",
      about: name,
      isLoud: false,
      inShort: name,
      message: `${capitalised(name)} (in ${namesOf(concerned)}) ${saysOf(statements, holding)}`,
      hint: masksAndGloves,
      sources: [...told, filterClasses],
    },
  ];
}

const hexavalent = cancer("is hexavalent chromium, which is carcinogenic (group 1)", "100C");

const mayBeHexavalent = rememberFor(isHexavalent);

function cautionOfHexavalent(ingredients: readonly Ingredient[]): readonly Caution[] {
  const holding = ingredients.filter(mayBeHexavalent);
  if (holding.length === 0) return [];
  return [
    {
      code: "poison",
      about: "hexavalent chromium",
      isLoud: true,
      inShort: "mixed with hexavalent chromium",
      message: `${namesOf(holding)} ${hexavalent.says}`,
      hint: masksAndGloves,
      sources: [hexavalent, filterClasses],
    },
  ];
}

const mineralsOf = rememberFor((ingredient: Ingredient) =>
  mineralHazards.filter(({ isIn }) => isIn(ingredient)),
);

function cautionOfMineral(
  hazard: MineralHazard,
  ingredients: readonly Ingredient[],
): readonly Caution[] {
  const { inShort, subject, isLoud, statements } = hazard;
  const found = ingredients.filter((it) => mineralsOf(it).includes(hazard));
  if (found.length === 0) return [];
  return [
    {
      code: "raw-material",
      about: inShort,
      isLoud,
      inShort,
      message: `${subject(namesOf(found))} ${statements.map(({ says }) => says).join("; it ")}`,
      hint: masksAndGloves,
      sources: [...statements, filterClasses],
    },
  ];
}

const silicaDust = cancer(
  "is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1)",
  "100C",
);

function holdsSilica({ contents }: Ingredient): boolean {
  return (contents.oxides.SiO2 ?? contents.elements.get("Si") ?? 0) >= trace;
}

function cautionOfSilica(ingredients: readonly Ingredient[]): readonly Caution[] {
  if (!ingredients.some((it) => holdsSilica(it) && !it.isGlass)) return [];
  return [
    {
      code: "silica-dust",
      about: "silica dust",
      isLoud: false,
      inShort: "silica dust",
      message: `Dust of silica ${silicaDust.says}`,
      hint: "Weigh where the air is drawn off, or wear a fitted mask (FFP3 or P100). Mix wet, wipe wet, and never sweep.",
      sources: [silicaDust, filterClasses],
    },
  ];
}

function cautionOfGlass(ingredients: readonly Ingredient[]): readonly Caution[] {
  const glasses = ingredients.filter(({ isGlass }) => isGlass);
  if (glasses.length === 0) return [];
  return [
    {
      code: "dust",
      about: "glass dust",
      isLoud: false,
      inShort: "dust of ground glass",
      message: `The dust of ${namesOf(glasses)} is ground glass, which hurts eyes, nose and lungs`,
      hint: "Wear a fitted mask with the dry powder, mix wet and wipe wet.",
      sources: [commonPractice],
    },
  ];
}

const saltInKiln = checked(
  "gives off hydrogen chloride in the kiln: outdoors only",
  "Western Carolina University, Ceramics safety",
);

/** Chlorides of sodium and potassium: what salt kilns are fed with. */
export function isSalt({ contents: { formula } }: Ingredient): boolean {
  const { Na, K, Cl, ...others } = formula?.atoms ?? {};
  return Cl !== undefined && Boolean(Na || K) && Object.keys(others).length === 0;
}

function cautionOfSalt(ingredients: readonly Ingredient[]): readonly Caution[] {
  const salts = ingredients.filter(isSalt);
  if (salts.length === 0) return [];
  return [
    {
      code: "raw-material",
      about: "salt",
      isLoud: false,
      inShort: "salt, outdoors only",
      message: `${namesOf(salts)} ${saltInKiln.says}`,
      hint: "Stand upwind, and stay out of the fumes.",
      sources: [saltInKiln],
    },
  ];
}

const fumesOf = rememberFor((ingredient: Ingredient) =>
  fumes.filter(({ isFrom }) => isFrom(ingredient)),
);

function cautionOfFumes(ingredients: readonly Ingredient[]): readonly Caution[] {
  const found = fumes.flatMap((fume): (Fume & { from: readonly Ingredient[] })[] => {
    const from = ingredients.filter((it) => fumesOf(it).includes(fume));
    return from.length > 0 ? [{ ...fume, from }] : [];
  });
  if (found.length === 0) return [];
  const told = found.map(({ gas, from }) => `${gas} (from ${namesOf(from)})`);
  return [
    {
      code: "kiln-fumes",
      about: "kiln fumes",
      isLoud: false,
      inShort: `from the kiln: ${listed(found.map(({ gas }) => gas))}`,
      message: `In the kiln this recipe gives off ${told.join("; ")}`,
      hint: "Fire with the kiln’s extraction on and the room aired, as the kiln’s manual and local rules ask, and stay out of the fumes. A dust filter stops no gas.",
      sources: found.map(({ source }) => source),
    },
  ];
}

const chromiumInAir = checked(
  "chromium that meets lime or alkalis can in part turn hexavalent, which dissolves in water and is carcinogenic (group 1)",
  "Equilibrium phase relations in the Al2O3–CaO–Cr2O3 system in air, refractories WORLDFORUM, for lime at up to 1300 °C",
);

function cautionOfChromium(ingredients: readonly Ingredient[]): readonly Caution[] {
  const holding = ingredients.filter(({ contents, spoken }) => {
    const amount = contents.elements.get("Cr");
    return spoken.includes("Cr") || (amount !== undefined && (amount ?? trace) >= trace);
  });
  if (holding.length === 0) return [];
  return [
    {
      code: "chromium-in-oxidation",
      about: "chromium in oxidation",
      isLoud: false,
      inShort: "chromium that can turn hexavalent in oxidation",
      message: `Fired in oxidation, ${chromiumInAir.says} (from ${namesOf(holding)})`,
      hint: "Keep the kiln’s extraction on, touch yellow crusts and yellow run-off with gloves only, and have ware for food tested for chromium as well.",
      sources: [chromiumInAir, hexavalent],
    },
  ];
}

export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
