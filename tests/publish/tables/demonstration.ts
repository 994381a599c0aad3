/** The catalogue of the demonstration without a disk, with a colour for each tile that has a result. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { textParser } from "../../../src/archive/parse-text.ts";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import { withoutUnlistedSets } from "../../../src/catalogue/select.ts";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { runChecks } from "../../../src/checks/all.ts";
import { notesByFile } from "../../../src/checks/notes.ts";
import { chemistryOfGlazes } from "../../../src/chemistry/glazes.ts";
import {
  carriedMaterials,
  theoreticalMaterials,
} from "../../../src/chemistry/minerals/minerals.ts";
import { heatOfFirings } from "../../../src/firing/of-archive.ts";
import { readArchiveFiles } from "../../../src/reader/read-archive-files.ts";
import { rememberFor } from "../../../src/terms/remember.ts";
import { measured } from "../../catalogue/measured.ts";
import { nothing } from "../../checks/support.ts";
import { project } from "../../house/files.ts";
import { filesOf } from "../../support/files-in-memory.ts";

/** Made once for all tests that ask. */
export const demonstration: () => Catalogue = (() => {
  const made = rememberFor((_: object) => makeDemonstration());
  const only = {};
  return () => made(only);
})();

function makeDemonstration(): Catalogue {
  const { archive: read } = readArchiveFiles(filesOf(texts()), {
    builtInMaterials: theoreticalMaterials.map(({ id }) => id),
    texts: textParser,
  });
  if (!read) throw new Error("the demonstration cannot be read");
  const archive = withoutUnlistedSets(read);
  const heats = heatOfFirings(archive);
  const recorded = [...archive.tiles.values()].filter(({ record }) => record.result);
  const pictures = recorded.map(
    ({ file, id }) => [`${file.slice(0, -3)}.jpg`, pictureOf(id)] as const,
  );
  return makeCatalogue(archive, {
    pictures: new Map(pictures),
    chemistry: chemistryOfGlazes(archive),
    heats,
    notes: notesByFile(runChecks(archive, { ...nothing, heats })),
    builtInMaterials: carriedMaterials,
  });
}

/** Of a colour that the code decides. */
function pictureOf(code: string) {
  const sum = [...code].reduce((total, letter) => total * 31 + letter.charCodeAt(0), 7);
  return {
    width: 320,
    height: 240,
    placeholder: "#888888",
    files: [{ url: `pictures/${code}.jpg`, format: "jpeg" as const, width: 320, height: 240 }],
    colour: measured([(sum % 80) + 10, (sum % 41) - 20, (sum % 37) - 18]),
  };
}

function texts(): Record<string, string> {
  const found: Record<string, string> = { "studio.yaml": read("studio.yaml") };
  for (const folder of ["pages", "recipes", "tiles"])
    for (const path of readdirSync(join(project, folder), { recursive: true }).map(String)) {
      const file = `${folder}/${path.replaceAll("\\", "/")}`;
      if (/\.(?:csv|md)$/u.test(file)) found[file] = read(file);
      else if (/\.jpg$/u.test(file)) found[file] = "";
    }
  const planted = ["tiles/BL-01.md", "recipes/glazes/chalk.md"];
  for (const file of planted)
    found[file] = found[file]?.replace("---\n", `---\n${leachTests}`) ?? "";
  found["recipes/glazes/from-the-bag.md"] =
    "---\nname: From the bag\nkind: glaze\ningredients: [{material: ball-clay, parts: 40}, {material: whiting, parts: 60}]\n---\n";
  return found;
}

/** The demonstration has none, nor a glaze of a material that varies from bag to bag. */
const leachTests = `leach-tests:
  - on: 2026-11-02
    laboratory: Sluice Lane
    method: own
    ware: a mug
    fired: cone 6
    report: SL-7
    found: [{element: lead, below: 0.1, unit: mg/L}, {element: barium, amount: 0.4, unit: mg/L}]
`;

const read = (file: string) => readFileSync(join(project, file), "utf8");
