/**
 * Sets a field in YAML by changing no more of the text than the field itself: comments, order,
 * quotes and spacing of all the rest stay as they were typed.
 */
import { isMap, isSeq, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import { addEntry, type NewEntry, replaceEntries, wrapInList } from "./edit-yaml-list.ts";
import { isEmptyValue, keyText, parseYamlDocument, startOf } from "./yaml-document.ts";
import {
  deleteBetweenBrackets,
  deleteLines,
  type Edit,
  endOf,
  endOfPair,
  insertion,
  lineBegin,
  lineEnd,
} from "./yaml-places.ts";
import { writtenWord } from "./yaml-written.ts";

export type { Edit } from "./yaml-places.ts";

/**
 * A field's new value: one word, or a list of them. Words in brackets of their own take the place of
 * one entry that stood in the list, and where there are none of them the entry goes.
 */
export type NewValue = string | readonly NewEntry[];

/**
 * The names that lead to a field, and the places of entries in lists, from 0. A map that stands where
 * a list may is the only entry of one, and the place behind the last entry is that of a new one.
 */
export type EditPath = readonly (string | number)[];

/**
 * Finds the edits that set a field, in the order of the text; none where the fields cannot be
 * found in it. Whether the text then says what it should is for the caller to check: YAML can be
 * written in ways that no small edit serves.
 *
 * @param path leads to the field; what is not there is added
 * @param value null takes the field away
 */
export function findEdits(yaml: string, path: EditPath, value: NewValue | null): readonly Edit[] {
  const root = parseYamlDocument(yaml).contents;
  return isMap(root) ? editMap(yaml, root, path, value) : [];
}

function editMap(
  yaml: string,
  map: YAMLMap,
  path: EditPath,
  value: NewValue | null,
): readonly Edit[] {
  const [key, ...rest] = path;
  if (key === undefined) return [];
  const pair = map.items.find((item) => keyText(item) === String(key));
  if (value === null && (!pair || rest.length === 0)) return pair ? takeOut(yaml, map, pair) : [];
  if (!pair) return [addTo(yaml, map, `${key}: ${render(rest, value)}`)];
  return editInside(yaml, pair.value, rest, value) ?? replaceValue(yaml, pair, rest, value);
}

/** Undefined where there is neither map nor list to go into. */
function editInside(
  yaml: string,
  node: unknown,
  path: EditPath,
  value: NewValue | null,
): readonly Edit[] | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  if (typeof step === "string") return isMap(node) ? editMap(yaml, node, path, value) : undefined;
  if (isMap(node)) {
    return step === 0
      ? editMap(yaml, node, rest, value)
      : wrapInList(yaml, node, render(rest, value));
  }
  return isSeq(node) && node.items.length > 0 ? editList(yaml, node, path, value) : undefined;
}

function editList(
  yaml: string,
  list: YAMLSeq,
  path: EditPath,
  value: NewValue | null,
): readonly Edit[] {
  const [at, ...rest] = path;
  const entry = list.items[Number(at)];
  if (entry === undefined) return [addEntry(yaml, list, render(rest, value))];
  return isMap(entry) ? editMap(yaml, entry, rest, value) : [];
}

/** The value, in a map for each name that still leads to it, all on one line. */
function render(path: EditPath, value: NewValue | null): string {
  const [key, ...rest] = path;
  if (typeof key === "number") return render(rest, value);
  if (key !== undefined) return `{${key}: ${render(rest, value)}}`;
  return typeof value === "string"
    ? writtenWord(value)
    : `[${(value ?? []).flat().map(writtenWord).join(", ")}]`;
}

function replaceValue(
  yaml: string,
  { key, value: old }: Pair<unknown, unknown>,
  path: EditPath,
  value: NewValue | null,
): readonly Edit[] {
  if (path.length === 0 && typeof value !== "string" && isSeq(old)) {
    const entries = replaceEntries(yaml, old, value ?? []);
    if (entries) return entries;
  }
  const text = render(path, value);
  const [from, to] = [startOf(old), endOf(old)];
  if (!isEmptyValue(old) || from < to) return [{ from, to, text }];
  const colon = yaml.indexOf(":", endOf(key)) + 1;
  return [{ from: colon, to: colon, text: ` ${text}` }];
}

function takeOut(yaml: string, map: YAMLMap, pair: Pair<unknown, unknown>): readonly Edit[] {
  if (!map.flow) return [deleteLines(yaml, startOf(pair.key), endOfPair(pair))];
  const spans = map.items.map((each) => ({ from: startOf(each.key), to: endOfPair(each) }));
  return deleteBetweenBrackets(yaml, spans, (at) => map.items[at] === pair);
}

function addTo(yaml: string, map: YAMLMap, text: string): Edit {
  return map.flow ? addToBrackets(yaml, map, text) : addLine(yaml, map, text);
}

function addToBrackets(yaml: string, map: YAMLMap, text: string): Edit {
  const last = map.items.at(-1);
  if (!last) return insertion(startOf(map) + 1, text);
  const end = endOfPair(last);
  const comma = /^(?:\s|#[^\n]*\n)*,/u.exec(yaml.slice(end, endOf(map)));
  return comma ? insertion(end + comma[0].length, ` ${text}`) : insertion(end, `, ${text}`);
}

/** A line of its own after the map's last one, so before any comment that stands beneath it. */
function addLine(yaml: string, map: YAMLMap, text: string): Edit {
  const [first, last] = [map.items[0], map.items.at(-1)];
  const begin = startOf(first?.key);
  // The first field of a list's entry stands behind a dash.
  const indent = yaml.slice(lineBegin(yaml, begin), begin).replace(/\S/gu, " ");
  const end = last ? endOfPair(last) : endOf(map);
  // A block of text ends where the next line begins.
  if (yaml[end - 1] === "\n") return insertion(end, `${indent}${text}\n`);
  return insertion(lineEnd(yaml, end), `\n${indent}${text}`);
}
