import { formTitle } from "../words/add/form.ts";
import { dataTitle } from "../words/site/data.ts";

/** The sections of a catalogue, in the order of the masthead: a line here is an entry there. */
export const sections = [
  { key: "wall", address: "index.html", name: "Tiles" },
  { key: "glazes", address: "glazes/index.html", name: "Glazes" },
  { key: "grid", address: "grid.html", name: "Grid" },
  { key: "runs", address: "runs.html", name: "What runs" },
  { key: "colours", address: "colours.html", name: "Colours" },
  { key: "clays", address: "clays/index.html", name: "Clays" },
  { key: "cones", address: "cones/index.html", name: "Cones" },
  { key: "firings", address: "firings/index.html", name: "Firings" },
  { key: "sets", address: "sets/index.html", name: "Sets" },
  { key: "care", address: "care.html", name: "Care" },
] as const;

/** The section that a page belongs to. */
export type Section = (typeof sections)[number]["key"];

/** The page of the data, which the site of an unlisted set has not. */
export const dataPath = "data.html";

/** The other pages of a catalogue, in the order of the foot of every page. */
export const waysAtFoot = [
  { address: "materials/index.html", name: "Materials" },
  { address: "blends/index.html", name: "Blends" },
  { address: "maps/index.html", name: "Maps" },
  { address: "makers/index.html", name: "Makers" },
  { address: "guide/index.html", name: "How it is done" },
  { address: "reference.html", name: "How to write a record" },
  { address: dataPath, name: dataTitle },
  { address: "about.html", name: "About" },
] as const;

/** What leads somewhere from every page: a page of the studio's own may have none of these names. */
export const namesOfWays: readonly string[] = [
  formTitle,
  ...[...sections, ...waysAtFoot].map(({ name }) => name),
];
