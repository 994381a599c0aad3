/** The studio: who it is, where its catalogue is published, who its makers are. */
import type * as z from "zod";
import { namesShown, type WayOfHandingIn, waysOfHandingIn } from "../terms/choices.ts";
import * as f from "./fields.ts";
import { copyStand } from "./tile.ts";

/** The version of the archive's format that this Tilebook reads. */
export const formatVersion = "1";

const maker = f.fields({
  name: f.optional("The name to show; nobody is named without it.", f.text()),
  shown: f.optional("yes, initials or no; no if left out.", f.choice(namesShown)),
  common: f.optional(
    "Parts of the name that are everyday words as well, such as Rose: check does not warn of them in notes.",
    f.oneOrMany(f.text()),
  ),
  "commits-as": f.optional(
    "Other names that the maker commits under, where those differ from the name: pages that say who wrote a record down then say it as shown allows. Never a mail address.",
    f.oneOrMany(f.nameOfCommitter()),
  ),
});

const mark = f.fields({
  file: f.required(
    "The file beside studio.yaml: an SVG without scripts, letters and pictures in it, or a PNG.",
    f.markFile(),
  ),
  alt: f.required("What the mark shows, for those who cannot see it.", f.text()),
});

/** How a maker hands in a tile: what the tile form ends with, and the studio's own words. */
export interface HandingIn {
  readonly by: WayOfHandingIn;
  readonly words: string | undefined;
}

const handingInFields = f
  .fields({
    by: f.optional(
      "How the tile form ends: download gives one zip, share opens the phone's share sheet, new-file fills in the repository's own page for a new file; download if left out.",
      f.choice(waysOfHandingIn),
    ),
    words: f.optional("How a maker hands in a tile, in your own words.", f.text()),
  })
  .transform(({ by, words }): HandingIn => ({ by: by ?? "download", words }));

/** One of the three ways alone is that way; anything else is the studio's own words. */
const handingInAlone = f.text().transform((said): HandingIn => {
  const by = waysOfHandingIn.find((way) => way === said.trim().toLowerCase());
  return by ? { by, words: undefined } : { by: "download", words: said };
});

export const studioSchema = f.fields({
  format: f.required(
    `The version of the archive's format: ${formatVersion}.`,
    f.formatNumber(formatVersion),
  ),
  studio: f.required("The studio's name.", f.text()),
  address: f.optional(
    "The web address the catalogue is published at, with its sub-path.",
    f.webAddress(),
  ),
  repository: f.optional("The web address of the archive's repository.", f.webAddress()),
  licence: f.optional(
    "What others may do with the records and the photographs, both: a licence with its version, such as CC BY 4.0, which every page then leads to, or your own words.",
    f.text(),
  ),
  temperature: f.optional(
    "Which unit is shown first; celsius if left out.",
    f.choice(["celsius", "fahrenheit"]),
  ),
  "handing-in": f.optional(
    "How a maker hands in a tile, in your own words; or how the tile form ends: download, new-file or share; or both, as {by: share, words: …}.",
    f.scalarOrMap<HandingIn>(handingInAlone, handingInFields),
  ),
  photo: f.optional(
    "How the studio's copy stand takes pictures: for every tile that does not say otherwise.",
    copyStand,
  ),
  welcome: f.optional(
    "A welcome in Markdown, shown on the home page: a few lines, after “welcome: |”.",
    f.text(),
  ),
  website: f.optional(
    "The studio's own website, beginning with https://: the foot of every page leads there.",
    f.secureAddress(),
  ),
  mark: f.optional("The studio's mark, shown before its name on every page.", mark),
  accent: f.optional(
    'One colour for the line under the head of every page and under what is chosen there, such as "#a0522d".',
    f.webColour(),
  ),
  makers: f.optional(
    "The makers by their codes, such as m07: {name: Rowan K., shown: initials}.",
    f.mapOf(maker),
  ),
});

export type StudioRecord = z.output<typeof studioSchema>;
export type MakerRecord = z.output<typeof maker>;
