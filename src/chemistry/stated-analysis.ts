/** Analyses as a supplier's sheet or a laboratory states them: oxides by weight, and the loss. */
import type { Element } from "../terms/atomic-weights.ts";
import { isOxide, type Oxide, oxideAmounts, presentOxides } from "../terms/oxides.ts";
import {
  type Analysis,
  analyseFormula,
  burnsOff,
  firedOxides,
  oxygenReplacedBy,
} from "./analysis.ts";
import { parseFormula } from "./formula.ts";
import { formatAmount, type Note } from "./notes.ts";
import { sumOfOxides } from "./oxide-sums.ts";

/** Weight per cent by oxide as somebody wrote it; what is lost in the fire stands under `loss`. */
export type StatedAnalysis = Readonly<Record<string, number>>;

export type StatedReading =
  | { readonly ok: true; readonly analysis: Analysis; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly problem: StatedProblem };

/** A line of a stated analysis that is no oxide. */
export interface StatedProblem {
  readonly key: string;
  readonly message: string;
  readonly hint: string;
}

/** What one line of a stated analysis comes to. */
interface Share {
  readonly analysis: Analysis;
  /** Per cent of the raw weight in oxides that no glaze is stated in. */
  readonly uncounted: number;
  readonly note?: Note;
}

/** Sheets print it as loss or as LOI, for loss on ignition. */
export const isLoss = (key: string) => /^(?:loss|l\.?o\.?i\.?)$/iu.test(key);

/**
 * Reads an analysis as it was stated. Iron given as FeO is restated as Fe2O3, cobalt as CoO and
 * so on; what it says of gases (SO3, CO2, H2O) is counted as loss; oxides that no glaze is
 * stated in are left out; whatever is done is said in a note. Nothing is scaled to 100.
 *
 * @returns the analysis and what there is to say of it, or the line that is no oxide
 */
export function readStatedAnalysis(stated: StatedAnalysis): StatedReading {
  const shares: Share[] = [];
  for (const [key, amount] of Object.entries(stated)) {
    if (isLoss(key)) continue;
    const share = readShare(key, amount);
    if (share === undefined) return { ok: false, problem: noOxide(key) };
    shares.push(share);
  }
  const [loss, second] = Object.entries(stated).filter(([key]) => isLoss(key));
  if (second) return { ok: false, problem: secondLoss(second[0]) };
  return { ok: true, ...addUp(shares, loss?.[1]) };
}

function addUp(shares: readonly Share[], statedLoss: number | undefined) {
  const sum = (amountOf: (share: Share) => number) =>
    shares.reduce((total, share) => total + amountOf(share), 0);
  const oxides = oxideAmounts((oxide) => sum((share) => share.analysis.oxides[oxide] ?? 0));
  const fluorine = sum((share) => share.analysis.fluorine);
  const gases = sum((share) => share.analysis.loss);
  const found =
    sumOfOxides(oxides) +
    fluorine -
    oxygenReplacedBy(fluorine) +
    gases +
    sum((share) => share.uncounted);
  const rest = Math.max(0, 100 - found);
  const remarks = [
    ...shares.map((share) => share.note),
    statedLoss === undefined ? remarkOnRest(rest) : undefined,
    remarkOnSum(found + (statedLoss ?? rest)),
  ];
  const analysis: Analysis = { oxides, loss: gases + (statedLoss ?? rest), fluorine };
  return { analysis, notes: remarks.filter((note) => note !== undefined) };
}

function remarkOnRest(rest: number): Note | undefined {
  const perCent = formatAmount(rest);
  if (perCent === "0") return undefined;
  return {
    code: "loss-taken-as-rest",
    message: `No loss is given: the ${perCent} per cent that the oxides leave open is counted as lost in the fire`,
  };
}

/** How far from 100 an analysis may add up before it is remarked on, in per cent. */
const sumTolerance = 1;

function remarkOnSum(total: number): Note | undefined {
  if (Math.abs(total - 100) <= sumTolerance) return undefined;
  return {
    code: "analysis-sum",
    message: `The oxides and the loss add to ${formatAmount(total)} per cent, not 100: they are used as written`,
  };
}

/** Undefined where the key is no oxide, no gas and no fluorine. */
function readShare(key: string, amount: number): Share | undefined {
  if (key === "F") return { analysis: { oxides: {}, loss: 0, fluorine: amount }, uncounted: 0 };
  if (isOxide(key) && key !== "FeO") return ofOxide(key, amount);
  const element = findElementOfOxide(key);
  if (element === undefined) return undefined;
  if (burnsOff.has(element)) return gas(key, amount);
  return firedOxides.has(element) ? restated(key, amount) : uncounted(key, amount, element);
}

/** The one element beside oxygen; sulphur and chlorine may also be given by themselves. */
function findElementOfOxide(key: string): Element | undefined {
  const reading = parseFormula(key);
  if (!reading.ok) return undefined;
  const elements = Object.keys(reading.formula.elements) as Element[];
  const [element, ...others] = elements.filter((el) => el !== "O");
  if (element === undefined || others.length > 0) return undefined;
  const isWhole = elements.length === 2 || element === "S" || element === "Cl";
  return isWhole && reading.formula.balanced ? element : undefined;
}

function gas(key: string, amount: number): Share {
  const message = `${key} ${amount} is counted as loss`;
  return {
    analysis: { oxides: {}, loss: amount, fluorine: 0 },
    uncounted: 0,
    note: { code: "counted-as-loss", message },
  };
}

function ofOxide(oxide: Oxide, amount: number): Share {
  return { analysis: { oxides: { [oxide]: amount }, loss: 0, fluorine: 0 }, uncounted: 0 };
}

function restated(key: string, amount: number): Share | undefined {
  const reading = analyseFormula(key);
  if (!reading.ok) return undefined;
  const of = (perCent: number) => (perCent * amount) / 100;
  const { analysis } = reading;
  const [oxide, perCent] = presentOxides(analysis.oxides)[0] ?? [];
  if (oxide === undefined || perCent === undefined) return undefined;
  const message = `${key} ${amount} is stated as ${oxide} ${formatAmount(of(perCent))}, as it is when fired`;
  return {
    analysis: { oxides: { [oxide]: of(perCent) }, loss: of(analysis.loss), fluorine: 0 },
    uncounted: 0,
    note: { code: "restated", message },
  };
}

function uncounted(key: string, amount: number, element: Element): Share {
  const message = `${key} ${amount} is left out: Tilebook counts no oxide of ${element}`;
  return {
    analysis: { oxides: {}, loss: 0, fluorine: 0 },
    uncounted: amount,
    note: { code: "oxide-not-counted", message },
  };
}

function secondLoss(key: string): StatedProblem {
  return {
    key,
    message: `“${key}” is a second line for the loss`,
    hint: "Keep one of them: loss and LOI are the same.",
  };
}

function noOxide(key: string): StatedProblem {
  return {
    key,
    message: `“${key}” is no oxide`,
    hint: key.includes("0")
      ? "Write oxygen with the letter O, not with a zero."
      : "Write oxides by their formula, SiO2 or Al2O3, fluorine as F, and what is lost in the fire as loss or LOI.",
  };
}
