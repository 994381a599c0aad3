/** One kiln load: what was aimed at, what the cones showed, what stood in it. */
import type * as z from "zod";
import { atmospheres, heatSources, kindsOfFiring } from "../terms/choices.ts";
import type { Cone } from "../terms/cones.ts";
import { longestList } from "../terms/limits.ts";
import * as f from "./fields.ts";

/** How far a witness cone had bent, as it stood when the kiln was opened. */
export const bends = ["standing", "bending", "bent", "down"] as const;
export type Bend = (typeof bends)[number];

/** What a shelf's witness cones showed: the cone that was reached, or how far each had bent. */
export type Witness =
  | { readonly read: "cone"; readonly cone: Cone }
  | { readonly read: "bends"; readonly bends: ReadonlyMap<Cone, Bend> };

const witnessCone = f.cone("any").transform((cone): Witness => ({ read: "cone", cone }));

const witnessBends = f
  .mapByCone(f.choice(bends))
  .transform((found): Witness => ({ read: "bends", bends: found }));

const segment = f.fields({
  to: f.required("The temperature to go to.", f.number("temperature", { from: -20, to: 4000 })),
  rate: f.optional(
    "How fast, in degrees an hour; below 0 where the kiln cools. As fast as it will go if left out.",
    f.number("rate in degrees an hour"),
  ),
  hold: f.optional(
    "How long to stay there, in minutes.",
    f.number("number of minutes", { from: 0 }),
  ),
});

export const firingSchema = f.fields({
  on: f.optional("The day the kiln was lit; left out while it is still to come.", f.day()),
  kind: f.required("What kind of firing it was.", f.choice(kindsOfFiring)),
  kiln: f.optional("The kiln, by the name the studio gives it.", f.text()),
  "heated-by": f.optional("What heated it.", f.choice(heatSources)),
  atmosphere: f.optional("The air in the kiln at the top of the firing.", f.choice(atmospheres)),
  cone: f.optional("The cone that was aimed at.", f.cone()),
  witness: f.optional(
    "What the witness cones showed, by shelf: the cone that was reached, or each cone's bend.",
    f.mapOf(f.scalarOrMap<Witness>(witnessCone, witnessBends)),
  ),
  tiles: f.optional(
    "The load list, by shelf: codes, or ranges of codes such as TB-101..TB-109.",
    f.boundedCodes(f.mapOf(f.oneOrMany(f.codes("tile"), longestList))),
  ),
  schedule: f.optional("The programme, segment by segment.", f.list(segment)),
  unit: f.optional("C if left out; F where the schedule is in Fahrenheit.", f.choice(["C", "F"])),
  log: f.optional(
    "The file beside this one that holds time and temperature as the pyrometer gave them.",
    f.fileName(),
  ),
  "log-unit": f.optional("C or F, where the log's header does not say.", f.choice(["C", "F"])),
});

export type FiringRecord = z.output<typeof firingSchema>;
export type Segment = z.output<typeof segment>;
