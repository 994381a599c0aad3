/**
 * Sets a field in YAML by changing no more of the text than the field itself: comments, order,
 * quotes and spacing of all the rest stay as they were typed.
 */
import { isMap, isScalar, isSeq, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import { isEmptyValue, keyText, parseYamlDocument, startOf } from "./yaml-document.ts";

/**
 * A field's new value: one word, or a list of them. They are written as they are. Words in brackets
 * of their own take the place of one entry that stood in the list.
 */
export type NewValue = string | readonly NewEntry[];
type NewEntry = string | readonly string[];

/** A piece of text that takes the place of what stands between two offsets. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/**
 * Finds the edits that set a field, in the order of the text; none where the fields cannot be
 * found in it. Whether the text then says what it should is for the caller to check: YAML can be
 * written in ways that no small edit serves.
 *
 * @param path the names that lead to the field; those that are not there are added
 */
export function findEdits(yaml: string, path: readonly string[], value: NewValue): readonly Edit[] {
  const root = parseYamlDocument(yaml).contents;
  return isMap(root) ? editMap(yaml, root, path, value) : [];
}

function editMap(
  yaml: string,
  map: YAMLMap,
  path: readonly string[],
  value: NewValue,
): readonly Edit[] {
  const [key, ...rest] = path;
  if (key === undefined) return [];
  const pair = map.items.find((item) => keyText(item) === key);
  if (!pair) return [addTo(yaml, map, `${key}: ${render(rest, value)}`)];
  if (rest.length > 0 && isMap(pair.value)) return editMap(yaml, pair.value, rest, value);
  return replaceValue(yaml, pair, rest, value);
}

/** The value, in a map for each name that still leads to it, all on one line. */
function render(path: readonly string[], value: NewValue): string {
  const [key, ...rest] = path;
  if (key !== undefined) return `{${key}: ${render(rest, value)}}`;
  return typeof value === "string" ? value : `[${value.flat().join(", ")}]`;
}

function replaceValue(
  yaml: string,
  { key, value: old }: Pair<unknown, unknown>,
  path: readonly string[],
  value: NewValue,
): readonly Edit[] {
  if (path.length === 0 && typeof value !== "string" && isSeq(old)) {
    const entries = replaceEntries(yaml, old, value);
    if (entries) return entries;
  }
  const text = render(path, value);
  const [from, to] = [startOf(old), endOf(old)];
  if (!isEmptyValue(old) || from < to) return [{ from, to, text }];
  const colon = yaml.indexOf(":", endOf(key)) + 1;
  return [{ from: colon, to: colon, text: ` ${text}` }];
}

/** Entry by entry, where a list of as many words is there: so its layout and comments stay. */
function replaceEntries(
  yaml: string,
  old: YAMLSeq,
  value: readonly NewEntry[],
): readonly Edit[] | undefined {
  const { items } = old;
  if (items.length !== value.length || !items.every((item) => isScalar(item) && endOf(item) > 0))
    return undefined;
  return items.flatMap((item, i) => {
    const entry = value[i] ?? "";
    if (isScalar(item) && String(item.value) === entry) return [];
    const between = old.flow ? ", " : `\n${yaml.slice(lineBegin(yaml, item), startOf(item))}`;
    const text = typeof entry === "string" ? entry : entry.join(between);
    return [{ from: startOf(item), to: endOf(item), text }];
  });
}

function lineBegin(yaml: string, node: unknown): number {
  return yaml.lastIndexOf("\n", startOf(node) - 1) + 1;
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
  const indent = yaml.slice(yaml.lastIndexOf("\n", begin - 1) + 1, begin);
  const end = last ? endOfPair(last) : endOf(map);
  // A block of text ends where the next line begins.
  if (yaml[end - 1] === "\n") return insertion(end, `${indent}${text}\n`);
  const lineEnd = yaml.indexOf("\n", end);
  return insertion(lineEnd < 0 ? yaml.length : lineEnd, `\n${indent}${text}`);
}

function insertion(at: number, text: string): Edit {
  return { from: at, to: at, text };
}

function endOfPair({ key, value }: Pair<unknown, unknown>): number {
  return isEmptyValue(value) && startOf(value) === endOf(value) ? endOf(key) : endOf(value);
}

/** Where a node's own text ends: what the parser counts to a block goes on to the next line. */
function endOf(node: unknown): number {
  if (isMap(node) && !node.flow) {
    const last = node.items.at(-1);
    if (last) return endOfPair(last);
  }
  if (isSeq(node) && !node.flow && node.items.length > 0) return endOf(node.items.at(-1));
  const { range } = node as { range?: readonly [number, number, number] | null };
  return range?.[1] ?? 0;
}
