/** The files of a request that are no part of the archive. */
import { isOfArchive, isPassedOver } from "../reader/passed-over.ts";
import type { Changes, FileChange } from "./types.ts";

/**
 * The files outside the archive, what may run first. What nobody told git of, such as the pictures
 * that a build remembers, is no part of what is merged.
 *
 * @param files relative to the repository
 * @param prefix the archive's folder in the repository, with `/` at its end; empty for its root
 */
export function filesOutside(files: readonly FileChange[], prefix: string): Changes["outside"] {
  const outside = files
    .filter(({ inGit }) => inGit)
    .filter(
      ({ file, from }) => isOutside(file, prefix) || (from !== null && isOutside(from, prefix)),
    )
    .map((change) => ({
      ...change,
      mayRun: [change.file, change.from ?? change.file].some(mayRun),
    }));
  return [...outside.filter((each) => each.mayRun), ...outside.filter((each) => !each.mayRun)];
}

function isOutside(file: string, prefix: string): boolean {
  if (!file.startsWith(prefix)) return true;
  const within = file.slice(prefix.length);
  return !isOfArchive(within) || within.split("/").some(isPassedOver);
}

/** What is read and not run, by its ending: anything else may have to do with how a site is made. */
const harmless = /(?:\.(?:md|txt|csv|jpe?g|png|webp|avif|tiff?|hei[cf])|(?:^|\/)licen[cs]e)$/iu;

/**
 * Whether a file may change what runs when a site is checked or published. A folder that begins with
 * a full stop belongs to a program, whatever is in it.
 */
function mayRun(file: string): boolean {
  return /(?:^|\/)\./u.test(file) || !harmless.test(file);
}
