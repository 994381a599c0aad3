/** `tilebook rename`: gives a tile another code, wherever the archive names it. */
import { parseText } from "../../archive/parse-text.ts";
import { writeFields } from "../../archive/write-fields.ts";
import { hasCode } from "../../disk/machine-error.ts";
import { renameFiles } from "../../disk/rename-file.ts";
import { type Archive, findById, type Tile } from "../../records/archive.ts";
import { findNearest } from "../../records/suggest.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Ask, mayDo } from "../ask.ts";
import { describeFailure, exitCodes, WrongUsage } from "../failure.ts";
import { whyNotDone } from "../not-done.ts";
import { openWhole } from "../open-archive.ts";
import { planRenaming, type RecordChange, type RenamePlan } from "./rename-plan.ts";

export interface RenameOptions {
  readonly archive: string;
  /** Do it without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
}

/**
 * Renames a tile: its record and photographs, and its code in load lists and in sets that have it
 * as their control. Its old code goes into `formerly`, so that what was printed leads on.
 *
 * @returns 1 where the archive has errors, or something could not be written
 */
export async function rename(old: string, code: string, options: RenameOptions): Promise<number> {
  const opened = await openWhole(options.archive, () => true);
  if (!opened) return exitCodes.faulty;
  const { archive, texts } = opened;
  const tile = findTile(archive, old);
  refuseCode(archive, tile, code);
  const plan = planRenaming(archive, tile, code, (file) => sourceOf(texts, file));
  console.error(tellPlan(plan).join("\n"));
  if (!(await mayDo(options))) return exitCodes.done;
  return carryOut(plan, options.archive, texts);
}

function findTile({ tiles }: Archive, code: string): Tile {
  const tile = findById(tiles, code);
  if (tile) return tile;
  const now = [...tiles.values()].find(({ record }) =>
    record.formerly?.some((each) => idKey(each) === idKey(code)),
  );
  if (now) throw new WrongUsage(`There is no tile ${code} any more: it is called ${now.id} now.`);
  const near = findNearest(
    code,
    [...tiles.values()].map(({ id }) => id),
  );
  throw new WrongUsage(
    `There is no tile ${code}.${near === undefined ? "" : ` Did you mean ${near}?`} Nothing was changed.`,
  );
}

/** @throws WrongUsage where the new code cannot be had */
function refuseCode({ tiles }: Archive, tile: Tile, code: string): void {
  const fault = findIdFault(code);
  if (fault) throw new WrongUsage(`“${code}” cannot be a code: ${fault}. Nothing was changed.`);
  if (idKey(code) === idKey(tile.id))
    throw new WrongUsage(`The tile is called ${tile.id} already. Nothing was changed.`);
  const owner = findById(tiles, code);
  if (owner) throw new WrongUsage(`There is a tile ${owner.id} already. Nothing was changed.`);
  const before = [...tiles.values()].find(
    (other) => other !== tile && other.record.formerly?.some((each) => idKey(each) === idKey(code)),
  );
  if (before)
    throw new WrongUsage(
      `${code} was the code of ${before.id} before, and its address still leads there. Choose another code. Nothing was changed.`,
    );
}

function sourceOf(texts: ReadonlyMap<string, string>, file: string) {
  return parseText(texts.get(file) ?? "", "markdown").source ?? {};
}

function tellPlan({ renamings, changes, notes }: RenamePlan): readonly string[] {
  return [
    ...renamings.map(({ from, to }) => `  rename ${from} → ${to}`),
    ...changes.flatMap(tellChange).map((line) => `  ${line}`),
    ...notes.map((file) => `  left as it is: the notes in ${file} speak of the old code`),
  ];
}

function tellChange({ file, fields }: RecordChange): readonly string[] {
  return fields.map(({ path, value }) => {
    const words = typeof value === "string" ? value : value.flat().join(", ");
    return `write into ${file}: ${path.join(" › ")}: ${words}`;
  });
}

/** The files first, all or none; what then cannot be written is told, to be put right by hand. */
function carryOut(
  { renamings, changes }: RenamePlan,
  archive: string,
  texts: ReadonlyMap<string, string>,
): number {
  const inTheWay = renameFiles(archive, renamings);
  if (inTheWay) {
    console.error(`Nothing was changed: ${whyNotDone(inTheWay)}.`);
    return exitCodes.faulty;
  }
  const undone = changes.flatMap((change) => {
    const why = writeChange(change, archive, texts);
    return why === undefined ? [] : tellChange(change).map((line) => `Not done: ${line}: ${why}`);
  });
  for (const line of undone) console.error(line);
  console.log(
    undone.length === 0 ? "Renamed." : "Renamed, but for the lines above: write those by hand.",
  );
  console.log(`See that all is well: ${asTypedFor(archive)("check")}`);
  return undone.length === 0 ? exitCodes.done : exitCodes.faulty;
}

/** Writes the fields of one record; what kept them from being written is told in words. */
function writeChange(
  { file, asNow, kind, fields }: RecordChange,
  archive: string,
  texts: ReadonlyMap<string, string>,
): string | undefined {
  try {
    const written = writeFields(archive, { file, kind, asRead: texts.get(asNow) ?? "" }, fields);
    return written.ok ? undefined : `${whyNotDone({ because: written.because, file })}.`;
  } catch (error) {
    // The files have their new names by now: the other records are written all the same.
    return hasCode(error, "ENOENT")
      ? `${whyNotDone({ because: "gone", file })}.`
      : describeFailure(error);
  }
}
