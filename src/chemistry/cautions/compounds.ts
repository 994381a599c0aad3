/** What is said of metals that harm in one compound and not, or less, in another. */
import { formOf, oxidationState } from "./forms.ts";
import type { Ingredient } from "./ingredients.ts";
import { cancer, checked, practised, type Statement } from "./statement.ts";

/** A statement, and which materials it is true of; of all where nothing is said. */
export interface HazardStatement extends Statement {
  readonly when?: (ingredient: Ingredient) => boolean;
}

export const highlyToxic = checked(
  "is listed as highly toxic to breathe in as a raw material",
  "Western Carolina University, Ceramics safety",
);

export const hurtsSkin = checked(
  "can cause eczema where it touches the skin",
  "Haz-Map, Ceramics making",
);

function where(when: (ingredient: Ingredient) => boolean, statement: Statement): HazardStatement {
  return { ...statement, when };
}

const isUnbound = (element: "Ba" | "Li") => (ingredient: Ingredient) =>
  formOf(ingredient, element) !== "bound";

export const lithium: readonly HazardStatement[] = [
  where(isUnbound("Li"), highlyToxic),
  where(
    isUnbound("Li"),
    checked(
      "hurts eyes and skin, and makes drowsy and sick when swallowed",
      "International Chemical Safety Card 1109, lithium carbonate",
    ),
  ),
];

export const barium: readonly HazardStatement[] = [
  where(isUnbound("Ba"), highlyToxic),
  where(
    isUnbound("Ba"),
    checked(
      "is poisonous to swallow where it dissolves in the stomach, as the carbonate does: it weakens the muscles and upsets the heart",
      "ATSDR, Medical management guidelines for barium",
    ),
  ),
  where(isUnbound("Ba"), practised("can leach from a fired glaze that has not bound it")),
];

/** By its valency: what is oxidised to Sb2O5 or an antimonate could not be classed. */
export const antimony: readonly HazardStatement[] = [
  highlyToxic,
  where(
    (ingredient) => (oxidationState(ingredient, "Sb") ?? 3) < 4,
    cancer("is probably carcinogenic as trivalent antimony (group 2A)", "131"),
  ),
];

function atomsOf({ contents }: Ingredient) {
  return contents.formula?.atoms ?? {};
}

const isCobaltMonoxide = (ingredient: Ingredient) => {
  const { Co, O, ...others } = atomsOf(ingredient);
  return Co !== undefined && Co === O && Object.keys(others).length === 0;
};

const isCobaltSalt = (ingredient: Ingredient) => {
  const { Co, Cl, N, S } = atomsOf(ingredient);
  return Co !== undefined && Boolean(Cl || N || S);
};

const isCobaltCarbonate = (ingredient: Ingredient) => {
  const { Co, C } = atomsOf(ingredient);
  return Co !== undefined && C !== undefined;
};

/** Each compound has a group of its own. */
export const cobalt: readonly HazardStatement[] = [
  highlyToxic,
  hurtsSkin,
  where(isCobaltMonoxide, cancer("is possibly carcinogenic as the oxide CoO (group 2B)", "131")),
  where(isCobaltSalt, cancer("is probably carcinogenic as a soluble salt (group 2A)", "131")),
  where(
    isCobaltCarbonate,
    checked(
      "is classed in the European Union, as the carbonate, as able to cause cancer and asthma when breathed in",
      "Regulation (EC) 1272/2008, Annex VI, cobalt carbonate",
    ),
  ),
  where(
    ({ contents }) => contents.formula === null,
    cancer(
      "is classed by its compound: soluble salts as probably carcinogenic (group 2A), the oxide CoO as possibly so (group 2B)",
      "131",
    ),
  ),
];
