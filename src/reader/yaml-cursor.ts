/** From a place in YAML that is being written to the field that stands there, however much of it is still missing. */
import { isMap, isPair, isScalar, isSeq, type Pair, type Scalar } from "yaml";
import type { FieldPath } from "../records/problem.ts";
import { deepestNesting, longestYaml } from "../terms/limits.ts";
import { keyText, parseYamlDocument, startOf } from "./yaml-document.ts";

/** Where somebody is writing. */
export interface YamlCursor {
  /** The name of a field, in the map that `path` leads to; or a value, at `path`. */
  readonly at: "name" | "value";
  readonly path: FieldPath;
  /** What is written of it so far. */
  readonly typed: string;
  /** The fields that the map has already, in the text before. */
  readonly beside: readonly string[];
  /** Whether it begins its line, perhaps behind the dash of a list. */
  readonly startsLine: boolean;
  /** Whether a dash stands before it on its line. */
  readonly isEntry: boolean;
}

/** A sign that nobody types: where it is found again is where the cursor was. */
const sign = "\ue0fe";

/** Reads the text before the cursor alone, which the parser takes for YAML that ends there. */
export function findCursor(yaml: string, offset: number): YamlCursor | undefined {
  if (isTooMuch(yaml) || yaml.includes(sign)) return undefined;
  const before = yaml.slice(0, offset);
  const found = search(parseYamlDocument(before + sign).contents, []);
  if (!found || !before.endsWith(found.typed)) return undefined;
  const line = before.slice(before.lastIndexOf("\n") + 1, before.length - found.typed.length);
  return { ...found, startsLine: /^\s*(?:- *)*$/u.test(line), isEntry: /^\s*- /u.test(line) };
}

type Found = Pick<YamlCursor, "at" | "path" | "typed" | "beside">;

function search(node: unknown, path: FieldPath): Found | undefined {
  if (isTooDeep(path)) return undefined;
  if (isScalar(node)) {
    const typed = typedIn(node);
    return typed === undefined ? undefined : { at: "value", path, typed, beside: [] };
  }
  if (isSeq(node)) return firstOf(node.items, (item, i) => search(item, [...path, i]));
  return isMap(node) ? searchMap(node.items, path) : undefined;
}

/** So many brackets more than are closed, or dashes on one line, no record has, and the parser's stack no room for. */
const mostOpen = 500;

function isTooMuch(yaml: string): boolean {
  if (yaml.length > longestYaml) return true;
  if (yaml.split("\n").some((line) => line.split(/[-?] /u).length > mostOpen)) return true;
  let open = 0;
  for (const letter of yaml) {
    if (letter === "[" || letter === "{") open += 1;
    else if (letter === "]" || letter === "}") open = Math.max(0, open - 1);
    if (open > mostOpen) return true;
  }
  return false;
}

/** Deeper than any record is read, nothing is looked for: the stack would not hold it. */
function isTooDeep(path: FieldPath): boolean {
  return path.length > deepestNesting;
}

function searchMap(pairs: readonly Pair[], path: FieldPath): Found | undefined {
  return firstOf(pairs, (pair) => {
    const typed = isScalar(pair.key) ? typedIn(pair.key) : undefined;
    if (typed === undefined) return search(pair.value, [...path, keyText(pair)]);
    const beside = pairs.filter((other) => other !== pair).map(keyText);
    return { at: "name" as const, path, typed, beside };
  });
}

/** The last is looked at first: it is where the text ends. */
function firstOf<T>(
  items: readonly T[],
  find: (item: T, at: number) => Found | undefined,
): Found | undefined {
  for (let at = items.length - 1; at >= 0; at -= 1) {
    const found = find(items[at] as T, at);
    if (found) return found;
  }
  return undefined;
}

/** What stands before the sign, in a text that is on one line. */
function typedIn({ value, type }: Scalar): string | undefined {
  const text = String(value);
  if (!text.endsWith(sign) || type === "BLOCK_LITERAL" || type === "BLOCK_FOLDED") return undefined;
  return text.slice(0, -sign.length);
}

/** A word of YAML that is there: a field's name, or a value. */
export interface YamlWord {
  readonly at: "name" | "value";
  /** The field that is named, or whose value it is. */
  readonly path: FieldPath;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** The name or the value that stands at an offset. */
export function findWordAt(yaml: string, offset: number): YamlWord | undefined {
  if (isTooMuch(yaml)) return undefined;
  return wordIn(parseYamlDocument(yaml).contents, [], offset);
}

function wordIn(node: unknown, path: FieldPath, offset: number): YamlWord | undefined {
  if (isTooDeep(path)) return undefined;
  if (isScalar(node)) return holds(node, offset) ? wordOf("value", node, path) : undefined;
  const items: readonly unknown[] = isSeq(node) || isMap(node) ? node.items : [];
  for (const [i, item] of items.entries()) {
    const found = isPair(item)
      ? wordInPair(item, path, offset)
      : wordIn(item, [...path, i], offset);
    if (found) return found;
  }
  return undefined;
}

function wordInPair(pair: Pair, path: FieldPath, offset: number): YamlWord | undefined {
  const inside = [...path, keyText(pair)];
  if (isScalar(pair.key) && holds(pair.key, offset)) return wordOf("name", pair.key, inside);
  return wordIn(pair.value, inside, offset);
}

function wordOf(at: YamlWord["at"], node: Scalar, path: FieldPath): YamlWord {
  const from = startOf(node);
  return { at, path, text: String(node.value ?? ""), from, to: node.range?.[1] ?? from };
}

function holds({ range }: Scalar, offset: number): boolean {
  return range != null && range[0] <= offset && offset <= range[1] && range[0] < range[1];
}
