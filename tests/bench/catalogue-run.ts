/** What a build thinks of an archive, part by part, without files and pictures. */
import type { Findings, PreparedPicture } from "../../src/catalogue/findings.ts";
import { catalogueMaker } from "../../src/catalogue/make.ts";
import { onlySet, unlistedSets, withoutUnlistedSets } from "../../src/catalogue/select.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { runChecks } from "../../src/checks/all.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { carriedMaterials, carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import type { Lab } from "../../src/colour/cielab.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import { groupAlike } from "../../src/likeness/alike.ts";
import { firingFactsOf } from "../../src/likeness/firing-facts.ts";
import { makeUpOf } from "../../src/likeness/make-up.ts";
import { pictureWidths } from "../../src/photos/recipe.ts";
import { followReferences } from "../../src/reader/follow-references.ts";
import type { Archive } from "../../src/records/archive.ts";
import { measured } from "../catalogue/measured.ts";
import { nothing } from "../checks/support.ts";
import type { UnlinkedArchive } from "./large-archive.ts";

/** The parts, in their order; chemistry takes in the heat of firings. */
export const parts = ["references", "chemistry", "checks", "likeness", "catalogue"] as const;
export type Part = (typeof parts)[number];

/** Runs a part, and counts or times it. */
export type Around = <T>(part: Part, work: () => T) => T;

/**
 * Goes through all parts. The catalogue is that of the site and those of all unlisted sets.
 *
 * @throws where a reference of the archive leads nowhere: then less would be measured than is meant
 */
export function runParts(unlinked: UnlinkedArchive, around: Around): void {
  const archive = around("references", () => linkUp(unlinked));
  const { chemistry, heats } = around("chemistry", () => ({
    chemistry: chemistryOfGlazes(archive),
    heats: heatOfFirings(archive),
  }));
  around("checks", () => runChecks(archive, { ...nothing, heats }));
  around("likeness", () => findTwins(archive, heats));
  const findings = findingsOf(unlinked, { chemistry, heats });
  around("catalogue", () => makeCatalogues(archive, findings));
}

/** The catalogue of the site for everyone. */
export function catalogueOf(unlinked: UnlinkedArchive): Catalogue {
  const archive = linkUp(unlinked);
  const reckoned = { chemistry: chemistryOfGlazes(archive), heats: heatOfFirings(archive) };
  return catalogueMaker(archive, findingsOf(unlinked, reckoned))(withoutUnlistedSets(archive));
}

function findingsOf(
  { colours }: UnlinkedArchive,
  reckoned: Pick<Findings, "chemistry" | "heats">,
): Findings {
  const pictures = [...colours].map(([file, lab], i) => [file, prepared(lab, i)] as const);
  return {
    ...reckoned,
    pictures: new Map(pictures),
    notes: new Map(),
    builtInMaterials: carriedMaterials,
  };
}

function linkUp({ records, files }: UnlinkedArchive): Archive {
  const around = { files, logs: new Map(), builtInMaterials: carriedWords };
  const { archive, problems } = followReferences(records, around);
  if (!records.studio || problems.length > 0) throw new Error(JSON.stringify(problems[0]));
  return { studio: records.studio, ...archive };
}

function findTwins(archive: Archive, heats: Findings["heats"]) {
  const factsOf = firingFactsOf(archive, heats);
  return groupAlike([...archive.tiles.values()], (tile) => makeUpOf(tile, factsOf));
}

function makeCatalogues(archive: Archive, findings: Findings): void {
  const makeCatalogue = catalogueMaker(archive, findings);
  makeCatalogue(withoutUnlistedSets(archive));
  for (const { id } of unlistedSets(archive))
    makeCatalogue(onlySet(archive, id), { unlisted: true, tiles: 1, forFamilies: false });
}

/** A picture in all sizes that a build makes, under a name as long as a build gives. */
function prepared(lab: Lab, i: number): PreparedPicture {
  const files = [...pictureWidths].reverse().flatMap((width) =>
    (["webp", "jpeg"] as const).map((format) => ({
      url: `pictures/tb-${String(i).padStart(15, "0")}-${width}.${format}`,
      format,
      width,
      height: (width * 4) / 3,
    })),
  );
  return { width: 2000, height: 2667, placeholder: "#888888", files, colour: measured(lab) };
}
