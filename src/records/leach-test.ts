/** What a laboratory found that fired ware gives off. */
import type * as z from "zod";
import { leachElements, leachMethods, leachUnits } from "../terms/choices.ts";
import * as f from "./fields.ts";

const figure = f.fields({
  element: f.required("What was looked for.", f.choiceOrOwnWords(leachElements)),
  amount: f.optional(
    "How much was found, as the report has it.",
    f.number("amount found", { from: 0 }),
  ),
  below: f.optional(
    "Instead of an amount: what the laboratory can measure, where it found less.",
    f.number("limit of measuring", { above: 0 }),
  ),
  unit: f.required("The unit of the report.", f.choiceOrOwnWords(leachUnits)),
});

const leachTest = f.fields({
  on: f.required("The day of the report.", f.day()),
  laboratory: f.required("Who tested.", f.text()),
  method: f.required("The method as the report names it.", f.choiceOrOwnWords(leachMethods)),
  ware: f.required(
    "What was tested: the piece, its clay, its coats, as in a mug of ferry-stoneware, two coats inside.",
    f.text(),
  ),
  fired: f.required("How it was fired: the firing’s id, or cone and atmosphere.", f.text()),
  found: f.required(
    "Each element that was looked for, with its figure and unit.",
    f.list(f.exactlyOneOf(figure, ["amount", "below"], "how much was found")),
  ),
  report: f.optional(
    "The report’s number, or where it can be read; shown as text and never opened.",
    f.text(),
  ),
});

/** Of a glaze or of a tile. */
export const leachTests = f.optional(
  "What a laboratory found; it holds for that ware from that firing, and lifts no caution.",
  f.list(leachTest),
);

export type LeachTest = z.output<typeof leachTest>;
