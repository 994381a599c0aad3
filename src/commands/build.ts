/** `tilebook build`: checks the archive and, where it has no error, writes its site. */

import { forgetParsed } from "../archive/forget-parsed.ts";
import { unlistedUrl } from "../catalogue/addresses.ts";
import type { Findings } from "../catalogue/findings.ts";
import { catalogueMaker } from "../catalogue/make.ts";
import { onlySet, unlistedSets, withoutUnlistedSets } from "../catalogue/select.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { notesByFile } from "../checks/notes.ts";
import { carriedMaterials } from "../chemistry/minerals/minerals.ts";
import { pruneOnceADay } from "../photos/prune.ts";
import { type Published, publishSites, type SiteRequest } from "../publish/publish.ts";
import { checkSiteFolder } from "../publish/site-folder.ts";
import type { LocatedProblem } from "../reader/locate.ts";
import { type Archive, findById } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { sortProblems } from "../reporting/located-problem.ts";
import { idKey } from "../terms/ids.ts";
import { asTypedFor } from "./as-typed.ts";
import { type Examined, examineArchive } from "./examine.ts";
import { exitCodes, WrongUsage } from "./failure.ts";
import { cacheFolderOf, type Folders, siteFolderOf } from "./folders.ts";
import { type Photographs, preparePhotographs } from "./photographs.ts";
import { formatDuration, type Progress, startProgress } from "./progress.ts";
import { printReport } from "./report.ts";
import {
  type InTheWay,
  isError,
  type SoundPart,
  wholeArchive,
  wholeIfSound,
  withoutFaulty,
} from "./sound-part.ts";
import { type WaitingLister, waitingLister } from "./waiting.ts";

export interface BuildOptions extends Folders {
  readonly address?: string;
  /** The site of this set alone. */
  readonly set?: string;
  /** Publish what is sound, and say what waits. */
  readonly leaveOutFaulty?: boolean;
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
 * site as it was, unless what is faulty may be left out.
 */
export async function buildSite(options: BuildOptions): Promise<Built> {
  const progress = startProgress(options.quiet);
  const siteFolder = await checkSiteFolder(siteFolderOf(options), options.archive);
  const cacheDir = cacheFolderOf(options);
  forgetParsed(cacheDir);
  const examined = await examineArchive(options.archive, cacheDir, progress, "headers");
  const { read } = examined;
  const address = options.address ?? read.archive?.studio.address ?? null;
  const ready = await makeReady(examined, options, cacheDir, progress);
  progress.stage("link everything");
  if ("inTheWay" in ready) {
    progress.finish();
    tellRefusal(examined, ready.inTheWay, options);
    const faults = sortProblems(ready.inTheWay.filter(isError).map(read.locate));
    return { code: exitCodes.faulty, faults, address };
  }
  const sites = chooseSites(ready, options, waitingOf(examined, ready));
  const published = await publishSites(sites, siteFolder, cacheDir, {
    stage: progress.stage,
    pictureFile: ready.photographs.fileOf,
  });
  await pruneOnceADay(cacheDir);
  progress.finish();
  if (ready.leftOut.length > 0) tellLeftOut(examined, ready, options);
  const check = asTypedFor(options.archive)("check");
  if (!options.quiet) tellSummary(sites, published, { problems: ready.problems, check }, progress);
  return { code: exitCodes.done, faults: [], address };
}

interface Ready extends SoundPart {
  readonly photographs: Photographs;
}

/** Finds what may be published, and prepares its pictures, which may show faults of their own. */
async function makeReady(
  examined: Examined,
  { archive: dir, leaveOutFaulty }: BuildOptions,
  cacheDir: string,
  progress: Progress,
): Promise<Ready | InTheWay> {
  const asTyped = asTypedFor(dir);
  const sound = leaveOutFaulty ? withoutFaulty(examined, asTyped) : wholeIfSound(examined);
  if ("inTheWay" in sound) return sound;
  progress.stage("prepare the pictures");
  const photographs = await preparePhotographs(dir, sound.archive, cacheDir, progress);
  const problems = [...sound.problems, ...photographs.problems];
  const errors = photographs.problems.filter(isError);
  if (errors.length === 0) return { ...sound, problems, photographs };
  const less = leaveOutFaulty ? withoutFaulty(examined, asTyped, errors) : { inTheWay: problems };
  if ("inTheWay" in less) return less;
  const kept = new Set(
    [...less.archive.tiles.values()].flatMap(({ file, pictures }) => [
      file,
      ...pictures.map((picture) => picture.file),
    ]),
  );
  const warnings = photographs.problems.filter(({ file }) => kept.has(file));
  return { ...less, problems: [...less.problems, ...warnings], photographs };
}

function waitingOf({ read }: Examined, { leftOut }: Ready): WaitingLister {
  const { archive } = read;
  return archive ? waitingLister(wholeArchive(read, archive), leftOut, read.locate) : () => [];
}

function gatherFindings({ problems, chemistry, heats, photographs }: Ready): Findings {
  return {
    pictures: photographs.prepared,
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
function chooseSites(
  ready: Ready,
  { address, set }: BuildOptions,
  waiting: WaitingLister,
): SiteRequest[] {
  const archive = withAddress(ready.archive, address);
  const makeCatalogue = catalogueMaker(archive, gatherFindings(ready));
  if (set !== undefined) {
    const chosen = findById(archive.sets, set);
    if (!chosen) throw new WrongUsage(tellNoSet(set, ready));
    const unlisted = chosen.record.listed === false;
    const catalogue = makeCatalogue(onlySet(archive, set), unlisted);
    return [{ catalogue, under: "", waiting: waiting(chosen.id) }];
  }
  const whole = makeCatalogue(withoutUnlistedSets(archive));
  const hidden = unlistedSets(archive).flatMap(({ id, record: { link } }) =>
    // The checks let no unlisted set pass without its link.
    link === undefined
      ? []
      : [
          {
            catalogue: makeCatalogue(onlySet(archive, id), true),
            under: unlistedUrl(link),
            waiting: waiting(id),
          },
        ],
  );
  return [{ catalogue: whole, under: "", waiting: waiting(null) }, ...hidden];
}

function tellNoSet(set: string, { leftOut }: Ready): string {
  const isLeftOut = leftOut.some(({ kind, id }) => kind === "set" && idKey(id) === idKey(set));
  return isLeftOut
    ? `The set “${set}” cannot be published alone: its own record has to be mended first.`
    : `There is no set “${set}” in this archive.`;
}

function tellRefusal(
  { read }: Examined,
  problems: readonly Problem[],
  { archive, leaveOutFaulty }: BuildOptions,
): void {
  printReport("text", problems.map(read.locate), read.counts, archive);
  const why = leaveOutFaulty
    ? "every page rests on what is faulty there, so it cannot be left out: mend it first."
    : "mend the errors first.";
  console.error(`Nothing was written: ${why} The last good site stands as it was.`);
}

/** Tells what waits to whoever builds, who may know all of it. */
function tellLeftOut({ read }: Examined, { leftOut }: Ready, { archive }: BuildOptions): void {
  const faults = leftOut.flatMap((record) => record.faults).map(read.locate);
  printReport("text", faults, read.counts, archive);
  const resting = leftOut.filter((record) => record.faults.length === 0);
  const records = leftOut.filter(({ kind }) => kind !== "file").length;
  console.error(
    [
      `The site was published without ${records} of ${read.recordFiles.length} records.`,
      ...(resting.length > 0
        ? ["Without faults of their own, they wait for what they rest on:"]
        : []),
      ...resting.map(({ file, because }) =>
        because ? `  ${file} waits for the ${because.kind} ${because.id}` : `  ${file}`,
      ),
    ].join("\n"),
  );
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
