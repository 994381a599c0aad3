/**
 * Asks for the value of a field, in the form that its schema has: a choice from a list, an id found by search,
 * a list entry by entry, a map field by field, or words.
 */
import type { KnownNames } from "../editing/names.ts";
import type { FieldShape, MapShape, Shape } from "../editing/shape.ts";
import type { Named } from "../records/fields.ts";
import type { FieldPath } from "../records/problem.ts";
import type { Source } from "../records/read.ts";
import type { Draft } from "./draft.ts";
import type { Choice, Prompts } from "./prompts.ts";
import { type ReadFlow, readFlow } from "./read-flow.ts";

/** Who is asked, what may be named, and the record that comes of it. */
export interface Asking {
  readonly prompts: Prompts;
  readonly names: KnownNames;
  readonly draft: Draft;
  /** What is told after each entry of a list, such as a sum so far; undefined for nothing. */
  readonly tellEntries?: (path: FieldPath, draft: Draft) => string | undefined;
}

/** Asks for a field and puts the answer into the draft; nothing where it was left empty. */
export async function askField(asking: Asking, path: FieldPath, shape: Shape): Promise<void> {
  const { draft } = asking;
  const [map, ...others] = shape.maps;
  if (shape.entries && (hasFields(shape.entries) || hasFields(shape)))
    return askEntries(asking, path, shape);
  if (map && others.length === 0 && !shape.isScalar) return askMap(asking, path, map);
  if (shape.values && !shape.isScalar) return askNamed(asking, path, shape.values);
  const value = await askValue(asking, path, shape);
  if (value !== "") draft.put(path, value);
}

function hasFields({ maps }: Shape): boolean {
  return maps.length > 0;
}

/** The required fields of a map, then one of those of which it needs one, then what else is known. */
export async function askMap(asking: Asking, path: FieldPath, map: MapShape): Promise<void> {
  for (const [name, field] of map.fields)
    if (field.required && !isThere(asking, [...path, name]))
      await askField(asking, [...path, name], field);
  if (map.isOneNeeded && !map.oneOf.some((name) => isThere(asking, [...path, name])))
    await askOneOf(asking, path, map);
  await askRest(asking, path, map);
}

async function askOneOf(asking: Asking, path: FieldPath, map: MapShape): Promise<void> {
  const fields = [...map.fields].filter(([name]) => map.oneOf.includes(name));
  const chosen = await asking.prompts.choose("Which of these is it?", fields.map(asChoice));
  const field = map.fields.get(chosen);
  if (field) await askField(asking, [...path, chosen], field);
}

const enough = "";

/** Lets a person choose one more field after the other, until it is enough. */
export async function askRest(asking: Asking, path: FieldPath, map: MapShape): Promise<void> {
  for (;;) {
    const left = [...map.fields].filter(([name]) => mayBeAdded(asking, path, map, name));
    if (left.length === 0) return;
    const chosen = await asking.prompts.choose(
      path.length === 0 ? "What else is known?" : `What else is known of ${pathWords(path)}?`,
      [{ value: enough, label: "Nothing more" }, ...left.map(asChoice)],
    );
    const field = map.fields.get(chosen);
    if (chosen === enough || !field) return;
    await askField(asking, [...path, chosen], field);
  }
}

function mayBeAdded(asking: Asking, path: FieldPath, map: MapShape, name: string): boolean {
  if (isThere(asking, [...path, name])) return false;
  return !map.oneOf.includes(name) || !map.oneOf.some((it) => isThere(asking, [...path, it]));
}

function isThere({ draft }: Asking, path: FieldPath): boolean {
  return valueAt(draft.source, path) !== undefined;
}

/** What stands at a path of a source. */
export function valueAt(source: Source | undefined, path: FieldPath): Source | undefined {
  const [step, ...rest] = path;
  if (step === undefined || source === undefined) return source;
  if (typeof source === "string" || !Object.hasOwn(source, step)) return undefined;
  return valueAt((source as Readonly<Record<string | number, Source>>)[step], rest);
}

function asChoice([name, { sentence }]: readonly [string, FieldShape]): Choice {
  return { value: name, label: name, hint: sentence, also: [sentence] };
}

/** `layer 2, coats`. */
function pathWords(path: FieldPath): string {
  const words: string[] = [];
  for (const step of path)
    if (typeof step === "string") words.push(step);
    else words.push(`${(words.pop() ?? "").replace(/s$/u, "")} ${step + 1}`);
  return words.join(", ");
}

async function askEntries(asking: Asking, path: FieldPath, shape: Shape): Promise<void> {
  const { draft, prompts } = asking;
  const entry = shape.entries ?? shape;
  const [map] = entry.maps;
  for (let after = "another"; after === "another"; ) {
    const at = countAt(draft, path);
    prompts.tell(`${pathWords([...path, at])}:`);
    if (map) await askMap(asking, [...path, at], map);
    else await askField(asking, [...path, at], entry);
    after = await askAfter(asking, path);
  }
  // Where one will do without a list, one alone is written without.
  const entries = valueAt(draft.source, path);
  const [only] = Array.isArray(entries) ? (entries as readonly Source[]) : [];
  if (hasFields(shape) && countAt(draft, path) === 1) draft.put(path, only);
  if (countAt(draft, path) === 0) draft.put(path, undefined);
}

function countAt({ source }: Draft, path: FieldPath): number {
  const entries = valueAt(source, path);
  return Array.isArray(entries) ? entries.length : entries === undefined ? 0 : 1;
}

/** Whether another entry comes, or no more; the last ones may be taken back first. */
async function askAfter(asking: Asking, path: FieldPath): Promise<string> {
  const { draft, prompts } = asking;
  for (;;) {
    const count = countAt(draft, path);
    const told = asking.tellEntries?.(path, draft);
    if (told !== undefined) prompts.tell(told);
    const chosen = await prompts.choose(`${pathWords(path)}: ${count} so far. Another?`, [
      { value: "another", label: "Another one" },
      { value: "done", label: "That is all" },
      ...(count > 0 ? [{ value: "back", label: "Take the last one back" }] : []),
    ]);
    if (chosen !== "back") return chosen;
    draft.put([...path, count - 1], undefined);
  }
}

/** Values behind names of the author's own, such as shelves and oxides. */
async function askNamed(asking: Asking, path: FieldPath, shape: Shape): Promise<void> {
  for (;;) {
    const name = await asking.prompts.write(
      `${pathWords(path)}: for what? Leave it empty where that is all.`,
    );
    if (name === "") return;
    await askField(asking, [...path, name], shape);
  }
}

function firstFault({ draft }: Asking, path: FieldPath, value: Source): string | undefined {
  return value === "" ? undefined : draft.faultsOf(path, value)[0];
}

async function askValue(asking: Asking, path: FieldPath, shape: Shape): Promise<Source> {
  const question = questionOf(path, shape);
  const { choices, names, entries } = shape;
  const offered = [...choices.map(wordChoice), ...namedChoices(asking.names, names)];
  if (offered.length === 0) return askWords(asking, path, shape, question);
  if (entries?.isClosed) return askSeveral(asking, path, offered, question);
  return asking.prompts.choose(question, isNeeded(shape) ? offered : [leaveOut, ...offered], {
    own: !shape.isClosed,
    faultOf: (typed) => firstFault(asking, path, typed),
  });
}

function questionOf(path: FieldPath, { sentence }: Shape): string {
  const name = pathWords(path);
  return sentence === "" ? `${name}?` : `${name}: ${sentence}`;
}

function wordChoice(word: string): Choice {
  return { value: word, label: word };
}

/** What a field may name, as choices: `7: Tidewrack`, `soot: Soot`. */
export function namedChoices(known: KnownNames, names: readonly Named[]): readonly Choice[] {
  return names
    .flatMap((of) => known[of])
    .map(({ word, name, detail, also }) => ({
      value: word,
      label: name === "" ? word : `${word}: ${name}`,
      also: [name, ...also],
      ...(detail !== "" && { hint: detail }),
    }));
}

/** One after another, until nothing else is to be said: what Enter takes is never lost. */
async function askSeveral(
  asking: Asking,
  path: FieldPath,
  offered: readonly Choice[],
  question: string,
): Promise<Source> {
  const chosen: string[] = [];
  for (;;) {
    const left = offered.filter(({ value }) => !chosen.includes(value));
    const next = await asking.prompts.choose(
      chosen.length === 0 ? question : `${pathWords(path)}: ${chosen.join(", ")}. What else?`,
      [chosen.length === 0 ? leaveOut : { value: "", label: "Nothing else" }, ...left],
      {
        faultOf: (typed) =>
          typed === "" ? undefined : firstFault(asking, path, [...chosen, typed]),
      },
    );
    if (next !== "") chosen.push(next);
    if (next === "" || left.length === 1) return chosen.length > 1 ? chosen : (chosen[0] ?? "");
  }
}

const leaveOut: Choice = { value: "", label: "Leave it out" };

async function askWords(
  asking: Asking,
  path: FieldPath,
  shape: Shape,
  question: string,
): Promise<Source> {
  const typed = await asking.prompts.write(question, {
    faultOf(answer) {
      if (answer === "") return isNeeded(shape) ? `${pathWords(path)} is needed.` : undefined;
      const read = readWritten(answer, shape);
      return "fault" in read ? read.fault : firstFault(asking, path, read.value);
    },
  });
  const read = readWritten(typed, shape);
  return "fault" in read ? "" : read.value;
}

function isNeeded(shape: Shape): boolean {
  return "required" in shape && shape.required === true;
}

/** Brackets are read as YAML where the field may hold a list or a map; all else is what it says. */
function readWritten(typed: string, { isScalar, entries, maps, values }: Shape): ReadFlow {
  const text = typed.trim();
  const mayHoldMore = entries !== undefined || values !== undefined || maps.length > 0;
  const isBracketed = /^[[{]/u.test(text);
  if (text === "" || !mayHoldMore || (isScalar && !isBracketed)) return { value: text };
  return readFlow(isBracketed || !entries ? text : `[${text}]`);
}
