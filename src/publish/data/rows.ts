/**
 * The rows of the data files. Every field is always there, null or an empty list where there is
 * nothing to say, and each is explained where it is declared: the JSON Schemas are written from
 * these words.
 */
import * as z from "zod";
import { differences } from "../../catalogue/apart.ts";
import { amount, cones, id, ids, maybe, name, url, words } from "./row-fields.ts";

const layer = z.strictObject({
  step: z.enum(["coat", "resist", "remove", "fired"]).describe("What kind of step it is."),
  glazes: ids("the glaze, or of the two that fade into each other"),
  along: maybe("Which way a fade runs."),
  coats: amount("How many coats; null where nobody wrote it down."),
  cover: maybe("sparse, medium or dense, instead of coats."),
  by: maybe("How it was put on."),
  where: words("The parts of the tile."),
  detail: maybe("Which part or how, in the maker's words."),
  thickness: maybe("thin, usual or thick."),
  seconds: amount("Seconds of dipping."),
  gravity: amount("Specific gravity of the slop."),
  dried: maybe("How dry the layer beneath was."),
  over: ids("glazes that it laps over though their areas differ"),
  touchUp: z.boolean().describe("A repair: left out of pairs and coat counts."),
  resist: maybe("What kept the next coats off."),
  remove: maybe("What was taken off, or how."),
  kind: maybe("Of a firing: its kind."),
  firing: maybe("Of a firing: its id, where known."),
  shelf: maybe("Of a firing: where the tile stood."),
});

/** A layer of which nothing is said yet. */
export const emptyLayer: Omit<z.infer<typeof layer>, "step"> = {
  glazes: [],
  along: null,
  coats: null,
  cover: null,
  by: null,
  where: [],
  detail: null,
  thickness: null,
  seconds: null,
  gravity: null,
  dried: null,
  over: [],
  touchUp: false,
  resist: null,
  remove: null,
  kind: null,
  firing: null,
  shelf: null,
};

const colour = z
  .strictObject({
    hex: z.string().describe("sRGB."),
    lab: z.tuple([z.number(), z.number(), z.number()]).describe("CIELAB under D65."),
    spread: z
      .number()
      .describe("How lively the glaze is: the mean colour difference from the mean, in CIEDE2000."),
    palette: z.array(
      z.strictObject({
        hex: z.string().describe("sRGB."),
        share: z.number().describe("How much of the glaze has it, from 0 to 1."),
      }),
    ),
  })
  .nullable()
  .describe("What was measured on the photograph.");

const leachTest = z.strictObject({
  on: z.string().describe("The day of the report."),
  laboratory: z.string().describe("Who tested."),
  method: z.string().describe("As the report names it."),
  ware: z.string().describe("What was tested."),
  fired: z.string().describe("How it was fired."),
  found: z.array(
    z.strictObject({
      element: z.string().describe("What was looked for."),
      amount: amount("Null where less came off than could be measured."),
      below: amount("What could be measured, where less came off; else null."),
      unit: z.string().describe("The unit of the report."),
    }),
  ),
  report: maybe("Its number, or where it can be read."),
});
const leachTests = z
  .array(leachTest)
  .describe("What laboratories found: of that ware from that firing alone. It lifts no caution.");

const oneChange = z.strictObject({
  tile: z.string().describe("The code of the other tile."),
  difference: z.enum(differences).describe("What differs; none where nothing does."),
  deltaE00: amount("Between the two colours; null where one was not measured."),
  uncontrolled: words("What else differs, and what neither says: `cooling unknown`."),
});

export const tileRow = z.strictObject({
  id,
  url,
  set: maybe("The id of its set."),
  maker: maybe("The maker's name, as far as it may be shown."),
  glazed: maybe("The day the first layer went on."),
  stage: z
    .enum(["waiting", "fired", "recorded", "lost"])
    .describe("Waiting for its fire, fired, recorded (it has a result), or lost (it has a fate)."),
  clay: maybe("The id of its clay."),
  texture: z.string().describe("Of the clay, before any glaze."),
  shape: z.string().describe("The shape of the test."),
  angle: amount("How steeply it stood, in degrees from lying flat."),
  cone: maybe("Of the hottest firing that is no bisque."),
  atmosphere: maybe("Of the same firing."),
  surface: words("How the surface came out."),
  effects: words("What the glaze does."),
  faults: words("What went wrong."),
  run: amount(
    "The most millimetres that anybody saw the glaze move; null where nobody measured. It compares with tiles of the same shape and angle alone.",
  ),
  again: maybe("yes, changed or no."),
  layers: z.array(layer).describe("The coat stack, bottom first."),
  colour,
  leachTests,
  oneChange: z.array(oneChange).describe("Tiles that differ in one thing."),
  cautions: words("Loud cautions and practice notes, then in short what to mind with each glaze."),
});

const amounts = (what: string) => z.record(z.string(), z.number()).describe(what);

const expansion = z.strictObject({
  model: z
    .enum(["appen", "english-turner", "winkelmann-schott", "mayer-havas"])
    .describe("Whose factors it is reckoned with."),
  perKelvin: amount(
    "Mean linear expansion, as in 6.1e-6; null where the set does not cover the glaze.",
  ),
  doubt: amount("How far it may be off on a glaze, per kelvin; null without a figure."),
  between: z.tuple([z.number(), z.number()]).nullable().describe("In °C."),
  outside: words("Oxides outside the set's limits or without a factor."),
});

const chemistry = z
  .strictObject({
    weightPercent: amounts("Fired oxides by weight, adding to 100."),
    molePercent: amounts("Fired oxides by moles, adding to 100."),
    unity: amounts("Moles for one mole of fluxes.").nullable(),
    lossOnIgnition: z.number().describe("Per cent of the raw weight, additions included."),
    silicaToAlumina: amount("Moles for moles; null without alumina."),
    alkaliShare: amount("The share of Li2O, Na2O and K2O among the fluxes, by moles."),
    expansion: z.array(expansion),
    typical: ids(
      "its materials whose figures are a typical analysis, not that of the bag: the chemistry rests on them",
    ),
  })
  .nullable()
  .describe("Null for a bought glaze and where a material is unknown.");

const alone = z.strictObject({
  tile: z.string().describe("The code of the tile."),
  clay: maybe("The id of its clay."),
  cone: maybe("Of the hottest firing that is no bisque."),
  atmosphere: maybe("Of the same firing."),
  coats: amount("Null where they were not counted, or do not lie evenly all over."),
  hex: z.string().describe("sRGB."),
  lab: z.tuple([z.number(), z.number(), z.number()]).describe("CIELAB under D65."),
  name: z.string().describe("A plain name for the colour."),
});

export const glazeRow = z.strictObject({
  id,
  url,
  name,
  kind: z.string().describe("glaze, onglaze, oxide-wash, slip or underglaze."),
  tiles: ids("the tiles it is on"),
  over: ids("glazes it lay over"),
  under: ids("glazes that lay over it"),
  alone: z.array(alone).describe("What was measured on tiles that have no other glaze."),
  chemistry,
  leachTests,
  cautions: words("What to mind with it, the loud ones first; they go wherever it goes."),
});

const equivalentCone = z.strictObject({
  cone: maybe("The hottest cone that is down; null where not even the coolest is."),
  next: maybe("The next hotter cone; null above the hottest."),
  fraction: z.number().min(0).max(1).describe("How far towards the next, from 0 to 1."),
});

const heat = z
  .strictObject({
    equivalentCone: equivalentCone.describe(
      "The heat work as a cone, by the model alone: from the log or, without one, from the schedule. How far it may be off is in equivalentConeRange.",
    ),
    equivalentConeRange: z
      .strictObject({
        low: equivalentCone.describe("The least that it may have been."),
        high: equivalentCone.nullable().describe("The most; null where that end is open."),
      })
      .describe(
        "All that the heat work may have been: the doubt of the cone chart and, after a hold, every published rule and common practice for what a hold does.",
      ),
    peak: z.number().describe("The highest temperature, in °C."),
    lastRate: amount("Degrees Celsius an hour over the last 100 °C; null where not known."),
    hold: z.number().describe("Minutes within 10 °C of the peak, climbing and falling left out."),
    coolingRate: amount("Degrees Celsius an hour from 1100 to 900 °C; null where not known."),
    agreement: z
      .enum(["agrees", "differs"])
      .nullable()
      .describe(
        "Whether all there is of aim, programme, log and witness cones lies within a cone; null where there are no two of them.",
      ),
  })
  .nullable()
  .describe("Null without a schedule or a log that can be reckoned with.");

export const firingRow = z.strictObject({
  id,
  url,
  on: maybe("The day the kiln was lit."),
  kind: z.string().describe("bisque, glaze, onglaze, once or raku."),
  kiln: maybe("The kiln's name."),
  cone: maybe("The cone that was aimed at."),
  atmosphere: maybe("The air in the kiln."),
  witness: z.record(z.string(), z.string().nullable()).describe("The cone reached, by shelf."),
  tiles: ids("the tiles in it"),
  heat,
});

export const clayRow = z.strictObject({
  id,
  url,
  name,
  cones,
  colour: maybe("Its colour when fired."),
  expansion: amount("Mean linear expansion per kelvin, as in 6.1e-6."),
  between: z.tuple([z.number(), z.number()]).nullable().describe("Measured between, in °C."),
  absorption: amount("Per cent of its weight."),
  reclaim: z.boolean().describe("True for clay made of what was left over."),
  tiles: ids("the tiles made of it"),
});

export const materialRow = z.strictObject({
  id,
  url,
  name,
  formula: maybe("Its formula."),
  analysis: amounts("Weight per cent of oxides, with loss.").nullable(),
  builtIn: z.boolean().describe("True for a material that Tilebook carries."),
  basis: z
    .enum(["analysis", "formula", "theoretical", "typical"])
    .nullable()
    .describe(
      "What its figures rest on: the studio's analysis or formula, the pure mineral, or one typical analysis.",
    ),
  glazes: ids("glazes that hold it"),
  cautions: words("What the studio wrote of its dangers, then what is published of them."),
});

export const setRow = z.strictObject({
  id,
  url,
  name,
  kind: maybe("class, series or term."),
  begins: maybe("Its first day."),
  ends: maybe("Its last day."),
  control: maybe("The code of its control tile."),
  tiles: ids("its tiles"),
});

export const pairRow = z.strictObject({
  id,
  url,
  over: z.string().describe("The id of the glaze on top."),
  under: z.string().describe("The id of the glaze beneath."),
  tiles: ids("tiles with this pair"),
  reverse: maybe("The id of the same two the other way round; null where no tile has them so."),
  swaps: z
    .array(
      z.strictObject({
        tile: z.string().describe("A tile with this pair."),
        other: z.string().describe("One with the reverse."),
        deltaE00: amount("Between the two colours; null where one was not measured."),
        uncontrolled: words("What else differs, and what neither says: `cooling unknown`."),
      }),
    )
    .describe("Tiles of both orders that differ in the order alone."),
});

export type TileRow = z.infer<typeof tileRow>;
export type GlazeRow = z.infer<typeof glazeRow>;
export type FiringRow = z.infer<typeof firingRow>;
export type ClayRow = z.infer<typeof clayRow>;
export type MaterialRow = z.infer<typeof materialRow>;
export type SetRow = z.infer<typeof setRow>;
export type PairRow = z.infer<typeof pairRow>;
