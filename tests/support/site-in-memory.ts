/** Archives and their sites without a disk: what `check` finds in some files, and what a build writes. */

import { textParser } from "../../src/archive/parse-text.ts";
import type { Findings } from "../../src/catalogue/findings.ts";
import { catalogueMaker } from "../../src/catalogue/make.ts";
import { onlySet, unlistedSets, withoutUnlistedSets } from "../../src/catalogue/select.ts";
import type { SharedWith } from "../../src/catalogue/shared.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { runChecks } from "../../src/checks/all.ts";
import { notesByFile } from "../../src/checks/notes.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { theoreticalMaterials } from "../../src/chemistry/minerals/minerals.ts";
import { planSharing } from "../../src/commands/share/share-plan.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import { siteDataOf } from "../../src/publish/data/site-data.ts";
import { dataOf } from "../../src/publish/data-of-site.ts";
import { searchEntryOf } from "../../src/publish/page.ts";
import { renderPage } from "../../src/publish/write-pages.ts";
import { type ReadArchive, readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { type Archive, findById } from "../../src/records/archive.ts";
import type { Problem } from "../../src/records/problem.ts";
import { nothing } from "../checks/support.ts";
import { filesOf, type Texts } from "./files-in-memory.ts";
import { listPages } from "./list-pages.ts";
import { unpackData } from "./unpack-data.ts";

export type { Texts };

/** An archive of some texts, read and checked. */
export function examine(texts: Texts): {
  readonly read: ReadArchive;
  readonly problems: readonly Problem[];
} {
  const read = readArchiveFiles(filesOf(texts), {
    builtInMaterials: theoreticalMaterials.map(({ id }) => id),
    texts: textParser,
  });
  const { archive } = read;
  if (!archive) return { read, problems: read.problems };
  const heats = heatOfFirings(archive);
  return { read, problems: [...read.problems, ...runChecks(archive, { ...nothing, heats })] };
}

function findingsOf(archive: Archive, problems: readonly Problem[]): Findings {
  return {
    pictures: new Map(),
    chemistry: chemistryOfGlazes(archive),
    heats: heatOfFirings(archive),
    notes: notesByFile(problems),
    builtInMaterials: theoreticalMaterials,
  };
}

/** What a build writes of words: pages, data files and what is handed to the search index, by path. */
function writeSite(catalogue: Catalogue, under = ""): Map<string, string> {
  const pages = listPages(catalogue, { under, waiting: [] });
  const paths = pages.map(({ path }) => path);
  if (new Set(paths).size < paths.length) throw new Error("Two pages have one address");
  return new Map([
    ...pages.map((page) => [page.path, renderPage(page)] as const),
    ...pages.map((page) => [`search/${page.path}`, JSON.stringify(searchEntryOf(page))] as const),
    ...dataOf(catalogue, pages).map(({ path, content }) => [path, content] as const),
    ...siteDataOf(catalogue)
      .files.filter(isText)
      .map(({ path, make }) => [path, String(make())] as const),
  ]);
}

/** Whether a data file is made at once, as text. */
const isText = ({ path }: { readonly path: string }) => /\.(?:csv|json)$/u.test(path);

/** What of the data of a catalogue is packed, unpacked, and the manifest. */
export async function packedDataOf(catalogue: Catalogue): Promise<Map<string, string>> {
  const { entries, files, make } = siteDataOf(catalogue);
  const packed = entries.filter((entry) => !(isText(entry) && files.includes(entry)));
  const read = packed.map(
    async (entry) => [entry.path, await unpackData(entry.path, await make(entry))] as const,
  );
  return new Map(await Promise.all(read));
}

/** The site for everyone, and that of each unlisted set by its id. */
export function sitesOf(archive: Archive, problems: readonly Problem[]) {
  const makeCatalogue = catalogueMaker(archive, findingsOf(archive, problems));
  const catalogue = makeCatalogue(withoutUnlistedSets(archive));
  return {
    open: writeSite(catalogue),
    hidden: new Map(
      unlistedSets(archive).map(({ id, record }) => [
        id,
        writeSite(
          makeCatalogue(onlySet(archive, id), { unlisted: true, tiles: 1, forFamilies: false }),
          `s/${record.link}`,
        ),
      ]),
    ),
    catalogue,
  };
}

/** What `share` writes of a set, by path. */
export function sharedSiteOf(
  archive: Archive,
  problems: readonly Problem[],
  id: string,
  whom: SharedWith = "all",
): Map<string, string> {
  const set = findById(archive.sets, id);
  if (!set) throw new Error(`There is no set ${id}`);
  const known = { archive, problems, findings: findingsOf(archive, problems) };
  return writeSite(planSharing(known, set, whom, nothing.asTyped).catalogue);
}
