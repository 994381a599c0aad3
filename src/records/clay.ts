/** A clay body. */
import type * as z from "zod";
import { shades } from "../terms/choices.ts";
import * as f from "./fields.ts";

const between = () => f.numberPair("temperature in °C");

const expansionWithRange = f.fields({
  mean: f.required(
    "Mean linear expansion, in millionths per kelvin.",
    f.number("expansion in millionths per kelvin", { above: 0, to: 100 }),
  ),
  between: f.optional("The temperatures it was measured between, in °C.", between()),
});

type Expansion = z.output<typeof expansionWithRange>;

const expansionAlone = f
  .number("expansion in millionths per kelvin", { above: 0, to: 100 })
  .transform((mean): Expansion => ({ mean, between: undefined }));

export const claySchema = f
  .fields({
    name: f.required("The name people call it by.", f.text()),
    cones: f.optional("The cone or range of cones that it is for.", f.coneRange()),
    colour: f.optional("Its colour when fired, in a word or two.", f.text()),
    shade: f.optional(
      "What it looks like fired, where its colour does not say: white for porcelain and pale clays, dark for brown, red and black ones.",
      f.choice(shades),
    ),
    expansion: f.optional(
      "Mean linear expansion, in millionths per kelvin, where known.",
      f.scalarOrMap<Expansion>(expansionAlone, expansionWithRange),
    ),
    between: f.optional(
      "The temperatures the expansion was measured between, in °C, such as [20, 500].",
      between(),
    ),
    absorption: f.optional(
      "How much water the fired clay takes up, in per cent of its weight.",
      f.number("percentage", { from: 0, to: 100 }),
    ),
    reclaim: f.optional(
      "yes for reclaimed clay of unknown mixture: it counts as the lowest-firing clay of the studio.",
      f.yesNo(),
    ),
  })
  .transform(({ between: range, expansion, ...clay }) => ({
    ...clay,
    expansion: expansion && { ...expansion, between: expansion.between ?? range },
  }));

export type ClayRecord = z.output<typeof claySchema>;
