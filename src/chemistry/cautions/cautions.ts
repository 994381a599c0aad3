/** What to mind with a recipe: in the bag, in the kiln, and on the table. */
import { compareIds } from "../../terms/ids.ts";
import type { WeighedIngredient } from "./amounts.ts";
import { type Caution, inOrder } from "./caution.ts";
import { cautionsOfHandling } from "./handling-cautions.ts";
import type { Ingredient } from "./ingredients.ts";
import { cautionsOfLoads, cautionsOfPoisons } from "./loud-cautions.ts";

export type { Caution };

/** What a glaze is mixed of, as far as somebody wrote it down. */
export interface Mixture {
  readonly ingredients: readonly Ingredient[];
  /** The same weighed out, additions included; null where nobody knows how much of each. */
  readonly batch: readonly WeighedIngredient[] | null;
}

/** The cautions for a glaze of known materials, the loud ones first. */
export function cautionsOfMixture({ ingredients, batch }: Mixture): readonly Caution[] {
  const sorted = sortById(ingredients);
  return inOrder([
    ...cautionsOfPoisons(sorted, batch),
    ...(batch ? cautionsOfLoads("This glaze", batch) : []),
    ...cautionsOfHandling(sorted),
    ...ownCautions(sorted),
    ...sorted.flatMap(notKnown),
    ...(ingredients.length > 0 ? [onlyTestsTell] : []),
  ]);
}

/** The cautions for a material by itself, but for what its own record says. */
export function cautionsOfMaterial(ingredient: Ingredient): readonly Caution[] {
  return inOrder([
    ...cautionsOfPoisons([ingredient], null),
    ...cautionsOfHandling([ingredient]),
    ...notKnown(ingredient),
  ]);
}

/** So that a recipe says the same in whichever order it is written. */
function sortById(ingredients: readonly Ingredient[]): readonly Ingredient[] {
  const firstOfEach = new Map(ingredients.map((it) => [it.id, it]));
  return [...firstOfEach.values()].sort((a, b) => compareIds(a.id, b.id));
}

/** What the studio wrote of a material goes wherever the material goes. */
function ownCautions(ingredients: readonly Ingredient[]): readonly Caution[] {
  return ingredients.flatMap(({ name, cautions }) =>
    cautions.map((words): Caution => {
      const told = `${name}: ${words.replace(/\.+$/u, "")}`;
      return {
        code: "own-caution",
        about: name,
        isLoud: false,
        inShort: told,
        message: told,
        hint: "",
        sources: [{ source: `the studio’s record of ${name}`, tag: "checked" }],
      };
    }),
  );
}

/** What could not be read is told, so that a short list is not taken for a whole one. */
function notKnown({ name, contents }: Ingredient): readonly Caution[] {
  const { unread, isWhole } = contents;
  if (isWhole) return [];
  const told =
    unread.length > 0
      ? `“${unread.join("”, “")}” of ${name} cannot be read, and may harm in ways that are not told here`
      : `What ${name} is made of is not written down, so this archive cannot say how it may harm`;
  return [
    {
      code: "not-known",
      about: `what is in ${name}`,
      isLoud: false,
      inShort: `not all is known of ${name}`,
      message: told,
      hint: "Read its label and its safety sheet.",
      sources: [{ source: `the studio’s record of ${name}`, tag: "checked" }],
    },
  ];
}

const onlyTestsTell: Caution = {
  code: "only-tests-tell",
  about: "food",
  isLoud: false,
  inShort: "for food, only a leach test counts",
  message:
    "A computed formula, or a limit that it keeps, is no evidence for food: only a leach test on the fired ware is",
  hint: "Ask a laboratory where the ware is to hold food or drink. The usual tests are for lead and cadmium alone: name the other metals that the glaze holds.",
  sources: [
    {
      source:
        "scope of ASTM C738 and of ISO 6486-1:2019; FDA Compliance Policy Guides 545.400 and 545.450",
      tag: "checked",
    },
  ],
};
