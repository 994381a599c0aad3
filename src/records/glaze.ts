/** A glaze: any coating, bought in a jar or mixed in the studio. */
import type * as z from "zod";
import {
  kindsOfGlaze,
  labelClaims,
  movements,
  opacities,
  surfaces,
  tones,
} from "../terms/choices.ts";
import * as f from "./fields.ts";
import { leachTests } from "./leach-test.ts";

const ingredient = f.fields({
  material: f.required("The id of a material.", f.reference("material")),
  parts: f.required("Parts by weight.", f.parts()),
});

const blendPart = f.fields({
  glaze: f.required("The id of a glaze that was mixed in.", f.reference("glaze")),
  parts: f.required("Parts of it.", f.parts()),
});

const bought = f.fields({
  maker: f.required("Who makes it.", f.text()),
  range: f.optional("The range it belongs to.", f.text()),
  colour: f.optional("Its name or number on the jar.", f.text()),
});

const glazeFields = f.fields({
  name: f.required("The name people call it by.", f.text()),
  kind: f.required("What kind of coating it is.", f.choice(kindsOfGlaze)),
  bought: f.optional("Whose product it is, for a glaze that was bought.", bought),
  ingredients: f.optional(
    "What it is weighed out of; parts need not add to 100.",
    f.list(ingredient),
  ),
  additions: f.optional("What is added per 100 parts of the ingredients.", f.list(ingredient)),
  blend: f.optional("The glazes it is mixed from, by dry weight.", f.list(blendPart)),
  by: f.optional(
    "volume, where jars were mixed by the spoon: then there is no chemistry. weight if left out.",
    f.choice(["volume", "weight"]),
  ),
  cones: f.optional("The cone or range of cones that it is for.", f.coneRange()),
  surface: f.optional("The surface it is meant to have.", f.choice(surfaces)),
  cover: f.optional("How much it hides what lies beneath.", f.choice(opacities)),
  moves: f.optional("How far it moves in the kiln.", f.choice(movements)),
  tone: f.optional("How dark it is, fired alone.", f.choice(tones)),
  label: f.optional(
    "What the label on the jar says of it, as the label's word.",
    f.oneOrMany(f.choice(labelClaims)),
  ),
  "leach-tests": leachTests,
  stocked: f.optional("Whether the studio keeps it; yes if left out.", f.yesNo()),
  listed: f.optional(
    "yes to show it although only unlisted sets use it, no to hold it back while no listed tile has it; if left out it is shown unless only unlisted sets use it.",
    f.yesNo(),
  ),
  "weight-per-coat": f.optional(
    "How much one coat leaves behind, relative to other glazes, where known.",
    f.number("relative weight", { above: 0 }),
  ),
});

const origins = ["bought", "ingredients", "blend"] as const;

export const glazeSchema = f.exactlyOneOf(glazeFields, origins, "where the glaze comes from");

export type GlazeRecord = z.output<typeof glazeSchema>;
export type Ingredient = z.output<typeof ingredient>;
export type BlendPart = z.output<typeof blendPart>;
