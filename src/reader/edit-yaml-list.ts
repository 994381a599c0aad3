/** Edits of lists in YAML: entries that change, go or come, and a map that becomes a list of two. */
import { isScalar, type YAMLMap, type YAMLSeq } from "yaml";
import { startOf } from "./yaml-document.ts";
import {
  deleteBetweenBrackets,
  deleteLines,
  type Edit,
  endOf,
  insertion,
  lineBegin,
  lineEnd,
} from "./yaml-places.ts";
import { writtenWord } from "./yaml-written.ts";

/** The words of one entry. */
export type NewEntry = string | readonly string[];

/** Entry by entry, where a list of as many words is there: so its layout and comments stay. */
export function replaceEntries(
  yaml: string,
  old: YAMLSeq,
  value: readonly NewEntry[],
): readonly Edit[] | undefined {
  const { items } = old;
  if (items.length !== value.length || !items.every((item) => isScalar(item) && endOf(item) > 0))
    return undefined;
  const isGone = (at: number) => value[at]?.length === 0;
  const changed = items.flatMap((item, at) => {
    const entry = value[at] ?? "";
    if (isGone(at) || (isScalar(item) && String(item.value) === entry)) return [];
    const words = typeof entry === "string" ? [entry] : entry;
    const text = words.map(writtenWord).join(betweenEntries(yaml, old, item));
    return [{ from: startOf(item), to: endOf(item), text }];
  });
  return [...changed, ...takeEntriesOut(yaml, old, isGone)].sort((a, b) => a.from - b.from);
}

function betweenEntries(yaml: string, { flow }: YAMLSeq, item: unknown): string {
  const start = startOf(item);
  return flow ? ", " : `\n${yaml.slice(lineBegin(yaml, start), start)}`;
}

function takeEntriesOut(
  yaml: string,
  { flow, items }: YAMLSeq,
  isGone: (at: number) => boolean,
): readonly Edit[] {
  const spans = items.map((item) => ({ from: startOf(item), to: endOf(item) }));
  if (flow) return deleteBetweenBrackets(yaml, spans, isGone);
  return spans
    .filter((_, at) => isGone(at))
    .map(({ from, to }) => deleteLines(yaml, dashOf(yaml, from), to));
}

/** Where the dash of an entry stands. */
function dashOf(yaml: string, start: number): number {
  return lineBegin(yaml, start) + Math.max(0, yaml.slice(lineBegin(yaml, start)).search(/\S/u));
}

/** An entry behind the last one. */
export function addEntry(yaml: string, list: YAMLSeq, text: string): Edit {
  const last = list.items.at(-1);
  const end = endOf(last);
  if (list.flow) return insertion(end, `, ${text}`);
  const indent = indentOf(yaml, dashOf(yaml, startOf(list.items[0])));
  if (yaml[end - 1] === "\n") return insertion(end, `${indent}- ${text}\n`);
  return insertion(lineEnd(yaml, end), `\n${indent}- ${text}`);
}

/** Makes the map the first of two entries of a list. */
export function wrapInList(yaml: string, map: YAMLMap, text: string): readonly Edit[] {
  const [start, end] = [startOf(map), endOf(map)];
  if (map.flow) return [insertion(start, "["), insertion(end, `, ${text}]`)];
  const first = startOf(map.items[0]?.key);
  const indent = indentOf(yaml, first);
  const isWhole = yaml[end - 1] === "\n";
  const last = isWhole ? end : lineEnd(yaml, end);
  return [
    insertion(first, "- "),
    ...linesBetween(yaml, lineEnd(yaml, first) + 1, end).map((begin) => insertion(begin, "  ")),
    insertion(last, isWhole ? `${indent}- ${text}\n` : `\n${indent}- ${text}`),
  ];
}

function indentOf(yaml: string, at: number): string {
  return yaml.slice(lineBegin(yaml, at), at);
}

/** Where the lines begin that are not empty. */
function linesBetween(yaml: string, from: number, to: number): readonly number[] {
  const begins: number[] = [];
  for (let at = from; at < to; at = lineEnd(yaml, at) + 1)
    if (yaml.slice(at, lineEnd(yaml, at)).trim() !== "") begins.push(at);
  return begins;
}
