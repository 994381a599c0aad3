import { record } from "../archive/archives.ts";
import { testSlips } from "./slips.ts";

/** A tile with these fields. */
const tile = (yaml: string) => ({ "tiles/WL-002.md": record(yaml) });
/** A tile with these fields beside a layer. */
const fields = (yaml: string) => tile(`layers:\n  - glaze: soot\n${yaml}`);
const layer = (yaml: string) => tile(`layers:\n  - ${yaml}`);
const firing = (yaml: string) => ({ "tiles/firings/g-1.md": record(`kind: glaze\n${yaml}`) });
const glaze = (yaml: string) => ({
  "recipes/glazes/chalk.md": record(`name: Chalk\nkind: glaze\n${yaml}`),
});
const material = (yaml: string) => ({
  "recipes/materials/spar.md": record(`name: Spar\nanalysis: ${yaml}`),
});
const clay = (yaml: string) => ({ "recipes/clays/white.md": record(yaml) });
const bought = "bought: {maker: Oxbow}";

testSlips("entries without a colon", {
  "a decimal comma in a recipe": glaze("ingredients: [{material: whiting, parts: 8,5}]"),
  "a decimal comma in a schedule": firing("schedule:\n  - {to: 1100, rate: 62,5}"),
  "a decimal comma below nought": firing("schedule:\n  - {to: 980, rate: -62,5, hold: 3}"),
  "a decimal comma before a unit": tile(
    "layers: [{glaze: soot}]\nresult: {surface: gloss, run: 2,5 mm}",
  ),
  "a decimal comma in a specific gravity": layer("{glaze: soot, gravity: 1,45}"),
  "decimal commas in an analysis": material("{SiO2: 68,6, Al2O3: 18,6, K2O: 12, loss: 0,6}"),
  "a decimal comma in the place of a picture": fields("photo: {crop: [8,5, 8, 92, 92]}"),
  "a decimal comma in a range of temperatures": clay(
    "name: White\nexpansion: {mean: 6.1, between: [20,5, 500]}",
  ),
  "a half cone with a comma": firing("witness: {top: 5,5, middle: 6}"),
  "no space after a colon": layer("{glaze: soot, coats:3}"),
  "no space after any colon": layer("{glaze:soot,coats:3}"),
  "no colon": layer("{glaze: soot, coats 3}"),
  "no colon in a firing": layer("{fired: glaze, shelf top}"),
  "no colon between shelves": firing("witness: {top 6, middle 6}"),
  "no colon between bends": firing("witness: {top: {5 down, 6 bent}}"),
  "no colon in a result": fields("result: {surface gloss, faults none}"),
  "a comma in a text": layer("{glaze: soot, detail: rim, and foot}"),
  "a word alone": layer("{glaze: soot, thin}"),
  "several values without brackets": fields("result: {faults: crazing, crawling, surface: gloss}"),
  "a full-width colon": layer("{glaze: soot, coats：3}"),
  "a non-breaking space after a colon": layer("{glaze: soot, coats:\u00a03}"),
  "no comma": layer("{glaze: soot coats: 3}"),
  "two commas": layer("{glaze: soot,, coats: 3}"),
  "a semicolon": layer("{glaze: soot; coats: 3}"),
  "a semicolon before a name without its colon": layer("{glaze: soot, detail: at the rim; coats3}"),
});

testSlips("lines without a colon", {
  "no colon on a line of its own": layer("glaze: soot\n    coats 3\n    by: brush"),
  "no colon on the last line": layer("glaze: soot\n    coats 3"),
  "no space after a colon": layer("glaze: soot\n    coats:3\n    by: brush"),
  "no space after the first colon": tile("maker:m01\nlayers:\n  - glaze: soot"),
  "a full-width colon": fields("maker：m01"),
  "a full-width colon with a space": fields("maker： m01"),
  "two colons": fields("maker:: m01"),
  "a jar's number and its glaze run together": {
    "tiles/a/set.md": record("name: A\njars: {1soot: 1}"),
  },
  "jars run together with two colons and no comma": {
    "tiles/a/set.md": record("name: A\njars: {1::soot 2: soot}"),
  },
  "a value in quotes that its name runs into": {
    "recipes/materials/ash.md": record("name: Ash\nanalysis: {Al2O3'14.2' SiO2: 60}"),
  },
  "two colons where names are free": { "tiles/a/set.md": record("name: A\njars:\n  7:: soot") },
});

testSlips("spaces and dashes", {
  "one space too many": layer("glaze: soot\n     coats: 2"),
  "one space too few": layer("glaze: soot\n   coats: 2"),
  "two spaces too many": fields("  maker: m01"),
  "a field one space in": fields(" maker: m01"),
  "a list's entry one space too far left": layer("fired: bisque\n - glaze: soot"),
  "a list's entry one space too far right": layer("fired: bisque\n   - glaze: soot"),
  "a tab before a field": layer("glaze: soot\n\tcoats: 2"),
  "a tab after a dash": tile("layers:\n  -\tglaze: soot"),
  "non-breaking spaces before a field": layer("glaze: soot\n\u00a0\u00a0\u00a0\u00a0coats: 2"),
  "a non-breaking space after a colon": fields("maker:\u00a0m01"),
  "a non-breaking space after the first colon": tile("maker:\u00a0m01\nlayers:\n  - glaze: soot"),
  "a non-breaking space after a dash": tile("layers:\n  -\u00a0glaze: soot"),
  "a non-breaking space after the dash of a word": fields("result:\n  faults:\n    -\u00a0crazing"),
  "a non-breaking space in a name": fields("clay\u00a0batch: 7"),
  "a space of no width": fields("maker: m\u200b01"),
  "an en dash for a list's dash": tile("layers:\n  – glaze: soot\n    coats: 2"),
  "em dashes for a list's dashes": tile("layers:\n  — glaze: soot\n  — glaze: soot"),
  "bullets for a list's dashes": fields("result:\n  faults:\n    • crazing"),
  "a long dash for the first line": { "tiles/WL-002.md": "—\nlayers:\n  - glaze: soot\n---\n" },
  "a long dash for the second line": { "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n—\n" },
  "two dashes joined": { "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n–-\nIt ran.\n" },
  "a space before the second line": {
    "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n ---\nIt ran.\n",
  },
  "three stops for the second line": {
    "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n...\nIt ran.\n",
  },
  "no second line": { "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n\nIt ran.\n" },
  "no second line, and a rule in the notes": {
    "tiles/WL-002.md": "---\nlayers:\n  - glaze: soot\n\nIt ran.\n\n---\n\nA lot.\n",
  },
});

testSlips("values", {
  "curly quotes round a word": fields("maker: “m01”"),
  "curly quotes round a text": glaze(`${bought}\nby: ‘volume’`),
  "curly quotes round a name": { "tiles/a/set.md": record("name: “Autumn”") },
  "a straight quote and a curly one": { "tiles/a/set.md": record('name: "Autumn”') },
  "curly quotes before a no-break space": { "tiles/a/set.md": record("name: “Autumn”\u00a0") },
  "a last comma before a no-break space": { "tiles/a/set.md": record("name: Autumn,\u00a0") },
  "curly quotes round a field's name": fields("“maker”: m01"),
  "a line that goes on": fields("maker: m01\nfate: lost\n  again"),
  "a field too far in that has no colon": {
    "tiles/a/set.md": record("name: Autumn\n  kind class"),
  },
  "words that look like a comment": { "tiles/a/set.md": record("name: Red #5") },
  "a value that looks like a comment": fields("clay-batch: #5"),
  "a comment that eats the bracket": fields("result: {faults: [crazing] #none}"),
  "a comma for thousands": firing("schedule:\n  - to: 1,215\n    rate: 60"),
  "points and a comma": firing("schedule:\n  - to: 1.215,5\n    rate: 60"),
  "a unit": fields("result:\n  run: 12mm"),
  "per cent": clay("name: White\nabsorption: 5 %"),
  "an exponent": glaze("ingredients:\n  - material: whiting\n    parts: 1e2"),
  "a number to the base of 16": layer("glaze: soot\n    coats: 0x10"),
  "an underscore in a number": firing("schedule:\n  - to: 1_000"),
  "a merge of fields": fields("<<: {maker: m01}"),
  "a mark that is not used": fields("maker: &me m01"),
});

testSlips("fields", {
  "an unknown field left empty": fields("claay:"),
  "an unknown field left empty between brackets": layer("{glaze: soot, coat: }"),
  "an unknown field in a map left empty": fields("result:\n  surfce:\n  faults:"),
  "glazes alone in brackets": tile("layers: [chalk, soot]"),
  "words alone in a list": tile("layers:\n  - bisque\n  - wax\n  - soot"),
  "a list in a list": tile("layers:\n  - - soot"),
  "several choices without brackets": fields("result:\n  surface: gloss, satin"),
  "notes as a field": fields("notes: It ran."),
  "a note in a result": fields("result:\n  surface: gloss\n  comment: It ran."),
  "a description of a glaze": glaze(`${bought}\ndescription: Dark.`),
  "a field written twice": fields("maker: m01\nmaker: m01"),
});
