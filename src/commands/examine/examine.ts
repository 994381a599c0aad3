/** Reads an archive and finds everything that is wrong with it: what `check` and `build` share. */
import { readArchive } from "../../archive/read-archive.ts";
import { runChecks } from "../../checks/all.ts";
import type { PictureInspection } from "../../checks/check.ts";
import { tellStrayPictures } from "../../checks/stray-picture.ts";
import { chemistryOfGlazes, type GlazeChemistryResult } from "../../chemistry/glazes.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import { tellReasons } from "../../chemistry/why-no-chemistry.ts";
import { heatOfFirings } from "../../firing/of-archive.ts";
import type { FiringHeat } from "../../firing/of-record.ts";
import { findStrayPictures } from "../../photos/find-strays.ts";
import type { Mark } from "../../photos/mark/mark.ts";
import type { ReadArchive } from "../../reader/read-archive-files.ts";
import type { Archive, Tile } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import { keepSureMends } from "../../records/sure-mends.ts";
import type { TypedCommand } from "../../terms/typed-command.ts";
import { asTypedFor } from "../as-typed.ts";
import { keepEditorFiles } from "../editors/editor-files.ts";
import type { Progress } from "../progress.ts";
import { inspectPictures, openPictures } from "./look-at-pictures.ts";
import { examineMark } from "./mark.ts";
import { checkOwnWords } from "./own-words.ts";

/** What follows from the records of an archive, and what is wrong with them. */
export interface Judged {
  readonly problems: readonly Problem[];
  /** By `idKey` of the glaze. */
  readonly chemistry: ReadonlyMap<string, GlazeChemistryResult>;
  /** By `idKey` of the firing. */
  readonly heats: ReadonlyMap<string, FiringHeat>;
}

export interface Examined extends Judged {
  readonly read: ReadArchive;
  /** Of every picture, by its file. */
  readonly pictures: ReadonlyMap<string, PictureInspection>;
  /** The studio's mark, where it has one that can be published. */
  readonly mark?: Mark | undefined;
}

/**
 * Examines a whole archive.
 *
 * @param cacheDir where pictures are remembered
 * @param look how closely the pictures are looked at: a build, which opens them all to prepare
 *   them, needs no more than their headers, and a request no more than its own opened
 * @param unsaved files as they are in an editor, in place of what the disk has of them
 * @throws where the machine fails; what is wrong with the archive is among the problems
 */
export async function examineArchive(
  dir: string,
  cacheDir: string,
  progress: Progress,
  look: "headers" | "opened" | { readonly opened: ReadonlySet<string> },
  unsaved: ReadonlyMap<string, string> = new Map(),
): Promise<Examined> {
  progress.stage("read the archive");
  const read = await readArchive(dir, { builtInMaterials: carriedWords, unsaved });
  const { archive } = read;
  if (unsaved.size === 0) keepEditorFiles(dir, archive);
  const asTyped = asTypedFor(dir);
  if (!archive)
    return {
      ...{ read, problems: tellMends(read.problems, asTyped) },
      ...{ pictures: new Map(), chemistry: new Map(), heats: new Map() },
    };
  progress.stage("look at the pictures");
  const inspected = await inspectPictures(dir, read.pictures, cacheDir, progress);
  const pictures =
    look === "headers"
      ? inspected
      : await openPictures(dir, picturesOf(archive, look), inspected, cacheDir, progress);
  progress.stage("check every record");
  const judged = judgeArchive(archive, pictures, asTyped);
  const { mark, problems: ofMark } = await examineMark(
    dir,
    archive,
    read.studioFile ?? "studio.yaml",
  );
  const strays = await findStrayPictures(dir, new Set(read.pictures));
  const found = [
    ...withoutStrays(read.problems, strays),
    ...tellStrayPictures(strays),
    ...ofMark,
    ...judged.problems,
    ...(await checkOwnWords(archive)),
  ];
  const problems = tellMends(found, asTyped);
  return { ...judged, read, pictures, mark, problems };
}

/** The tiles whose pictures are opened: those of all files, or of some. */
function picturesOf(
  { tiles }: Archive,
  look: "opened" | { readonly opened: ReadonlySet<string> },
): readonly Tile[] {
  const all = [...tiles.values()];
  if (look === "opened") return all;
  return all.map((tile) => ({
    ...tile,
    pictures: tile.pictures.filter(({ file }) => look.opened.has(file)),
  }));
}

/** Works out chemistry and heat, and checks every record; reads nothing. */
export function judgeArchive(
  archive: Archive,
  pictures: Examined["pictures"],
  asTyped: TypedCommand,
): Judged {
  const chemistry = chemistryOfGlazes(archive);
  const heats = heatOfFirings(archive);
  const extra = {
    pictures,
    withoutChemistry: withoutChemistry(archive, chemistry),
    heats,
    asTyped,
  };
  return { problems: runChecks(archive, extra), chemistry, heats };
}

/** What is told of a stray picture says more than that its file was not expected. */
function withoutStrays(
  problems: readonly Problem[],
  strays: readonly string[],
): readonly Problem[] {
  const told = new Set(strays);
  return problems.filter(({ code, file }) => code !== "unexpected-file" || !told.has(file));
}

/** The problems with those mends that are sure, and the command that carries them out. */
function tellMends(problems: readonly Problem[], asTyped: TypedCommand): readonly Problem[] {
  return keepSureMends(problems).map((problem) =>
    problem.mend
      ? { ...problem, hint: `${problem.hint} “${asTyped("check --fix")}” does this.` }
      : problem,
  );
}

/**
 * Why glazes that were mixed here have no chemistry; of a bought one nobody expects it, and a
 * recipe's unknown materials are told where they are named.
 */
function withoutChemistry(
  archive: Archive,
  chemistry: ReadonlyMap<string, GlazeChemistryResult>,
): ReadonlyMap<string, string> {
  return new Map(
    [...chemistry].flatMap(([key, result]) =>
      result.ok ||
      result.reasons.some(({ code }) => code === "bought" || code === "blended-by-volume") ||
      (archive.glazes.get(key)?.record.ingredients !== undefined &&
        result.reasons.every(({ code }) => code === "no-such-material"))
        ? []
        : [[key, tellReasons(result.reasons)] as const],
    ),
  );
}
