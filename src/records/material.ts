/** A raw material with its own formula or analysis. */
import type * as z from "zod";
import * as f from "./fields.ts";

const materialFields = f.fields({
  name: f.required("The name it is sold under or called by.", f.text()),
  formula: f.optional(
    "Its formula, with · or * between groups and . as the decimal point: K2O·Al2O3·6SiO2.",
    f.text(),
  ),
  analysis: f.optional(
    "Weight per cent of oxides, such as SiO2: 68.5, and what is lost in firing as loss: or LOI:.",
    f.mapOf(f.number("percentage by weight", { from: 0, to: 100 })),
  ),
  cautions: f.optional(
    "What its label and safety sheet warn of, in your own words; one or a list.",
    f.oneOrMany(f.text()),
  ),
  frit: f.optional(
    "yes for a frit or ground glass, which was melted before it was ground: its dust is no crystalline silica. Where left out, its name decides.",
    f.yesNo(),
  ),
  price: f.optional(
    "What a kilogram costs, in the studio's own currency.",
    f.number("price", { from: 0 }),
  ),
});

export const materialSchema = f.atMostOneOf(
  materialFields,
  ["formula", "analysis"],
  "what the material is made of",
);

export type MaterialRecord = z.output<typeof materialSchema>;
