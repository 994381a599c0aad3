import { record } from "../archive/archives.ts";
import { type Slips, testSlips } from "./slips.ts";

const layers = "layers:\n  - glaze: soot";
const tile = (yaml: string) => ({ "tiles/WL-002.md": record(yaml) });
const firing = (yaml: string) => ({ "tiles/firings/g-1.md": record(`kind: glaze\n${yaml}`) });
const glaze = (yaml: string) => ({
  "recipes/glazes/chalk.md": record(`name: Chalk\nkind: glaze\nbought: {maker: Oxbow}\n${yaml}`),
});

const cones: Slips = {
  "cone in words": firing("cone: Cone 6"),
  "cone in small letters": firing("cone: cone 06"),
  "cone with a hat": firing("cone: ^6"),
  "a range for a cone": firing("cone: 6-7"),
  "degrees for a cone": firing("cone: 1222"),
  "degrees with their unit": glaze("cones: 2232 F"),
  "a cone that is not there": firing("cone: 66"),
  "a half that no chart has": firing("cone: 6.5"),
};

const words: Slips = {
  "no for none": tile(`${layers}\nresult: {faults: no}`),
  "coats and way in one": tile("layers:\n  - {glaze: soot, by: brush x2}"),
  "coats as a word": tile("layers:\n  - {glaze: soot, coats: two}"),
  "coats with their name": tile("layers:\n  - {glaze: soot, coats: 2 coats}"),
  "maybe for yes or no": { "tiles/evening/set.md": record("name: Evening\nlisted: maybe") },
  "a day as at home": tile(`glazed: 14.10.2026\n${layers}`),
  "a day as elsewhere": tile(`glazed: 10/14/2026\n${layers}`),
  "a day that may be two": tile(`glazed: 4/10/2026\n${layers}`),
  "a day in words": tile(`glazed: 14th October 2026\n${layers}`),
  "a day without noughts": tile(`glazed: 2026-1-5\n${layers}`),
  "a day that never was": tile(`glazed: 2026-02-30\n${layers}`),
  "a day without a year": tile(`glazed: Tuesday\n${layers}`),
  "no format": { "studio.yaml": "studio: Weir Lane Pottery\n" },
  "a format of another kind": { "studio.yaml": "format: v1\nstudio: Weir Lane Pottery\n" },
};

const names: Slips = {
  "a maker's name": {
    "studio.yaml": "format: 1\nstudio: Weir Lane\nmakers: {m01: {name: Wren Ashdown}}\n",
    ...tile(`maker: Wren Ashdown\n${layers}`),
  },
  "a maker's first name": {
    "studio.yaml": "format: 1\nstudio: Weir Lane\nmakers: {m01: {name: Wren Ashdown}}\n",
    ...tile(`maker: wren\n${layers}`),
  },
  "one too many": tile("layers:\n  - glaze: Soots"),
  "a space in an id": {
    "recipes/glazes/oxbow-blue.md": record("name: Blue\nkind: slip\nbought: {maker: Oxbow}"),
    ...tile("layers:\n  - glaze: Oxbow blue"),
  },
  "a glaze that was renamed": {
    "recipes/glazes/tidewrack-2026.md": record("name: Wrack\nkind: slip\nbought: {maker: Oxbow}"),
    ...tile("layers:\n  - glaze: tidewrack"),
  },
  "a firing that nobody wrote down": tile(`${layers}\n  - fired: g-1`),
};

const ranges: Slips = {
  "a dash between two codes": { ...firing("tiles: {top: WL-001-WL-007}") },
  "a long dash between two codes": { ...firing("tiles: {top: [WL-001–WL-007]}") },
  "three dots": { ...firing("tiles: {top: WL-001...WL-007}") },
  "a range that a set reserves": {
    "tiles/evening/set.md": record("name: Evening\ncodes: CL-01 - CL-07"),
  },
};

const letters: Slips = {
  "letters that are turned around": { "tiles/WL-002.md": record(layers, "Red\u202eder\u202c.") },
};

testSlips("records", { ...cones, ...words, ...names, ...ranges, ...letters });
