/**
 * The steps of a coat stack: a coat of glaze, a fade between two, a resist, something taken off,
 * a firing. A step carries exactly one of the keys that name them.
 */
import type * as z from "zod";
import {
  type Area,
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  shelves,
  thicknesses,
  ways,
} from "../terms/choices.ts";
import * as f from "./fields.ts";
import { findNearest } from "./suggest.ts";

const place = {
  where: f.optional(
    "Which part of the tile: one or a list; all of it if left out.",
    f.oneOrMany(f.choice(areas)),
  ),
  detail: f.optional("Which part exactly, or how, in your own words.", f.text()),
};

const coating = {
  coats: f.optional("How many coats, one over the other.", f.wholeNumber("number of coats", 1, 50)),
  cover: f.optional(
    "How much is covered, for trailed, dotted and splattered layers instead of coats.",
    f.choice(covers),
  ),
  by: f.optional("How it was put on.", f.choice(ways)),
  ...place,
  thickness: f.optional("How thick it went on; usual if left out.", f.choice(thicknesses)),
  seconds: f.optional(
    "How long the tile was held in the glaze, in seconds.",
    f.number("number of seconds", { above: 0 }),
  ),
  gravity: f.optional(
    "The specific gravity of the glaze slop, such as 1.45.",
    f.number("specific gravity", { from: 1, to: 3 }),
  ),
  dried: f.optional("How dry the layer beneath was; touch-dry if left out.", f.choice(dryings)),
  over: f.optional(
    "Glazes beneath that this one laps over although their areas differ: their ids.",
    f.oneOrMany(f.reference("jar", "glaze")),
  ),
  "touch-up": f.optional(
    "yes for a repair: it is told, but is no part of pairs and coat counts.",
    f.yesNo(),
  ),
};

const glazeStep = f
  .fields({
    glaze: f.required(
      "An id of recipes/glazes, or the jar number that the set gives it.",
      f.reference("jar", "glaze"),
    ),
    ...coating,
  })
  .transform((layer) => ({ step: "glaze" as const, ...layer }));

const fadeEnds = f.fields({
  from: f.required(
    "The glaze at the beginning: an id or a jar number.",
    f.reference("jar", "glaze"),
  ),
  to: f.required("The glaze at the end: an id or a jar number.", f.reference("jar", "glaze")),
  along: f.optional("Which way it fades, such as “rim to centre”.", f.text()),
});

const fadeStep = f
  .fields({
    fade: f.required("Two glazes that run into each other.", fadeEnds),
    ...coating,
  })
  .transform((layer) => ({ step: "fade" as const, ...layer }));

const resistStep = f
  .fields({
    resist: f.required("What keeps the next coats off.", f.choice(resists)),
    ...place,
  })
  .transform((layer) => ({ step: "resist" as const, ...layer }));

const removeStep = f
  .fields({
    remove: f.required(
      "What was taken off, or how; all means that everything came off and the tile was begun again.",
      f.choice(removals),
    ),
    ...place,
  })
  .transform((layer) => ({ step: "remove" as const, ...layer }));

const firedStep = f
  .fields({
    fired: f.required(
      `The id of a firing, or only its kind (${kindsOfFiring.join(", ")}) where nothing more is known or it is yet to come.`,
      f.reference("kind of firing", "firing"),
    ),
    shelf: f.optional(
      "Where in the kiln it stood: top, middle, bottom or own words.",
      f.choiceOrOwnWords(shelves),
    ),
  })
  .transform((layer) => ({ step: "fired" as const, ...layer }));

export type GlazeStep = z.output<typeof glazeStep>;
export type FadeStep = z.output<typeof fadeStep>;
export type ResistStep = z.output<typeof resistStep>;
export type RemoveStep = z.output<typeof removeStep>;
export type FiredStep = z.output<typeof firedStep>;
export type Step = GlazeStep | FadeStep | ResistStep | RemoveStep | FiredStep;

/** Where on a tile: `all` alone, or one or more areas. */
export type Areas = readonly [Area, ...Area[]];

/** What a layer of glaze says of itself, with everything it leaves out filled in. */
export type Coating = Readonly<ReturnType<typeof coatingOf>>;

/** Null, or the usual, for what a layer leaves out. */
export function coatingOf(layer: GlazeStep | FadeStep) {
  return {
    along: layer.step === "fade" ? (layer.fade.along ?? null) : null,
    coats: layer.coats ?? null,
    cover: layer.cover ?? null,
    by: layer.by ?? null,
    ...placeOf(layer),
    thickness: layer.thickness ?? ("usual" as const),
    seconds: layer.seconds ?? null,
    gravity: layer.gravity ?? null,
    dried: layer.dried ?? ("touch-dry" as const),
    touchUp: layer.touchUp ?? false,
  };
}

/** Where a step was done: all over where it does not say. */
export function placeOf(
  step: Pick<GlazeStep | FadeStep | ResistStep | RemoveStep, "where" | "detail">,
) {
  return { where: areasOf(step.where), detail: step.detail ?? null };
}

/** `all` takes in every other area. */
function areasOf(where: readonly Area[] | undefined): Areas {
  const [first, ...rest] = new Set(where);
  if (first === undefined || first === "all" || rest.includes("all")) return ["all"];
  return [first, ...rest];
}

const forms = {
  glaze: glazeStep,
  fade: fadeStep,
  resist: resistStep,
  remove: removeStep,
  fired: firedStep,
} as const;

const stepKeys = Object.keys(forms) as (keyof typeof forms)[];

/** The schema of one step, chosen by the key that names it. */
export const step = f.oneForm<Step>(
  Object.values(forms) as z.ZodType<Step>[],
  (input): z.ZodType<Step> | f.FormFault => {
    if (typeof input !== "object" || input === null || Array.isArray(input))
      return stepWithoutName(input);
    const found = stepKeys.filter((key) => key in input);
    const [only] = found;
    if (only && found.length === 1) return forms[only] as z.ZodType<Step>;
    return found.length === 0 ? noStepKey(Object.keys(input)) : severalStepKeys(found);
  },
);

function stepWithoutName(input: unknown): f.FormFault {
  const word = typeof input === "string" ? input : undefined;
  return {
    code: "step-without-key",
    message:
      word === undefined
        ? "A list stands here, where a step says what was done"
        : `“${word}” alone does not say what was done`,
    hint:
      word === undefined
        ? "Write each step on a line of its own, as in “- glaze: soot”."
        : sayHow(word),
  };
}

/** What a word alone most likely was meant as. */
function sayHow(word: string): string {
  const knownAs = [
    ["fired", kindsOfFiring],
    ["resist", resists],
    ["remove", removals],
  ] as const;
  const key = knownAs.find(([, words]) => words.some((known) => known === word))?.[0] ?? "glaze";
  return `Write it on a line of its own as “- ${key}: ${word}”, or between brackets as “{${key}: ${word}}”.`;
}

function noStepKey(keys: readonly string[]): f.FormFault {
  const suggestion = keys.map((key) => findNearest(key, stepKeys)).find(Boolean);
  return {
    code: "step-without-key",
    message: `This step has none of ${stepKeys.join(", ")}, so it does not say what was done`,
    hint: suggestion
      ? `Did you mean “${suggestion}”?`
      : "Begin the step with what was done, for example “- glaze: soot”.",
  };
}

function severalStepKeys(found: readonly string[]): f.FormFault {
  return {
    code: "step-with-two-keys",
    message: `This step is ${found.join(" and ")} at once`,
    hint: "Write one step for each, in the order they were done.",
  };
}
