/** Codes that two requests want: the one that came first has it. */
import { nextFreeCode } from "../records/next-block.ts";
import { type TilesAndSets, type WhyTaken, whyTaken } from "../records/next-code.ts";
import { idKey } from "../terms/ids.ts";
import type { KnownFile } from "./side.ts";
import type { ClaimedCode } from "./types.ts";

/** A file that an open, earlier request adds. */
export interface Claim {
  /** The request's number. */
  readonly request: string;
  /** Relative to the archive. */
  readonly file: string;
}

/** A list of claims, and how many of its lines could not be read. */
export interface Claims {
  readonly claims: readonly Claim[];
  readonly unread: number;
}

/** So many lines of a list are read: more files than all open requests of a studio add. */
const mostLines = 20_000;

/**
 * Reads `NUMBER<TAB>PATH` lines.
 *
 * @param prefix the archive's folder in the repository; files outside it claim nothing
 */
export function readClaims(text: string, prefix: string): Claims {
  const lines = text.split(/\r?\n/u).filter((line) => line !== "");
  const read = lines.slice(0, mostLines).map((line) => /^(\d{1,9})\t(.+)$/u.exec(line));
  return {
    claims: read.flatMap((found) => {
      const [, request = "", path = ""] = found ?? [];
      return found && path.startsWith(prefix) ? [{ request, file: path.slice(prefix.length) }] : [];
    }),
    unread: lines.length - read.filter((found) => found !== null).length,
  };
}

/** The code of a tile's record, by its file; undefined for any other file. */
function codeOf(file: string): string | undefined {
  const [first = "", ...rest] = file.split("/");
  const name = rest.at(-1) ?? "";
  const isTile = idKey(first) === "tiles" && rest.length <= 2 && /\.md$/iu.test(name);
  const code = name.slice(0, -".md".length).normalize("NFC");
  const isOther = idKey(name) === "set.md" || idKey(rest[0] ?? "") === "firings";
  return isTile && !isOther ? code : undefined;
}

/**
 * The codes of new tiles that earlier requests claim, each with the next one that is free in the
 * archive, in those requests and in this one.
 *
 * @param archive with this request
 * @param files every record's file, read or not
 * @param added the new tiles' files
 */
export function claimedCodes(
  archive: TilesAndSets,
  files: readonly KnownFile[],
  added: readonly { readonly id: string; readonly set: string | null }[],
  claims: readonly Claim[],
): readonly ClaimedCode[] {
  const claimedBy = new Map<string, string>();
  for (const { request, file } of claims) {
    const key = idKey(codeOf(file) ?? "");
    if (key !== "" && !claimedBy.has(key)) claimedBy.set(key, request);
  }
  const given = new Set<string>();
  return added.flatMap(({ id, set }) => {
    const request = claimedBy.get(idKey(id));
    if (request === undefined) return [];
    const taken = takenFinder(whyTaken(archive, files, set), [claimedBy, given]);
    const next = nextFreeCode(archive, id, set, taken) ?? null;
    if (next !== null) given.add(idKey(next));
    return [{ code: id, request, next }];
  });
}

function takenFinder(taken: WhyTaken, others: readonly { has(key: string): boolean }[]): WhyTaken {
  return (code) =>
    taken(code) ?? (others.some((other) => other.has(idKey(code))) ? "it is claimed" : undefined);
}
