/** What a glaze may never be shown without: poisons, and much of a metal that leaches. */
import {
  amountFired,
  amountIn,
  formatHeld,
  isWhollyRead,
  substancesIn,
  type WeighedIngredient,
} from "./amounts.ts";
import type { Caution } from "./caution.ts";
import type { Ingredient } from "./ingredients.ts";
import { commonPractice, type Source } from "./statement.ts";
import type { Substance } from "./substances.ts";
import { listed, namesOf } from "./words.ts";

/** Per cent of a material from which a poison in it is no trace any more. */
const noTrace = 0.1;

const traceSource: Source = {
  source: "Regulation (EC) 1272/2008, Annex I, table 3.7.2, note 1, for 0.1 per cent in a material",
  tag: "checked",
};

const keepFromFood =
  "Keep the ware from food and drink, and the powder and slop from hands, lungs and children. Labels, local rules and a laboratory decide what may be done with it.";

/** @param batch null where nobody knows how much of each */
export function cautionsOfPoisons(
  ingredients: readonly Ingredient[],
  batch: readonly WeighedIngredient[] | null,
): readonly Caution[] {
  return substancesIn(ingredients)
    .filter(({ isPoison }) => isPoison)
    .flatMap((substance) => {
      const holding = ingredients.filter((it) => amountIn(it, substance) !== 0);
      const isTrace = holding.every((it) => (amountIn(it, substance) ?? noTrace) < noTrace);
      return [isTrace ? traceOf(substance, holding) : poison(substance, holding, batch)];
    });
}

function poison(
  substance: Substance,
  holding: readonly Ingredient[],
  batch: readonly WeighedIngredient[] | null,
): Caution {
  const { name, statements } = substance;
  const isOnlySaid = holding.every(({ spoken }) => spoken.includes(substance.element));
  return {
    code: "poison",
    about: name,
    isLoud: true,
    inShort: isOnlySaid ? `may hold ${name}` : `holds ${name}`,
    message: toldOf(substance, holding, batch, isOnlySaid),
    hint: keepFromFood,
    sources: statements,
  };
}

function toldOf(
  substance: Substance,
  holding: readonly Ingredient[],
  batch: readonly WeighedIngredient[] | null,
  isOnlySaid: boolean,
): string {
  const { name } = substance;
  if (isOnlySaid)
    return `There may be ${name} in it: ${namesOf(holding)} is named after it, and nobody has written down what that is made of`;
  const isMeasured = holding.every((it) => amountIn(it, substance) !== null);
  if (batch && isMeasured) return `This glaze holds ${name}: ${perCent(batch, substance)}`;
  return `There is ${name} in it, from ${namesOf(holding)}`;
}

function traceOf(substance: Substance, holding: readonly Ingredient[]): Caution {
  const told = holding.map(
    (it) => `${formatHeld(amountIn(it, substance) ?? 0)} per cent of ${it.name}`,
  );
  return {
    code: "trace",
    about: substance.name,
    isLoud: false,
    inShort: `a trace of ${substance.name}`,
    message: `There is a trace of ${substance.name} in it: ${told.join(", ")}`,
    hint: "A trace can matter in ware for food: a leach test tells.",
    sources: [traceSource],
  };
}

/** `6 per cent of what is fired, as CuO` */
function perCent(batch: readonly WeighedIngredient[], substance: Substance): string {
  const { oxide } = substance;
  const amount = formatHeld(amountFired(batch, substance));
  const about = isWhollyRead(batch) ? "" : "about ";
  const asOxide = oxide === null ? "" : `, as ${oxide}`;
  const asRead = isWhollyRead(batch) ? "" : ", by what can be read of its materials";
  return `${about}${amount} per cent of what is fired${asOxide}${asRead}`;
}

interface Load {
  readonly substance: Substance;
  /** How much of the amount that often leaches; 1 is all of it. */
  readonly share: number;
}

/**
 * Metals of which there is so much that the glaze may not hold them: each by itself, and several
 * together where their shares of what each may be add to a whole.
 *
 * @param subject what holds them, as a sentence begins: `This glaze`
 */
export function cautionsOfLoads(
  subject: string,
  batch: readonly WeighedIngredient[],
): readonly Caution[] {
  const held = substancesIn(batch.map(({ ingredient }) => ingredient));
  const loads = held.flatMap((substance): Load[] => {
    const { leachesFrom } = substance;
    if (leachesFrom === null) return [];
    const share = amountFired(batch, substance) / leachesFrom;
    return share > 0 ? [{ substance, share }] : [];
  });
  const heavy = loads.filter(({ share }) => share >= 1);
  const light = loads.filter(({ share }) => share >= lightestShare && share < 1);
  const sum = light.reduce((total, { share }) => total + share, 0);
  return [
    ...heavy.map(({ substance }) => much(subject, batch, [substance])),
    ...(sum >= 1
      ? [
          much(
            subject,
            batch,
            light.map(({ substance }) => substance),
          ),
        ]
      : []),
  ];
}

/** Shares too small to be named in a sum. */
const lightestShare = 0.05;

function much(
  subject: string,
  batch: readonly WeighedIngredient[],
  held: readonly Substance[],
): Caution {
  const names = listed(held.map(({ name }) => name));
  const told = held.map((it) =>
    held.length === 1 ? perCent(batch, it) : `${it.name} ${perCent(batch, it)}`,
  );
  return {
    code: "heavy-load",
    about: names,
    isLoud: true,
    inShort: `holds much ${names}`,
    message: `${subject} holds much ${names}${held.length > 1 ? " together" : ""}: ${told.join("; ")}`,
    hint: "A glaze may not hold so much of it against acids: keep it from surfaces that touch food or drink unless a laboratory has tested the fired ware.",
    sources: [{ ...commonPractice, source: "common practice, no source, for the amount" }],
  };
}
