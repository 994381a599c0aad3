/** `tilebook new set`: a new term after an old one. */
import { parseText } from "../../archive/parse-text.ts";
import { writeNew } from "../../archive/write-new.ts";
import { type Archive, type Filed, findById } from "../../records/archive.ts";
import { isDay } from "../../records/fields/days.ts";
import { whyTaken } from "../../records/next-code.ts";
import type { SetRecord } from "../../records/set.ts";
import { makeVisible } from "../../reporting/visible.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Ask, mayDo } from "../ask.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { whyNotDone } from "../not-done.ts";
import { openWhole, unknown } from "../open-archive.ts";
import { drawLink } from "../random-link.ts";
import {
  makersOf,
  type NewSetPlan,
  type NewSetWords,
  planNewSet,
  rangeOf,
} from "./new-set-plan.ts";

export interface NewSetOptions {
  readonly archive: string;
  /** The id of the set that it follows. */
  readonly from: string;
  readonly name?: string;
  readonly begins?: string;
  readonly ends?: string;
  /** Do it without asking. */
  readonly yes: boolean;
}

/**
 * Writes the record of a new set, and nothing else.
 *
 * @param id the new set's id
 * @param ask asks for what the options leave out; undefined where nobody is there to answer
 */
export async function newSet(
  id: string,
  options: NewSetOptions,
  ask: Ask | undefined,
): Promise<number> {
  const opened = await openWhole(options.archive, isInTheWay);
  if (!opened) return exitCodes.faulty;
  const { archive, recordFiles, texts } = opened;
  const old = findSet(archive, options.from);
  refuseId(archive, id);
  const words = await gatherWords(options, old, ask);
  const source = parseText(texts.get(old.file) ?? "", "markdown").source ?? {};
  const plan = planNewSet(archive, old, source, words, whyTaken(archive, recordFiles, null));
  const file = { path: `tiles/${id}/set.md`, content: plan.content };
  say([...tellPlan(file.path, plan), ...tellMakers(archive, old, options.archive)]);
  if (!(await mayDo({ yes: options.yes, ask }))) return exitCodes.done;
  const inTheWay = writeNew(options.archive, [file]);
  if (inTheWay) throw new WrongUsage(`Nothing was written: ${whyNotDone(inTheWay)}.`);
  console.log(`Written: ${file.path}`);
  return exitCodes.done;
}

function isInTheWay(file: string): boolean {
  return idKey(file).endsWith("/set.md") || idKey(file) === "studio.yaml";
}

function findSet({ sets }: Archive, written: string): Filed<SetRecord> {
  const found = findById(sets, written);
  if (found) return found;
  const known = [...sets.values()].map(({ id, record }) => ({ id, name: record.name }));
  throw new WrongUsage(unknown(written, "set", known));
}

function refuseId({ sets }: Archive, id: string): void {
  const taken = findById(sets, id);
  if (taken) throw new WrongUsage(`There is a set ${taken.id} already. Nothing was written.`);
  const fault = idKey(id) === "firings" ? "that folder holds the kiln loads" : findIdFault(id);
  if (fault !== undefined) throw new WrongUsage(`“${id}” cannot be the name of a set: ${fault}.`);
}

async function gatherWords(
  options: NewSetOptions,
  { record }: Filed<SetRecord>,
  ask: Ask | undefined,
): Promise<NewSetWords> {
  const name = options.name ?? (await ask?.(`What is it called? ${record.name} was the last.`));
  if (name === undefined || name === "")
    throw new WrongUsage("Say with --name what people call the new set. Nothing was written.");
  const begins = await askDay(options.begins, "Its first day, as in 2027-01-11, if known?", ask);
  const ends = await askDay(options.ends, "Its last day, if known?", ask);
  if (begins !== undefined && ends !== undefined && ends < begins)
    throw new WrongUsage(`It cannot end on ${ends}, before it begins. Nothing was written.`);
  return { name, begins, ends, link: record.listed === false ? drawLink() : undefined };
}

async function askDay(
  written: string | undefined,
  question: string,
  ask: Ask | undefined,
): Promise<string | undefined> {
  const day = written ?? (await ask?.(question)) ?? "";
  if (day === "") return undefined;
  if (isDay(day)) return day;
  throw new WrongUsage(`“${day}” is no day: write it as in 2027-01-11. Nothing was written.`);
}

function tellPlan(path: string, { content, codes, told }: NewSetPlan): readonly string[] {
  return [
    `${path} will say:`,
    ...content
      .trimEnd()
      .split("\n")
      .map((line) => `  ${line}`),
    "",
    ...(codes.length > 0
      ? [`Its ${codes.length} codes, ${rangeOf(codes)}, are nobody else's.`]
      : []),
    ...told,
    "",
  ];
}

/** Who made tiles last term stays with those tiles: only a name can go. */
function tellMakers(archive: Archive, old: Filed<SetRecord>, dir: string): readonly string[] {
  const { here, elsewhere } = makersOf(archive, old.id);
  if (here.length + elsewhere.length === 0) return [];
  const named = (key: string) => {
    const name = archive.studio.makers?.[key]?.name;
    return name === undefined ? key : `${key} (${name})`;
  };
  const forget = asTypedFor(dir)("forget", [here[0] ?? "KEY"]);
  return [
    "Nobody has a tile in the new set yet, and no maker is carried over or taken away.",
    ...(here.length > 0 ? [`With tiles in ${old.id} alone: ${here.map(named).join(", ")}.`] : []),
    ...(elsewhere.length > 0
      ? [`With tiles in other sets too: ${elsewhere.map(named).join(", ")}.`]
      : []),
    `Whoever does not come back can keep the code: the tiles rest on it. “${forget}” takes a name out.`,
    "Give no old code to somebody new: all old tiles under it would become theirs.",
    "",
  ];
}

function say(lines: readonly string[]): void {
  console.error(lines.map(makeVisible).join("\n"));
}
