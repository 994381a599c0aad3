/** `tilebook new tile`: the record of one tile from a few answers, its layers on one line or step by step. */
import { inOrder, readAssignments } from "../../asking/assignments.ts";
import { type Draft, makeDraft } from "../../asking/draft.ts";
import type { Prompts } from "../../asking/prompts.ts";
import { tellSteps } from "../../desk/paper/told.ts";
import { readTypedTile, type TypedFault, type TypedTile } from "../../desk/paper/typed-tile.ts";
import type { DeskArchive } from "../../desk/types.ts";
import { shapeOfRecord } from "../../editing/shape.ts";
import { renderShortForm } from "../../reader/short-form/render-short-form.ts";
import { findById } from "../../records/archive.ts";
import { freeCodes, whyTaken } from "../../records/next-code.ts";
import type { SourceMap } from "../../records/read.ts";
import { tileSchema } from "../../records/tile.ts";
import { idKey } from "../../terms/ids.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { liesIn, openWhole, unknown } from "../open-archive.ts";
import { askCode, askMaker, askOfTile, askSet } from "./new-tile-questions.ts";
import { writeTried } from "./write-tried.ts";

export interface NewTileOptions {
  readonly archive: string;
  readonly set?: string;
  readonly code?: string;
  readonly maker?: string;
  /** In short form. */
  readonly layers?: string;
  readonly notes?: string;
  /** Further fields, each as `texture=carved`. */
  readonly fields?: readonly string[];
}

/**
 * Writes one new tile, over none that is there.
 *
 * @param prompts asks for what the options leave out; undefined where nobody is there to answer
 * @throws Stopped where somebody ends the questions
 */
export async function newTile(
  options: NewTileOptions,
  prompts: Prompts | undefined,
): Promise<number> {
  const archive = await openWhole(options.archive, isInTheWay);
  if (!archive) return exitCodes.faulty;
  const draft = makeDraft(tileSchema, readFields(options.fields ?? []));
  const typed = await gather(archive, options, draft, prompts);
  const { steps, faults, file } = readTypedTile(archive, typed);
  if (!file)
    throw new WrongUsage(["Nothing was written.", ...tellFaults(typed, faults)].join("\n"));
  // Who gave all of it on the command line has said what shall be written.
  const asked = options.layers === undefined ? prompts : undefined;
  return writeTried(
    options.archive,
    file,
    tellTile(typed, tellSteps(archive.archive, steps)),
    asked,
  );
}

/** What cannot be read of recipes and sets could be what the layers name. */
function isInTheWay(file: string): boolean {
  return liesIn("recipes/glazes", file) || idKey(file).endsWith("/set.md");
}

function readFields(written: readonly string[]): SourceMap {
  const { source, faults } = readAssignments(written, tileSchema);
  if (faults.length > 0) throw new WrongUsage(["Nothing was written.", ...faults].join("\n"));
  const own = ["layers", "maker"].find((name) => name in source);
  if (own === undefined) return source;
  throw new WrongUsage(`Nothing was written. Say ${own} with --${own}.`);
}

async function gather(
  archive: DeskArchive,
  options: NewTileOptions,
  draft: Draft,
  prompts: Prompts | undefined,
): Promise<TypedTile> {
  const set =
    options.set === undefined
      ? ((await (prompts && askSet(archive, prompts))) ?? null)
      : findSet(archive, options.set);
  const code = options.code ?? (await chooseCode(archive, set, prompts));
  const maker = options.maker ?? (await (prompts && askMaker(archive, prompts))) ?? "";
  if (options.layers === undefined) await askRestOf(archive, set, draft, prompts);
  const layers = options.layers ?? renderShortForm(draft.source.layers as readonly SourceMap[]);
  const mayAsk = options.layers === undefined;
  const notes = options.notes ?? (mayAsk ? await prompts?.write("Notes?") : "") ?? "";
  const whole = { ...draft.source, ...(maker !== "" && { maker }), layers: "" };
  const [tile] = shapeOfRecord("tile").maps;
  return { set, glazed: "", code, maker, layers, notes, more: tile ? inOrder(whole, tile) : whole };
}

async function askRestOf(
  archive: DeskArchive,
  set: string | null,
  draft: Draft,
  prompts: Prompts | undefined,
): Promise<void> {
  if (!prompts)
    throw new WrongUsage(
      'Say the layers with --layers, since nobody is here to be asked: the lowest first, as in --layers "7 x2; 3 x1 top".',
    );
  await askOfTile(archive, set, prompts, draft);
}

/** A set that is named; null where an empty name says that it is for none. */
function findSet({ archive }: DeskArchive, written: string): string | null {
  if (written === "") return null;
  const set = findById(archive.sets, written);
  if (set) return set.id;
  const sets = [...archive.sets.values()].map(({ id, record: { name } }) => ({ id, name }));
  throw new WrongUsage(unknown(written, "set", sets));
}

/** The next free code of the set, unless somebody says another. */
async function chooseCode(
  { archive, recordFiles }: DeskArchive,
  id: string | null,
  prompts: Prompts | undefined,
): Promise<string> {
  const set = findById(archive.sets, id);
  const taken = whyTaken(archive, recordFiles, id);
  const [next] = set ? freeCodes(set.record, taken) : [];
  const code = prompts ? await askCode(prompts, next, taken) : next;
  if (code !== undefined) return code;
  const why = id === null ? "a tile in no set has none kept for it" : `${id} has none that is free`;
  throw new WrongUsage(`Say the tile's code with --code: ${why}.`);
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
function tellTile({ code, set, maker }: TypedTile, steps: readonly string[]): readonly string[] {
  const of = [code, set && `in ${set}`, maker && `by ${maker}`].filter(Boolean).join(", ");
  return [`${of}:`, ...steps.map((words, i) => `  ${i + 1}. ${words}`)];
}
