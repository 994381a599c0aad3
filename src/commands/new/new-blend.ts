/**
 * `tilebook new --blend`: the records of a whole blend, and a weighing sheet for it. The sheet goes
 * to standard output alone, since an archive's folders hold records and nothing else: it can be
 * read, sent to a printer or put into a file.
 */
import { folderFiles } from "../../archive/folder-files.ts";
import { type NewFile, writeNew } from "../../archive/write-new.ts";
import { type BlendShape, endsOfShape } from "../../chemistry/blend-points.ts";
import { chemistryOfGlazes } from "../../chemistry/glazes.ts";
import { tellReasons } from "../../chemistry/why-no-chemistry.ts";
import { findFiles } from "../../reader/find-files.ts";
import { type Archive, type Filed, findById } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { freeCodes, type WhyTaken, whyTaken } from "../../records/next-code.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import type { Ask } from "../ask.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { whyNotDone } from "../not-done.ts";
import { findNamed, liesIn, openArchive } from "../open-archive.ts";
import { type BlendOrder, planCodes, planGlazes } from "./new-blend-plan.ts";
import { renderBlendFiles, type TilePlace } from "./new-blend-records.ts";
import { renderBlendSheet } from "./new-blend-sheet.ts";

export interface NewBlendOptions {
  readonly archive: string;
  readonly blend: BlendShape;
  /** Ids of the ends or corners. */
  readonly of?: readonly string[];
  readonly by: "volume" | "weight";
  readonly steps: number;
  /** The first code, or the whole range. */
  readonly codes?: string;
  readonly set?: string;
  readonly clay?: string;
  readonly batch: number;
  readonly dryRun: boolean;
}

/**
 * Writes the glazes and the tiles of a blend. Nothing is written over; where anything stands in the
 * way, nothing is written at all.
 *
 * @param ask asks for what the options leave out; undefined where nobody is there to answer
 */
export async function newBlend(options: NewBlendOptions, ask: Ask | undefined): Promise<number> {
  const archive = await openArchive(options.archive, isInTheWay);
  if (!archive) return exitCodes.faulty;
  const order = await chooseOrder(archive, options, ask);
  const glazes = planGlazes(archive, order);
  const written = options.codes ?? (await askFor(ask, "codes", "The first tile's code?"));
  const title = titleOf(order);
  const place = choosePlace(archive, options.set, title);
  const taken = codeTaken(archive, options.archive, place);
  const free = place.kind === "set" ? freeCodes(place.set.record, taken) : [];
  const codes = planCodes(written, glazes.length, taken, free);
  const clay = options.clay && findNamed(archive.clays, options.clay, "clay").id;
  const files = renderBlendFiles({ glazes, codes, place, clay });
  if (!options.dryRun) writeAll(options.archive, files);
  console.error(tellFiles(files, options.dryRun));
  console.log(renderBlendSheet(archive, { order, title, glazes, codes, batch: options.batch }));
  return exitCodes.done;
}

/** What cannot be read of recipes and sets could be what is about to be written. */
function isInTheWay(file: string): boolean {
  return liesIn("recipes", file) || idKey(file).endsWith("/set.md");
}

async function chooseOrder(
  archive: Archive,
  { blend, of, by, steps }: NewBlendOptions,
  ask: Ask | undefined,
): Promise<BlendOrder> {
  const count = endsOfShape[blend];
  const question = `The ids of the ${count} glazes ${count === 2 ? "at its ends" : "at its corners"}, with commas between them?`;
  const ids = of ?? (await askFor(ask, "of", question)).split(",").map((id) => id.trim());
  if (ids.length !== count)
    throw new WrongUsage(
      `A ${blend} blend lies between ${count} glazes, and here are ${ids.length}.`,
    );
  const ends = ids.map((id) => findNamed(archive.glazes, id, "glaze"));
  if (new Set(ends).size < count) throw new WrongUsage("One glaze cannot be two ends of a blend.");
  if (by === "weight") checkDryWeight(archive, ends);
  return { shape: blend, ends, steps, by };
}

async function askFor(ask: Ask | undefined, option: string, question: string): Promise<string> {
  if (ask) return ask(question);
  throw new WrongUsage(`Say it with --${option}, since nobody is here to be asked: ${question}`);
}

/** By dry weight can be blended only what is mixed of known materials. */
function checkDryWeight(archive: Archive, ends: readonly Filed<GlazeRecord>[]): void {
  const chemistry = chemistryOfGlazes(archive);
  for (const { id } of ends) {
    const result = chemistry.get(idKey(id));
    if (result && !result.ok)
      throw new WrongUsage(
        `${tellReasons(result.reasons)} Only glazes mixed of known materials are blended by dry weight: add --by volume to measure it by the jar.`,
      );
  }
}

function titleOf({ shape, ends }: BlendOrder): string {
  const names = ends.map(({ record }) => record.name);
  if (shape === "line") return `Line blend, ${names.join(" to ")}`;
  return `Triaxial blend of ${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

function choosePlace(archive: Archive, id: string | undefined, name: string): TilePlace {
  if (id === undefined) return { kind: "loose" };
  const set = findById(archive.sets, id);
  if (set) return { kind: "set", set };
  const fault = idKey(id) === "firings" ? "that folder holds the kiln loads" : findIdFault(id);
  if (fault !== undefined) throw new WrongUsage(`“${id}” cannot be the name of a set: ${fault}.`);
  return { kind: "new set", id, name };
}

/** Whether a code is on a tile, readable or not, was on one before, or is kept for another set. */
function codeTaken(archive: Archive, dir: string, place: TilePlace): WhyTaken {
  const { records } = findFiles(folderFiles(dir));
  return whyTaken(archive, records, place.kind === "set" ? place.set.id : null);
}

/** @throws WrongUsage where something is in the way */
function writeAll(dir: string, files: readonly NewFile[]): void {
  const inTheWay = writeNew(dir, files);
  if (inTheWay) throw new WrongUsage(`Nothing was written: ${whyNotDone(inTheWay)}.`);
}

function tellFiles(files: readonly NewFile[], isDryRun: boolean): string {
  const what = isDryRun ? "would be written" : "written";
  return [`${files.length} files ${what}:`, ...files.map(({ path }) => `  ${path}`), ""].join("\n");
}
