/** What of an archive may be published: all of it, or without what is faulty. */
import { leaveOut, type Sound } from "../../leaving-out/leave-out.ts";
import type { LeftOut, WholeArchive } from "../../leaving-out/left-out.ts";
import type { Archive } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import type { TypedCommand } from "../../terms/typed-command.ts";
import { type Examined, type Judged, judgeArchive } from "../examine/examine.ts";

export interface SoundPart extends Judged {
  readonly archive: Archive;
  readonly leftOut: readonly LeftOut[];
}

/** Errors that keep all from being published. */
export interface InTheWay {
  readonly inTheWay: readonly Problem[];
}

/** The archive as it is, where it has no error. */
export function wholeIfSound({ read, ...judged }: Examined): SoundPart | InTheWay {
  const { archive } = read;
  if (!archive || judged.problems.some(isError)) return { inTheWay: judged.problems };
  return { ...judged, archive, leftOut: [] };
}

/**
 * The archive without what is faulty and what rests on that. What is left is checked again, since a
 * rule may find fault with it only now; that is left out too, and so on.
 *
 * @param asTyped how a command is typed, for the hints
 * @param more errors that were found by other means than by `examineArchive`
 */
export function withoutFaulty(
  { read, pictures, ...judged }: Examined,
  asTyped: TypedCommand,
  more: readonly Problem[] = [],
): SoundPart | InTheWay {
  const { archive } = read;
  const errors = [...judged.problems, ...more].filter(isError);
  if (!archive) return { inTheWay: errors };
  if (errors.length === 0) return { ...judged, archive, leftOut: [] };
  const whole = wholeArchive(read, archive);
  const known = new Set(errors.map(identify));
  for (;;) {
    const sound = leaveOut(whole, errors);
    if (!sound) return { inTheWay: errors };
    const again = judgeArchive(sound.archive, pictures, asTyped);
    // Of a picture that is nobody's now its fault is told again: that one is left out already.
    const newErrors = again.problems.filter((p) => isError(p) && !known.has(identify(p)));
    if (newErrors.length === 0) return withWarnings(sound, again, read.problems);
    for (const error of newErrors) known.add(identify(error));
    errors.push(...newErrors);
  }
}

function identify({ file, path, code, message }: Problem): string {
  return JSON.stringify([file, path, code, message]);
}

/** What was found while reading of records that are left out is no longer of interest. */
function withWarnings(
  sound: Sound,
  { problems, ...judged }: Judged,
  ofReading: readonly Problem[],
): SoundPart {
  const out = new Set(sound.leftOut.map(({ file }) => file));
  const warnings = [...ofReading, ...problems].filter((problem) => !isError(problem));
  return { ...sound, ...judged, problems: warnings.filter(({ file }) => !out.has(file)) };
}

/** What is left out of it is reckoned from the whole. */
export function wholeArchive(
  { recordFiles, studioFile, texts }: Examined["read"],
  archive: Archive,
): WholeArchive {
  return { archive, files: recordFiles, studioFile, texts };
}

export function isError({ severity }: Problem): boolean {
  return severity === "error";
}
