/** `tilebook changes`: what a request does to the archive, as a teacher wants to read it in her mail. */
import { readFileSync } from "node:fs";
import { sayChanges } from "../../../templates/words/changes/whole.ts";
import { type Claim, readClaims } from "../../changes/claims.ts";
import { findChanges } from "../../changes/find-changes.ts";
import { ownProblems } from "../../changes/own-problems.ts";
import type { Side } from "../../changes/side.ts";
import { makeVersion } from "../../changes/version.ts";
import { notesByFile } from "../../checks/notes.ts";
import { carriedMaterials } from "../../chemistry/minerals/minerals.ts";
import { onMachine } from "../../disk/machine-error.ts";
import type { LeftOut } from "../../leaving-out/left-out.ts";
import { renderSummary } from "../../reporting/markdown/render-summary.ts";
import { renderChangesJson } from "../../reporting/render-changes-json.ts";
import { asTypedFor } from "../as-typed.ts";
import { withoutFaulty } from "../build/sound-part.ts";
import { somebodyFinder } from "../build/waiting.ts";
import { type Examined, examineArchive } from "../examine/examine.ts";
import { examineBefore } from "../examine/examine-before.ts";
import { openRequest } from "../examine/request.ts";
import { exitCodes } from "../failure.ts";
import { cacheFolderOf } from "../folders.ts";
import { startProgress } from "../progress.ts";
import { pictureAddresses, picturesRoot } from "./picture-addresses.ts";

export interface ChangesOptions {
  readonly archive: string;
  readonly cache?: string;
  /** The branch, tag or commit that the request is compared with. */
  readonly since: string;
  readonly format: "json" | "markdown";
  /** The address under which the repository's files can be read, with `/` at its end. */
  readonly pictures?: string;
  /** A file with what open, earlier requests add. */
  readonly claimed?: string;
}

/**
 * Prints the summary of a request; an archive with errors has one too, of what is sound.
 *
 * @throws WrongUsage where there is nothing to compare with
 */
export async function changes(options: ChangesOptions): Promise<number> {
  const { archive, since, format } = options;
  const pictures = options.pictures === undefined ? undefined : picturesRoot(options.pictures);
  const request = await openRequest(archive, since);
  const { prefix } = request.repository;
  const claims = claimsOf(options.claimed, prefix);
  const progress = startProgress(process.stderr.isTTY !== true);
  const look = { opened: request.changed };
  const now = await examineArchive(archive, cacheFolderOf(options), progress, look);
  const then = await examineBefore(request, archive, now);
  progress.finish();
  const [after, before] = [sideOf(now, archive), sideOf(then, archive)];
  const problems = now.problems.map(now.read.locate);
  const found = findChanges({
    ...{ files: request.files, prefix, problems, claims },
    before: before.side,
    after: after.side,
    isOwn: ownProblems(then.problems, request.changed, problems),
    namesSomebody: somebodyFinder(now.read.archive?.studio.makers),
    leftOut: after.leftOut,
    leftOutBefore: new Set(before.leftOut.map(({ file }) => file)),
  });
  if (format === "json") {
    console.log(renderChangesJson(found));
    return exitCodes.done;
  }
  const studio = now.read.archive?.studio;
  const pictureAddress = await pictureAddresses(request, pictures, studio?.repository);
  console.log(renderSummary(sayChanges(found), { pictureAddress }));
  return exitCodes.done;
}

interface SoundSide {
  readonly side: Side;
  readonly leftOut: readonly LeftOut[];
}

function sideOf(examined: Examined, dir: string): SoundSide {
  const files = examined.read.recordFiles;
  const sound = withoutFaulty(examined, asTypedFor(dir));
  if ("inTheWay" in sound) return { side: { version: null, files }, leftOut: [] };
  const { archive, chemistry, heats, problems } = sound;
  const findings = {
    ...{ chemistry, heats, pictures: new Map(), builtInMaterials: carriedMaterials },
    notes: notesByFile(problems),
  };
  return { side: { version: makeVersion(archive, findings), files }, leftOut: sound.leftOut };
}

function claimsOf(file: string | undefined, prefix: string): readonly Claim[] {
  if (file === undefined) return [];
  const { claims, unread } = readClaims(
    onMachine("read", file, () => readFileSync(file, "utf8")),
    prefix,
  );
  if (unread > 0)
    console.error(
      `${unread} of the lines of ${file} could not be read: each is a request's number, a tab and a path.`,
    );
  return claims;
}
