/** `tilebook forget`: takes a maker's name, or a tile, out of an archive, and says what no tool can do. */
import { existsSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { parseText } from "../../archive/parse-text.ts";
import { removeFiles } from "../../archive/remove-files.ts";
import { changeRecord, writeFields } from "../../archive/write-fields.ts";
import { prunePictures } from "../../photos/prune.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { findNearest } from "../../records/suggest.ts";
import { idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Ask, mayDo } from "../ask.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { cacheFolderOf } from "../folders.ts";
import { whyNotDone } from "../not-done.ts";
import { openWhole } from "../open-archive.ts";
import { say } from "../receive/receive-questions.ts";
import {
  type ForgetPlan,
  type Forgotten,
  findLeft,
  planForgetting,
  type RecordEdit,
} from "./forget-plan.ts";
import { tellForgetting, tellRemains } from "./forget-words.ts";

export interface ForgetOptions {
  readonly archive: string;
  readonly cache?: string;
  /** A maker's tiles go too. */
  readonly tiles: boolean;
  /** Do it without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
}

/**
 * Forgets a maker or a tile, as far as a tool can.
 *
 * @param key a maker's key, or a tile's code
 * @returns 1 where the archive has errors, or something could not be done
 */
export async function forget(key: string, options: ForgetOptions): Promise<number> {
  const opened = await openWhole(options.archive, () => true);
  if (!opened) return exitCodes.faulty;
  const { archive, texts } = opened;
  const forgotten = findForgotten(archive, key, options.tiles);
  const sourceOf = (file: string) => parseText(texts.get(file) ?? "", "markdown").source ?? {};
  const plan = planForgetting(forgotten, options.tiles, { archive, sourceOf });
  const left = findLeft(forgotten, plan, textsAfter(plan, texts));
  say(tellForgetting(forgotten, plan, left));
  if (!(await mayDo(options))) return exitCodes.done;
  const undone = await carryOut(plan, options, texts);
  say(undone);
  console.log(undone.length === 0 ? "Done in this archive." : "Done, but for the lines above.");
  const isInRepository = hasRepository(options.archive);
  console.log(
    tellRemains(plan, { isInRepository, asTyped: asTypedFor(options.archive) }).join("\n"),
  );
  return undone.length === 0 ? exitCodes.done : exitCodes.faulty;
}

function findForgotten({ studio, tiles }: Archive, key: string, withTiles: boolean): Forgotten {
  const maker = Object.keys(studio.makers ?? {}).find((each) => idKey(each) === idKey(key));
  const tile = findById(tiles, key);
  if (maker !== undefined && tile)
    throw new WrongUsage(
      `“${key}” is both a maker and a tile. Rename the tile first. Nothing was changed.`,
    );
  if (maker !== undefined) return { what: "maker", key: maker, name: studio.makers?.[maker]?.name };
  if (tile && withTiles)
    throw new WrongUsage(`${tile.id} is a tile: --tiles is for makers. Nothing was changed.`);
  if (tile) return { what: "tile", tile };
  const known = [...Object.keys(studio.makers ?? {}), ...[...tiles.values()].map(({ id }) => id)];
  const near = findNearest(key, known);
  const meant = near === undefined ? "" : ` Did you mean ${near}?`;
  throw new WrongUsage(`There is no maker and no tile “${key}”.${meant} Nothing was changed.`);
}

/** What the records will say, to look for what is left in them. */
function textsAfter(
  { edits }: ForgetPlan,
  texts: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const after = new Map(texts);
  for (const { file, kind, fields } of edits) {
    const changed = changeRecord(texts.get(file) ?? "", kind, { fields });
    if (changed.ok) after.set(file, changed.text);
  }
  return after;
}

/** Records first, then files, then pictures that were made of them: what could not be done is told. */
async function carryOut(
  { edits, files }: ForgetPlan,
  options: ForgetOptions,
  texts: ReadonlyMap<string, string>,
): Promise<readonly string[]> {
  const { archive } = options;
  const undone = edits.flatMap((edit) => carryOutEdit(archive, edit, texts));
  const kept = removeFiles(archive, files);
  await prunePictures(cacheFolderOf(options), new Date(Date.now() + day));
  return [
    ...undone,
    ...kept.map((file) => `Not removed: ${file}: a link leads out of the archive.`),
  ];
}

/** Everything that is remembered is older than tomorrow. */
const day = 24 * 60 * 60 * 1000;

function carryOutEdit(
  archive: string,
  { file, kind, fields, told }: RecordEdit,
  texts: ReadonlyMap<string, string>,
): readonly string[] {
  const written = writeFields(archive, { file, kind, asRead: texts.get(file) ?? "" }, fields);
  if (written.ok) return [];
  const why = whyNotDone({ because: written.because, file });
  return [`Not done: ${file}: ${told}: ${why}. Do it by hand.`];
}

/** Whether a folder, or one that it lies in, is under version control. */
function hasRepository(dir: string): boolean {
  const folder = resolve(dir);
  if (existsSync(join(folder, ".git"))) return true;
  return dirname(folder) !== folder && hasRepository(dirname(folder));
}
