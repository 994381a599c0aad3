/** `tilebook build`: checks the archive and, where it has no error, writes its site. */
import { forgetParsed } from "../../archive/forget-parsed.ts";
import { unlistedUrl } from "../../catalogue/addresses.ts";
import type { Findings } from "../../catalogue/findings.ts";
import { catalogueMaker } from "../../catalogue/make.ts";
import { onlySet, unlistedSets, withoutUnlistedSets } from "../../catalogue/select.ts";
import { tilesOfSet } from "../../catalogue/shared.ts";
import type { Alone } from "../../catalogue/studio.ts";
import { notesByFile } from "../../checks/notes.ts";
import { carriedMaterials } from "../../chemistry/minerals/minerals.ts";
import { type Published, publishSites } from "../../publish/publish.ts";
import { checkSiteFolder } from "../../publish/site-folder.ts";
import type { SiteRequest } from "../../publish/site-request.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { sortProblems } from "../../reporting/located-problem.ts";
import { idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Examined, examineArchive } from "../examine/examine.ts";
import { type Photographs, preparePhotographs } from "../examine/photographs.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { cacheFolderOf, type Folders, siteFolderOf } from "../folders.ts";
import { type Progress, startProgress } from "../progress.ts";
import { tellLeftOut, tellNoDates, tellRefusal, tellSummary } from "./build-words.ts";
import { askGit, whyNoDates } from "./git-said.ts";
import { readWritten, recordHistories } from "./record-histories.ts";
import {
  type InTheWay,
  isError,
  type SoundPart,
  wholeArchive,
  wholeIfSound,
  withoutFaulty,
} from "./sound-part.ts";
import { tidyCache } from "./tidy-cache.ts";
import { type WaitingLister, waitingLister } from "./waiting.ts";

export interface BuildOptions extends Folders {
  readonly address?: string;
  /** The site of this set alone. */
  readonly set?: string;
  /** Publish what is sound, and say what waits. */
  readonly leaveOutFaulty?: boolean;
  readonly quiet: boolean;
}

/** What a build is about to write, or what keeps it from writing anything. */
export type Linked = {
  /** Where the site will be published; null where nobody says, or it could not be read. */
  readonly address: string | null;
} & (Refused | ReadyToWrite);

interface Refused {
  readonly sites: null;
  readonly faults: readonly LocatedProblem[];
  /** Tells the faults on standard error. */
  readonly tell: () => void;
}

interface ReadyToWrite {
  readonly sites: readonly SiteRequest[];
  /** Where a prepared picture lies, by the address it has on the site. */
  readonly pictureFile: (url: string) => string;
  /** Writes the sites in the place of the last, and tells what was done. */
  readonly write: () => Promise<Published>;
}

/**
 * Builds the site of an archive, and gives the exit code. An archive with errors writes nothing and
 * leaves the last good site as it was, unless what is faulty may be left out.
 */
export async function build(options: BuildOptions): Promise<number> {
  const linked = await linkSites(options);
  if (linked.sites === null) {
    linked.tell();
    return exitCodes.faulty;
  }
  await linked.write();
  return exitCodes.done;
}

/** Which sites are made of an archive that may be published. */
export type ChooseSites = (ready: Marked, waiting: WaitingLister) => readonly SiteRequest[];

/**
 * Reads, checks and links all that a site is made of, and writes nothing of it yet.
 *
 * @param choose which sites those are; as the options say if left out
 */
export async function linkSites(
  options: BuildOptions,
  choose: ChooseSites = (ready, waiting) => chooseSites(ready, options, waiting),
): Promise<Linked> {
  const progress = startProgress(options.quiet);
  const siteFolder = await checkSiteFolder(siteFolderOf(options), options.archive);
  const cacheDir = cacheFolderOf(options);
  forgetParsed(cacheDir);
  const asked = askGit(options.archive);
  const examined = await examineArchive(options.archive, cacheDir, progress, "headers");
  const { read } = examined;
  const address = options.address ?? read.archive?.studio.address ?? null;
  const ready = await makeReady(examined, options, cacheDir, progress);
  progress.stage("link everything");
  if ("inTheWay" in ready) {
    progress.finish();
    const faults = sortProblems(ready.inTheWay.filter(isError).map(read.locate));
    const tell = () => tellRefusal(examined, ready.inTheWay, options);
    return { sites: null, faults, address, tell };
  }
  const { mark } = examined;
  const said = await asked;
  const history = recordHistories(said, read, ready.archive, options.archive);
  const written = await readWritten(options.archive, history, ready.archive);
  const chosen = choose({ ...ready, mark, history, written }, waitingOf(examined, ready));
  const sites = chosen.map((site) => ({ ...site, mark: mark?.bytes }));
  const pictureFile = ready.photographs.fileOf;
  const write = async () => {
    const effects = { stage: progress.stage, pictureFile };
    const published = await publishSites(sites, siteFolder, cacheDir, effects);
    await tidyCache(cacheDir, ready.photographs.used);
    progress.finish();
    tellNoDates(whyNoDates(said), options.quiet);
    if (ready.leftOut.length > 0) tellLeftOut(examined, ready.leftOut, options.archive);
    const check = asTypedFor(options.archive)("check");
    if (!options.quiet)
      tellSummary(sites, published, { problems: ready.problems, check }, progress);
    return published;
  };
  return { sites, address, pictureFile, write };
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

/** What is published, with the studio's mark and what git knows of the records. */
export type Marked = Ready & Pick<Examined, "mark"> & Pick<Findings, "history" | "written">;

/** What the catalogue is told of an archive besides its records. */
export function gatherFindings({
  problems,
  chemistry,
  heats,
  photographs,
  mark,
  history,
  written,
}: Marked): Findings {
  return {
    pictures: photographs.prepared,
    chemistry,
    heats,
    notes: notesByFile(problems),
    mark,
    builtInMaterials: carriedMaterials,
    history,
    written,
  };
}

function withAddress(archive: Archive, address: string | undefined): Archive {
  return address === undefined ? archive : { ...archive, studio: { ...archive.studio, address } };
}

/** The site of the whole archive with those of its unlisted sets, or of one set alone. */
function chooseSites(
  ready: Marked,
  { address, set }: BuildOptions,
  waiting: WaitingLister,
): SiteRequest[] {
  const archive = withAddress(ready.archive, address);
  const makeCatalogue = catalogueMaker(archive, gatherFindings(ready));
  if (set !== undefined) {
    const chosen = findById(archive.sets, set);
    if (!chosen) throw new WrongUsage(tellNoSet(set, ready));
    const unlisted = chosen.record.listed === false;
    const catalogue = makeCatalogue(onlySet(archive, set), aloneOf(archive, set, unlisted));
    return [{ catalogue, under: "", waiting: waiting(chosen.id) }];
  }
  const whole = makeCatalogue(withoutUnlistedSets(archive));
  const hidden = unlistedSets(archive).flatMap(({ id, record: { link } }) =>
    // The checks let no unlisted set pass without its link.
    link === undefined
      ? []
      : [
          {
            catalogue: makeCatalogue(onlySet(archive, id), aloneOf(archive, id, true)),
            under: unlistedUrl(link),
            waiting: waiting(id),
          },
        ],
  );
  return [{ catalogue: whole, under: "", waiting: waiting(null) }, ...hidden];
}

function aloneOf(archive: Archive, set: string, unlisted: boolean): Alone {
  return { unlisted, tiles: tilesOfSet(archive, set).length, forFamilies: false };
}

/** Why a set cannot be published: there is none of that id, or its record was left out. */
export function tellNoSet(set: string, { leftOut }: Pick<Ready, "leftOut">): string {
  const isLeftOut = leftOut.some(({ kind, id }) => kind === "set" && idKey(id) === idKey(set));
  return isLeftOut
    ? `The set “${set}” cannot be published alone: its own record has to be mended first.`
    : `There is no set “${set}” in this archive.`;
}
