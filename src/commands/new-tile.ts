/** `tilebook new tile`: the record of one tile from a few answers, its layers on one line. */
import { writeNew } from "../archive/write-new.ts";
import { tellSteps } from "../desk/paper/told.ts";
import { readTypedTile, type TypedFault, type TypedTile } from "../desk/paper/typed-tile.ts";
import type { DeskArchive } from "../desk/types.ts";
import { shortNames } from "../reader/short-form/names.ts";
import { readShortForm } from "../reader/short-form/read-short-form.ts";
import { findById } from "../records/archive.ts";
import { freeCodes, whyTaken } from "../records/next-code.ts";
import { idKey } from "../terms/ids.ts";
import { type Ask, mayDo } from "./ask.ts";
import { exitCodes, WrongUsage } from "./failure.ts";
import { whyNotDone } from "./not-done.ts";
import { liesIn, openWhole, unknown } from "./open-archive.ts";

export interface NewTileOptions {
  readonly archive: string;
  readonly set?: string;
  readonly code?: string;
  readonly maker?: string;
  readonly layers?: string;
  readonly notes?: string;
}

/**
 * Writes one new tile, over none that is there.
 *
 * @param ask asks for what the options leave out; undefined where nobody is there to answer
 */
export async function newTile(options: NewTileOptions, ask: Ask | undefined): Promise<number> {
  const archive = await openWhole(options.archive, isInTheWay);
  if (!archive) return exitCodes.faulty;
  const typed = await gather(archive, options, ask);
  const { steps, faults, file } = readTypedTile(archive, typed);
  if (!file)
    throw new WrongUsage(["Nothing was written.", ...tellFaults(typed, faults)].join("\n"));
  console.error(tellTile(typed, tellSteps(archive.archive, steps)));
  // Who gave all of it on the command line has said what shall be written.
  if (options.layers === undefined && !(await mayDo({ yes: false, ask }))) return exitCodes.done;
  const inTheWay = writeNew(options.archive, [file]);
  if (inTheWay) throw new WrongUsage(`Nothing was written: ${whyNotDone(inTheWay)}.`);
  console.error(`Written: ${file.path}`);
  return exitCodes.done;
}

/** What cannot be read of recipes and sets could be what the layers name. */
function isInTheWay(file: string): boolean {
  return liesIn("recipes/glazes", file) || idKey(file).endsWith("/set.md");
}

async function gather(
  archive: DeskArchive,
  options: NewTileOptions,
  ask: Ask | undefined,
): Promise<TypedTile> {
  const set = await chooseSet(archive, options.set, ask);
  const code = options.code ?? (await chooseCode(archive, set, ask));
  const maker = options.maker ?? (await ask?.("The maker's key, if known?")) ?? "";
  const layers = options.layers ?? (await askLayers(archive, set, ask));
  const notes = options.notes ?? (options.layers === undefined ? await ask?.("Notes?") : "") ?? "";
  return { set, glazed: "", code, maker, layers, notes };
}

async function chooseSet(
  { archive }: DeskArchive,
  named: string | undefined,
  ask: Ask | undefined,
) {
  const sets = [...archive.sets.values()].map(({ id, record: { name } }) => ({ id, name }));
  const ids = sets.map(({ id }) => id).join(", ");
  const written =
    named ?? (sets.length > 0 ? await ask?.(`Its set (${ids}; none if left empty)?`) : "") ?? "";
  if (written === "") return null;
  const set = findById(archive.sets, written);
  if (set) return set.id;
  throw new WrongUsage(unknown(written, "set", sets));
}

/** The next free code of the set, unless somebody says another. */
async function chooseCode(
  { archive, recordFiles }: DeskArchive,
  id: string | null,
  ask: Ask | undefined,
): Promise<string> {
  const set = findById(archive.sets, id);
  const [next] = set ? freeCodes(set.record, whyTaken(archive, recordFiles, set.id)) : [];
  const answer = await ask?.(next ? `Its code (${next} if left empty)?` : "Its code?");
  const code = answer || next;
  if (code !== undefined) return code;
  const why = id === null ? "a tile in no set has none kept for it" : `${id} has none that is free`;
  throw new WrongUsage(`Say the tile's code with --code: ${why}.`);
}

/** Asks until every word is understood, and shows what was. */
async function askLayers(
  archive: DeskArchive,
  set: string | null,
  ask: Ask | undefined,
): Promise<string> {
  if (!ask)
    throw new WrongUsage(
      'Say the layers with --layers, since nobody is here to be asked: the lowest first, as in --layers "7 x2; 3 x1 top".',
    );
  for (;;) {
    const line = await ask("Its layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?");
    const { faults } = readShortForm(line, shortNames(archive.archive, set));
    if (faults.length === 0 && line.trim() !== "") return line;
    console.error(faults.flatMap((fault) => underline(line, fault)).join("\n"));
  }
}

function tellFaults({ layers }: TypedTile, faults: readonly TypedFault[]): readonly string[] {
  return faults.flatMap(({ from, to, ...fault }) =>
    from === undefined || to === undefined
      ? [`${fault.message}. ${fault.hint}`]
      : underline(layers, { from, to, ...fault }),
  );
}

interface Underlined {
  readonly from: number;
  readonly to: number;
  readonly message: string;
  readonly hint: string;
}

/** The line, a mark beneath the words that are meant, and what is said of them. */
function underline(line: string, { from, to, message, hint }: Underlined): readonly string[] {
  const begin = line.lastIndexOf("\n", from - 1) + 1;
  const [shown = ""] = line.slice(begin).split("\n");
  const mark = " ".repeat(from - begin) + "^".repeat(Math.max(1, to - from));
  return [`  ${shown}`, `  ${mark}`, `${message}. ${hint}`];
}

/** `EV-4, in evening, by m01:` and its layers, the lowest first. */
function tellTile({ code, set, maker }: TypedTile, steps: readonly string[]): string {
  const of = [code, set && `in ${set}`, maker && `by ${maker}`].filter(Boolean).join(", ");
  return [`${of}:`, ...steps.map((words, i) => `  ${i + 1}. ${words}`)].join("\n");
}
