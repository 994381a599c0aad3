/** `tilebook build`: checks the archive and, where it has no error, writes its site. */

import { forgetParsed } from "../archive/forget-parsed.ts";
import { unlistedUrl } from "../catalogue/addresses.ts";
import type { Findings } from "../catalogue/findings.ts";
import { makeCatalogue } from "../catalogue/make.ts";
import { onlySet, unlistedSets, withoutUnlistedSets } from "../catalogue/select.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { notesByFile } from "../checks/notes.ts";
import { carriedMaterials } from "../chemistry/minerals/minerals.ts";
import { type Published, publishSites, type SiteRequest } from "../publish/publish.ts";
import { checkSiteFolder } from "../publish/site-folder.ts";
import type { LocatedProblem } from "../reader/locate.ts";
import { type Archive, findById } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { sortProblems } from "../reporting/located-problem.ts";
import { asTypedFor } from "./as-typed.ts";
import { type Examined, examineArchive } from "./examine.ts";
import { exitCodes, WrongUsage } from "./failure.ts";
import { cacheFolderOf, type Folders, siteFolderOf } from "./folders.ts";
import { type Photographs, preparePhotographs } from "./photographs.ts";
import { formatDuration, type Progress, startProgress } from "./progress.ts";
import { printReport } from "./report.ts";

export interface BuildOptions extends Folders {
  readonly address?: string;
  /** The site of this set alone. */
  readonly set?: string;
  readonly quiet: boolean;
}

/** What became of a build. */
export interface Built {
  readonly code: number;
  /** The errors that kept the site from being built. */
  readonly faults: readonly LocatedProblem[];
  /** Where the site will be published; null where nobody says, or it could not be read. */
  readonly address: string | null;
}

/** Builds the site of an archive, as `buildSite` does, and gives the exit code alone. */
export async function build(options: BuildOptions): Promise<number> {
  return (await buildSite(options)).code;
}

/**
 * Builds the site of an archive. An archive with errors writes nothing and leaves the last good
 * site as it was.
 */
export async function buildSite(options: BuildOptions): Promise<Built> {
  const progress = startProgress(options.quiet);
  const siteFolder = await checkSiteFolder(siteFolderOf(options), options.archive);
  const cacheDir = cacheFolderOf(options);
  forgetParsed(cacheDir);
  const examined = await examineArchive(options.archive, cacheDir, progress, "headers");
  const { archive } = examined.read;
  const address = options.address ?? archive?.studio.address ?? null;
  const refuse = (problems: readonly Problem[]): Built => {
    progress.finish();
    const faults = sortProblems(problems.filter(isError).map(examined.read.locate));
    tellProblems({ ...examined, problems }, options.archive);
    return { code: exitCodes.faulty, faults, address };
  };
  if (!archive || examined.problems.some(isError)) return refuse(examined.problems);
  progress.stage("prepare the pictures");
  const photographs = await preparePhotographs(options.archive, archive, cacheDir, progress);
  const problems = [...examined.problems, ...photographs.problems];
  if (problems.some(isError)) return refuse(problems);
  progress.stage("link everything");
  const findings = gatherFindings(examined, photographs);
  const sites = chooseSites(withAddress(archive, options.address), findings, options.set);
  const published = await publishSites(sites, siteFolder, {
    stage: progress.stage,
    pictureFile: photographs.fileOf,
  });
  progress.finish();
  const check = asTypedFor(options.archive)("check");
  if (!options.quiet) tellSummary(sites, published, { problems, check }, progress);
  return { code: exitCodes.done, faults: [], address };
}

function isError({ severity }: Problem): boolean {
  return severity === "error";
}

function gatherFindings(
  { problems, chemistry, heats }: Examined,
  { prepared }: Photographs,
): Findings {
  return {
    pictures: prepared,
    chemistry,
    heats,
    notes: notesByFile(problems),
    builtInMaterials: carriedMaterials,
  };
}

function withAddress(archive: Archive, address: string | undefined): Archive {
  return address === undefined ? archive : { ...archive, studio: { ...archive.studio, address } };
}

/** The site of the whole archive with those of its unlisted sets, or of one set alone. */
function chooseSites(archive: Archive, findings: Findings, set: string | undefined): SiteRequest[] {
  if (set !== undefined) {
    const chosen = findById(archive.sets, set);
    if (!chosen) throw new WrongUsage(`There is no set “${set}” in this archive.`);
    const unlisted = chosen.record.listed === false;
    return [{ catalogue: makeCatalogue(onlySet(archive, set), findings, unlisted), under: "" }];
  }
  const whole = makeCatalogue(withoutUnlistedSets(archive), findings);
  const hidden = unlistedSets(archive).flatMap(({ id, record: { link } }) =>
    // The checks let no unlisted set pass without its link.
    link === undefined
      ? []
      : [
          {
            catalogue: makeCatalogue(onlySet(archive, id), findings, true),
            under: unlistedUrl(link),
          },
        ],
  );
  return [{ catalogue: whole, under: "" }, ...hidden];
}

function tellProblems({ read, problems }: Examined, archive: string): void {
  printReport("text", problems.map(read.locate), read.counts, archive);
  console.error("Nothing was written: mend the errors first. The last good site stands as it was.");
}

function tellSummary(
  sites: readonly SiteRequest[],
  { written, carriedOver, searchMade }: Published,
  { problems, check }: { readonly problems: readonly Problem[]; readonly check: string },
  progress: Progress,
): void {
  const [whole] = sites.map((site) => site.catalogue);
  const lines = [
    `${whole ? tellCounts(whole) : ""}: ${written} pages written, ${carriedOver} carried over, search index ${searchMade ? "made" : "carried over"}.`,
    ...sites.flatMap(tellLink),
    ...(problems.length > 0
      ? [`${problems.length} practice notes and warnings: “${check}” tells them.`]
      : []),
    progress
      .times()
      .map(({ name, ms }) => `${name} ${formatDuration(ms)}`)
      .join(", "),
  ];
  console.error(lines.join("\n"));
}

/** Where an unlisted set is: nothing on the site leads there. */
function tellLink({ catalogue: { sets, studio }, under }: SiteRequest): readonly string[] {
  if (under === "") return [];
  const root = studio.address?.replace(/\/*$/u, "/");
  const where = root === undefined ? `${under}/index.html in the site` : `${root}${under}/`;
  return [`${sets[0]?.name ?? "An unlisted set"} is reached by its link alone: ${where}`];
}

function tellCounts({ tiles, glazes, firings }: Catalogue): string {
  return `${tiles.length} tiles, ${glazes.length} glazes, ${firings.length} firings`;
}
