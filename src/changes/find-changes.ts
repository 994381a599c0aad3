/** Everything that a request does to an archive. */
import type { LeftOut } from "../leaving-out/left-out.ts";
import type { LocatedProblem } from "../reader/locate.ts";
import { isOfArchive } from "../reader/passed-over.ts";
import type { Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { type Claim, claimedCodes } from "./claims.ts";
import { exposedBy } from "./exposed.ts";
import { glazesOfRequest } from "./glazes.ts";
import { filesOutside } from "./outside.ts";
import type { IsOwn } from "./own-problems.ts";
import { goneRecords, recordsOfRequest } from "./records.ts";
import type { KnownFile, Side } from "./side.ts";
import { tilesOfRequest } from "./tiles.ts";
import type { Changes, CheckFacts, FileChange, ToldProblem, UntoldRecord } from "./types.ts";

export interface RequestFound {
  readonly before: Side;
  readonly after: Side;
  /** Relative to the repository. */
  readonly files: readonly FileChange[];
  /** The archive's folder in the repository, with `/` at its end; empty for its root. */
  readonly prefix: string;
  /** All that is wrong now, and which of it belongs to the request. */
  readonly problems: readonly LocatedProblem[];
  readonly isOwn: IsOwn;
  /** Whether a problem's words name somebody, so that they are not repeated. */
  readonly namesSomebody: (problem: LocatedProblem) => boolean;
  readonly leftOut: readonly LeftOut[];
  /** Files of records that were left out before, too. */
  readonly leftOutBefore: ReadonlySet<string>;
  readonly claims: readonly Claim[];
}

export function findChanges(found: RequestFound): Changes {
  const told = toldChanges(found);
  return { ...told, rest: restOf(found, told) };
}

/** What no part of the summary speaks of, so that nothing is passed over; nothing where nobody could read the archive. */
function restOf(found: RequestFound, told: Omit<Changes, "rest">): readonly FileChange[] {
  if (found.after.version === null) return [];
  const { outside, tiles, glazes, records, gone, untold } = told;
  const changed = new Set(records.map(({ file }) => file));
  const known = new Set([
    ...[...glazes, ...records].map(({ file }) => file),
    ...tiles.flatMap(({ source, was }) => [source, ...(was ? [was.source] : [])].flatMap(filesOf)),
    ...[found.before, found.after].flatMap((side) => logsOf(side, changed)),
    ...outside.map(({ file }) => file.slice(found.prefix.length)),
  ]);
  // With a record its photographs are gone, or wait.
  const stems = new Set([...gone, ...untold].map(({ file }) => stemOf(file)));
  return filesWithin(found.files, found.prefix).filter(
    ({ file }) => isOfArchive(file) && !known.has(file) && !stems.has(stemOf(file)),
  );
}

function logsOf({ version }: Side, of: ReadonlySet<string>): readonly string[] {
  const firings = [...(version?.archive.firings.values() ?? [])];
  return firings.flatMap(({ file, log }) => (log && of.has(file) ? [log.file] : []));
}

/** `tiles/TB-014` for `tiles/TB-014.md` and for `tiles/TB-014.detail.jpg`. */
function stemOf(file: string): string {
  const [name = ""] = file.slice(file.lastIndexOf("/") + 1).split(".");
  return file.slice(0, file.lastIndexOf("/") + 1) + name;
}

function filesOf({ file, pictures }: Tile): readonly string[] {
  return [file, ...pictures.map((picture) => picture.file)];
}

function toldChanges(found: RequestFound): Omit<Changes, "rest"> {
  const { before, after, files, prefix, claims } = found;
  const within = filesWithin(files, prefix);
  const version = after.version;
  const { tiles, besides, movedOn } = version
    ? tilesOfRequest(before, version, within)
    : { tiles: [], besides: [], movedOn: new Set<string>() };
  const added = newCodes(before.files, after.files);
  return {
    outside: filesOutside(files, prefix),
    exposed: version
      ? exposedBy(before.version?.archive ?? null, version.archive)
      : { makers: 0, sets: [] },
    check: checkFacts(found),
    claimed: version ? claimedCodes(version.archive, after.files, added, claims) : [],
    untold: found.leftOut.filter(isOfRequest(within, found.leftOutBefore)).map(untold),
    tiles,
    glazes: version ? glazesOfRequest(before.version, version) : [],
    records: version ? recordsOfRequest(before.version?.archive ?? null, version.archive) : [],
    gone: goneRecords(before.files, after.files, movedOn),
    besides,
  };
}

/** The new tiles, read or not, each with the folder that it is in, which is its set's id. */
function newCodes(before: readonly KnownFile[], after: readonly KnownFile[]) {
  const known = new Set(before.filter(isTile).map(({ id }) => idKey(id)));
  return after
    .filter((file) => isTile(file) && !known.has(idKey(file.id)))
    .map(({ id, file }) => ({ id, set: file.split("/").slice(1, -1)[0] ?? null }));
}

function isTile({ kind }: KnownFile): boolean {
  return kind === "tile";
}

function filesWithin(files: readonly FileChange[], prefix: string): readonly FileChange[] {
  return files.flatMap((change) => {
    const { file, from } = change;
    if (!file.startsWith(prefix)) return [];
    const was = from?.startsWith(prefix) ? from.slice(prefix.length) : null;
    return [{ ...change, file: file.slice(prefix.length), from: was }];
  });
}

function checkFacts({ problems, isOwn, namesSomebody }: RequestFound): CheckFacts {
  const told = (problem: LocatedProblem): ToldProblem => {
    const { code, file, line, severity, message, hint } = problem;
    const isNaming = namesSomebody(problem);
    const words = isNaming ? { message: null, hint: "" } : { message, hint };
    return { code, file, line, severity, ...words };
  };
  const errors = problems.filter(({ severity }) => severity === "error");
  const warnings = problems.filter(({ severity }) => severity === "warning");
  const own = errors.filter(isOwn);
  return {
    errors: [...own, ...errors.filter((error) => !isOwn(error))].map(told),
    warnings: warnings.filter(isOwn).map(told),
    olderErrors: errors.length - own.length,
    olderWarnings: warnings.filter((warning) => !isOwn(warning)).length,
  };
}

/** What was left out before, and is not touched, is no matter of the request. */
function isOfRequest(
  within: readonly FileChange[],
  before: ReadonlySet<string>,
): (record: LeftOut) => boolean {
  const changed = new Set(within.map(({ file }) => file));
  return ({ file }) => changed.has(file) || !before.has(file);
}

function untold({ id, file, because }: LeftOut): UntoldRecord {
  return { id, file, because: because && { kind: because.kind, id: because.id } };
}
