/**
 * Tries a load before it is written: the archive is read once as it would be with the load in it, and
 * once without, so that what is told is what the build would say of it, in its words.
 */
import { checkFiring, checkTile } from "../checks/all.ts";
import type { Extra } from "../checks/check.ts";
import { heatOfFirings } from "../firing/of-archive.ts";
import type { ArchiveFiles } from "../reader/archive-files.ts";
import {
  type ReadArchive,
  type ReaderOptions,
  readArchiveFiles,
} from "../reader/read-archive-files.ts";
import { type FieldValue, renderRecord } from "../reader/render-record.ts";
import { withFiles } from "../reader/with-files.ts";
import { type Archive, type Firing, findById, type Tile } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import type { TypedCommand } from "../terms/typed-command.ts";
import { type Caution, fromProblem, warning } from "./caution.ts";
import { controlAbsent } from "./control.ts";
import { running } from "./running.ts";
import { codesOn, type Shelf, shelvesField } from "./shelves.ts";
import { coneUnknown, unjudged } from "./unjudged.ts";
import { wrongLoad } from "./wrong-load.ts";

/** A firing as it would be: what its record says, and what is to stand in it. */
export interface TriedFiring {
  readonly id: string;
  /** Relative to the archive. */
  readonly file: string;
  /** What the record says as it was written, its load list left out. */
  readonly fields: Readonly<Record<string, FieldValue | undefined>>;
  readonly shelves: readonly Shelf[];
}

export interface TriedLoad {
  /** By the code's key: what is to be minded, what stops the build first. Those of which nothing is are left out. */
  readonly ofTiles: ReadonlyMap<string, readonly Caution[]>;
  /** Of the load as a whole. */
  readonly ofLoad: readonly Caution[];
}

export interface TrialNeeds {
  readonly files: ArchiveFiles;
  readonly reader: ReaderOptions;
  readonly asTyped: TypedCommand;
}

/** Rules that matter to whoever fills a kiln, whether or not this load brought it about. */
const alwaysTold: readonly string[] = [
  ...["programme-too-hot", "runs-off", "resist-not-peeled", "onglaze-too-early"],
];

/**
 * Tries a load.
 *
 * @returns undefined where studio.yaml cannot be read
 */
export function tryLoad(firing: TriedFiring, needs: TrialNeeds): TriedLoad | undefined {
  const [without, within] = [[], firing.shelves].map((shelves) => readWith(firing, shelves, needs));
  if (!without?.archive || !within?.archive) return undefined;
  const codes = [...new Map(codesOn(firing.shelves).map((code) => [idKey(code), code])).values()];
  const [before, after] = [without, within].map((read) => judge(read, firing, codes, needs));
  const known = new Set([...(before?.problems ?? [])].map(keyOf));
  const fresh = (after?.problems ?? []).filter(
    (problem) => alwaysTold.includes(problem.code) || !known.has(keyOf(problem)),
  );
  const loaded = findById(within.archive.firings, firing.id);
  const ofTiles = new Map<string, readonly Caution[]>();
  for (const code of codes) {
    const told = cautionsOf(within.archive, code, loaded, problemsOf(code, fresh, firing));
    if (told.length > 0) ofTiles.set(idKey(code), told);
  }
  const placed = new Set(codes.flatMap((code) => problemsOf(code, fresh, firing)));
  return {
    ofTiles,
    ofLoad: [
      ...fresh.filter((problem) => !placed.has(problem)).map(fromProblem),
      ...(loaded ? [...coneUnknown(loaded), ...controlAbsent(within.archive, loaded, codes)] : []),
    ],
  };
}

/** Every code is an entry of its own, so that a problem at an entry is one of that code. */
function readWith(
  { file, fields }: TriedFiring,
  shelves: readonly Shelf[],
  { files, reader }: TrialNeeds,
): ReadArchive {
  const text = renderRecord({ ...fields, tiles: shelvesField(shelves, (codes) => codes) });
  return readArchiveFiles(withFiles(files, new Map([[file, text]])), reader);
}

/** What is wrong with the firing and with the tiles in it. */
function judge(
  { archive, problems }: ReadArchive,
  { id, file }: TriedFiring,
  codes: readonly string[],
  { asTyped }: TrialNeeds,
): { readonly problems: readonly Problem[] } {
  if (!archive) return { problems: [] };
  const firing = findById(archive.firings, id);
  const tiles = codes.flatMap((code) => findById(archive.tiles, code) ?? []);
  const about = new Set([file, ...tiles.map((tile) => tile.file)]);
  const extra = extraFor(archive, firing, asTyped);
  return {
    problems: [
      ...problems.filter((problem) => about.has(problem.file)),
      ...(firing ? checkFiring(archive, firing, extra) : []),
      ...tiles.flatMap((tile) => checkTile(archive, tile, extra)),
    ],
  };
}

/** Pictures and chemistry have no part in it, and of the firings only this one is worked out. */
function extraFor(archive: Archive, firing: Firing | undefined, asTyped: TypedCommand): Extra {
  const firings = new Map(firing ? [[idKey(firing.id), firing] as const] : []);
  return {
    pictures: new Map(),
    withoutChemistry: new Map(),
    heats: heatOfFirings({ ...archive, firings }),
    asTyped,
  };
}

function keyOf({ code, file, message }: Problem): string {
  return JSON.stringify([code, file, message]);
}

/** Problems in the tile's own file, or at its entry in the load list. */
function problemsOf(
  code: string,
  problems: readonly Problem[],
  { file, shelves }: TriedFiring,
): readonly Problem[] {
  return problems.filter((problem) => {
    const [field, shelf, entry] = problem.path;
    if (problem.file !== file)
      return idKey(problem.file.slice(problem.file.lastIndexOf("/") + 1)) === idKey(`${code}.md`);
    const named = shelves.find(({ name }) => name === shelf)?.codes[Number(entry)];
    return field === "tiles" && named !== undefined && idKey(named) === idKey(code);
  });
}

function cautionsOf(
  archive: Archive,
  code: string,
  firing: Firing | undefined,
  problems: readonly Problem[],
): readonly Caution[] {
  const tile = findById(archive.tiles, code);
  const own = tile && firing ? ownCautions(archive, tile, firing) : [];
  const told = [...problems.map(fromProblem), ...own, ...(tile ? [] : noRecord(code, problems))];
  return told.sort((a, b) => Number(b.severity === "error") - Number(a.severity === "error"));
}

function ownCautions(archive: Archive, tile: Tile, firing: Firing): readonly Caution[] {
  return [
    ...wrongLoad(archive, tile, firing),
    ...unjudged(archive, tile, firing),
    ...running(archive, tile, firing),
  ];
}

/** A code that a set reserved, or one whose record has faults. */
function noRecord(code: string, problems: readonly Problem[]): readonly Caution[] {
  if (problems.some(({ severity }) => severity === "error")) return [];
  return [
    warning(
      "no-record",
      `${code} has no record that can be read, so nothing about it could be checked`,
      "Write its record before the kiln is lit: at least its clay and its glazes.",
    ),
  ];
}
