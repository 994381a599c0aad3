/** A test tile: what was put on it, in order, and what came out of the kiln. */
import type * as z from "zod";
import { agains, effects, fates, faults, shapes, surfaces, textures } from "../terms/choices.ts";
import { mostLayers } from "../terms/limits.ts";
import * as f from "./fields.ts";
import { leachTests } from "./leach-test.ts";
import { step } from "./steps.ts";

/** Where things lie in a photograph: what a studio's copy stand may settle once. */
const places = {
  crop: f.optional(
    "The part that shows the glaze: left, top, right and bottom edge, in per cent of the picture; its middle half if nobody says.",
    f.box(),
  ),
  grey: f.optional(
    "Where a neutral grey card lies in the picture, in per cent, as for the crop; no where there is none.",
    f.boxOrNo(),
  ),
};

export const copyStand = f.fields(places);

const shown = {
  alt: f.optional(
    "What the photograph shows, for those who cannot see it; written from the record if left out.",
    f.text(),
  ),
  ...places,
};

const sharedPhoto = f.fields(shown);

const photo = f.fields({
  file: f.optional(
    "The photograph of the result, beside this record, where the camera's name was kept.",
    f.fileName(),
  ),
  ...shown,
});

const observation = {
  surface: f.optional("How the surface came out; one or a list.", f.oneOrMany(f.choice(surfaces))),
  effects: f.optional("What the glaze does; one or a list.", f.oneOrMany(f.choice(effects))),
  faults: f.optional(
    "What went wrong; one or a list, or `none` where somebody looked and found nothing.",
    f.oneOrMany(f.choice([...faults, "none"])),
  ),
  run: f.optional("How far the glaze moved, in millimetres.", f.number("length", { from: 0 })),
};

const result = f.fields({
  after: f.optional(
    "The id of the glaze firing that this describes, where there was more than one.",
    f.reference("firing"),
  ),
  ...observation,
  again: f.optional("Would you do it again: yes, changed, or no?", f.choice(agains)),
  "next-time": f.optional("What to do differently next time.", f.text()),
});

const laterLook = f.fields({
  on: f.required("The day it was looked at again.", f.day()),
  ...observation,
});

/** The fields of a tile that a set may give for all of its tiles. */
export const sharedTileFields = {
  formed: f.optional("The day the tile was made of clay, if known.", f.day()),
  glazed: f.optional("The day the first layer went on.", f.day()),
  maker: f.optional(
    "Who glazed it: a key of `makers:` in studio.yaml, not a name.",
    f.reference("maker"),
  ),
  clay: f.optional("The clay body: the id of a record in recipes/clays.", f.reference("clay")),
  "clay-batch": f.optional("The batch or delivery of the clay, where it matters.", f.text()),
  texture: f.optional(
    "The surface of the clay; smooth if left out. Own words are welcome.",
    f.choiceOrOwnWords(textures),
  ),
  shape: f.optional("What was glazed; a flat tile if left out.", f.choice(shapes)),
  angle: f.optional(
    "How steeply it stood in the kiln, in degrees from lying flat.",
    f.number("angle in degrees", { from: 0, to: 180 }),
  ),
  photo: f.optional("Only where the usual crop and words do not serve.", sharedPhoto),
};

export const tileSchema = f.fields({
  ...sharedTileFields,
  photo: f.optional("Only where the usual name, crop and words do not serve.", photo),
  layers: f.required(
    "Everything that was put on, taken off or fired, bottom first, in the order it was done.",
    f.list(step, mostLayers),
  ),
  result: f.optional(
    "What came out of the kiln; one, or a list with one for each glaze firing.",
    f.oneOrMany(result),
  ),
  later: f.optional("What was seen when it was looked at again.", f.list(laterLook)),
  "leach-tests": leachTests,
  fate: f.optional("Why the tile did not come back whole.", f.choice(fates)),
  "show-notes": f.optional(
    "yes where the notes and next-time may go into what is shared with families too; left out of it otherwise.",
    f.yesNo(),
  ),
  formerly: f.optional("Codes it was published under before.", f.list(f.reference())),
});

export type TileRecord = z.output<typeof tileSchema>;
export type Result = z.output<typeof result>;
export type LaterLook = z.output<typeof laterLook>;
export type PhotoSettings = z.output<typeof photo>;
export type CopyStand = z.output<typeof copyStand>;
