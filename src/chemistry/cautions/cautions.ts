/** What to mind with a recipe: in the bag, in the kiln, and on the table. */
import type { Tag } from "../../terms/atomic-weights.ts";
import { idKey } from "../../terms/ids.ts";
import type { FiredChemistry } from "../fired-chemistry.ts";
import { fumeElements } from "../fumes.ts";
import type { AnalysedMaterial } from "../materials.ts";
import { formatAmount } from "../notes.ts";
import type { OxideHazard } from "./hazard.ts";
import { fumes, fumesSource, materialHazards, oxideHazards, silicaDust } from "./hazards.ts";

/** A material as it goes into a batch. */
export type HandledMaterial = Pick<AnalysedMaterial, "analysis" | "fumes" | "id" | "name">;

export interface Caution {
  readonly code:
    | "heavy-load"
    | "kiln-fumes"
    | "lead-or-cadmium"
    | "only-tests-tell"
    | "raw-material"
    | "silica-dust";
  /** Shown always, and before anything else. */
  readonly isLoud: boolean;
  /** Of a loud one: what a list says beside the glaze's name, such as “holds lead”. */
  readonly inShort?: string;
  /** A sentence or two without the last full stop. */
  readonly message: string;
  readonly hint: string;
  readonly sources: readonly { readonly source: string; readonly tag: Tag }[];
}

/**
 * The cautions for a recipe, the loud ones first. They never say that anything may be used.
 *
 * @param materials each once
 * @param fired null where the glaze has no chemistry
 */
export function findCautions(
  materials: readonly HandledMaterial[],
  fired: FiredChemistry | null,
): readonly Caution[] {
  const all = [
    ...(fired ? cautionsOfFired(fired) : cautionsOfUnfired(materials)),
    ...oxideHazards.flatMap((hazard) => cautionOfRawOxide(hazard, materials) ?? []),
    ...materials.flatMap(cautionsOfMaterial),
    ...cautionOfSilica(materials),
    ...cautionOfFumes(materials),
    ...(fired ? [onlyTestsTell] : []),
  ];
  return [...all.filter(({ isLoud }) => isLoud), ...all.filter(({ isLoud }) => !isLoud)];
}

function cautionsOfFired(fired: FiredChemistry): readonly Caution[] {
  return oxideHazards.flatMap((hazard) => {
    const amount = fired.weightPercent[hazard.oxide] ?? 0;
    if (hazard.isAlwaysLoud && amount > 0) return [holds(hazard, amount)];
    return hazard.heavyFrom !== null && amount >= hazard.heavyFrom ? [heavy(hazard, amount)] : [];
  });
}

/** Of a glaze whose amounts nobody knows, and of a material by itself. */
function cautionsOfUnfired(materials: readonly HandledMaterial[]): readonly Caution[] {
  return oxideHazards.flatMap((hazard) => {
    const from = materials.filter(({ analysis }) => (analysis.oxides[hazard.oxide] ?? 0) > 0);
    if (!hazard.isAlwaysLoud || from.length === 0) return [];
    const names = from.map(({ name }) => name).join(", ");
    return [loudlyHolds(hazard, `There is ${hazard.substance} in it, from ${names}`)];
  });
}

function holds(hazard: OxideHazard, amount: number): Caution {
  const { oxide, substance } = hazard;
  const told = `This glaze holds ${substance}: ${formatAmount(amount)} per cent of what is fired, as ${oxide}`;
  return loudlyHolds(hazard, told);
}

function loudlyHolds({ substance, statements }: OxideHazard, message: string): Caution {
  return {
    code: "lead-or-cadmium",
    isLoud: true,
    inShort: `holds ${substance}`,
    message,
    hint: "Keep the ware from food and drink, and the powder and slop from hands, lungs and children. Labels, local rules and a laboratory decide what may be done with it.",
    sources: statements,
  };
}

function heavy({ oxide, substance, statements }: OxideHazard, amount: number): Caution {
  return {
    code: "heavy-load",
    isLoud: true,
    inShort: `holds much ${substance}`,
    message: `This glaze holds much ${substance}: ${formatAmount(amount)} per cent of what is fired, as ${oxide}`,
    hint: "A glaze may not hold so much of it against acids: keep it from surfaces that touch food or drink unless a laboratory has tested the fired ware.",
    sources: [
      ...statements,
      { source: "common practice, no source, for the amount", tag: "from memory" },
    ],
  };
}

/** Per cent of a raw material below which an oxide in it is a trace. Common practice, no source. */
const trace = 1;

const labelsDecide =
  "Wear a fitted dust mask and gloves where the label and the safety sheet ask for them, clean up wet, and keep food and children away.";

function cautionOfRawOxide(
  { oxide, substance, statements }: OxideHazard,
  materials: readonly HandledMaterial[],
): Caution | undefined {
  const holding = materials.filter(({ analysis }) => (analysis.oxides[oxide] ?? 0) >= trace);
  if (holding.length === 0) return undefined;
  const names = holding.map(({ name }) => name).join(", ");
  return {
    code: "raw-material",
    isLoud: false,
    message: `${capitalised(substance)} (in ${names}) ${statements.map(({ says }) => says).join("; it ")}`,
    hint: labelsDecide,
    sources: statements,
  };
}

function cautionsOfMaterial({ id, name }: HandledMaterial): readonly Caution[] {
  return materialHazards
    .filter(({ material }) => material === idKey(id))
    .map(({ statement }) => ({
      code: "raw-material",
      isLoud: false,
      message: `${name} ${statement.says}`,
      hint: labelsDecide,
      sources: [statement],
    }));
}

function cautionOfSilica(materials: readonly HandledMaterial[]): readonly Caution[] {
  if (!materials.some(({ analysis }) => (analysis.oxides.SiO2 ?? 0) >= trace)) return [];
  return [
    {
      code: "silica-dust",
      isLoud: false,
      message: `Dust of silica ${silicaDust.says}`,
      hint: "Weigh where the air is drawn off or wear a fitted dust mask, mix wet, wipe wet, and never sweep.",
      sources: [silicaDust],
    },
  ];
}

function cautionOfFumes(materials: readonly HandledMaterial[]): readonly Caution[] {
  const gases = fumeElements
    .map((element) => ({
      gas: fumes[element],
      from: materials.filter((material) => material.fumes.includes(element)),
    }))
    .filter(({ from }) => from.length > 0);
  if (gases.length === 0) return [];
  const told = gases.map(({ gas, from }) => `${gas} (from ${from.map((m) => m.name).join(", ")})`);
  return [
    {
      code: "kiln-fumes",
      isLoud: false,
      message: `In the kiln this recipe gives off ${told.join("; ")}`,
      hint: "Fire with the room aired as the kiln's manual and local rules ask, and stay out of the fumes.",
      sources: [fumesSource],
    },
  ];
}

const onlyTestsTell: Caution = {
  code: "only-tests-tell",
  isLoud: false,
  message:
    "A computed formula, or a limit that it keeps, is no evidence for food: only a leach test on the fired ware is",
  hint: "Ask a laboratory where the ware is to hold food or drink.",
  sources: [
    {
      source: "scope of ASTM C738; FDA Compliance Policy Guides 545.400 and 545.450",
      tag: "checked",
    },
  ],
};

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
