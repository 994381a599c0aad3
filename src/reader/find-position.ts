/** Finds a field again in the text it was read from. Done only for what is wrong. */
import { isAlias, isMap, isScalar, isSeq, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import type { FieldPath } from "../records/problem.ts";
import { indexLines, type Position } from "./line-index.ts";
import { isEmptyValue, isLeftOut, keyText, parseYamlDocument, startOf } from "./yaml-document.ts";

/** Where a file begins. */
export const beginning: Position = { line: 1, column: 1 };

/** Finds where a field is written: see `findPosition`. */
export type PositionFinder = (path: FieldPath, atKey?: boolean) => Position;

/**
 * Finds where a field is written.
 *
 * @param yaml its lines numbered as in the file it comes from
 * @param path the field; where it is missing, the nearest one around it is found
 * @param atKey finds the field's name, not its value
 */
export function findPosition(yaml: string, path: FieldPath, atKey = false): Position {
  return makePositionFinder(yaml)(path, atKey);
}

/** Makes the function that finds fields in a text, which is parsed once for all of them. */
export function makePositionFinder(yaml: string): PositionFinder {
  const root = parseYamlDocument(yaml).contents;
  const placeOf = indexLines(yaml);
  const take = makeSteps();
  return (path, atKey = false) =>
    root && path.length > 0
      ? placeOf(findOffset(yaml, follow(root, path, take), atKey))
      : beginning;
}

/** What a step of a path led to: a list's entry has no name. */
interface Found {
  readonly key: unknown;
  readonly value: unknown;
}

type TakeStep = (found: Found, step: string | number) => Found | undefined;

function follow(root: unknown, path: FieldPath, take: TakeStep): Found {
  let found: Found = { key: null, value: root };
  for (const step of path) {
    const next = take(found, step);
    if (!next) break;
    found = next;
  }
  return found;
}

function findOffset(yaml: string, found: Found, atKey: boolean): number {
  return found.key && (atKey || !standsOnKeyLine(yaml, found))
    ? startOf(found.key)
    : startOf(found.value);
}

/** Remembers the entries of each list and map that it was led through. */
function makeSteps(): TakeStep {
  const entries = new WeakMap<YAMLSeq, readonly unknown[]>();
  const pairs = new WeakMap<YAMLMap, ReadonlyMap<string, Pair>>();
  return (found, step) => {
    const { value } = found;
    if (typeof step === "string") {
      const pair = isMap(value) ? remember(pairs, value, pairsByKey).get(step) : undefined;
      return pair && { key: pair.key, value: pair.value };
    }
    // One value where a list might stand counts as its only entry.
    if (!isSeq(value))
      return step === 0 && (isMap(value) || isScalar(value) || isAlias(value)) ? found : undefined;
    const entry = remember(entries, value, entriesThatCount)[step];
    return entry === undefined ? undefined : { key: null, value: entry };
  };
}

function remember<K extends object, V>(known: WeakMap<K, V>, key: K, make: (key: K) => V): V {
  const value = known.get(key) ?? make(key);
  known.set(key, value);
  return value;
}

function pairsByKey(map: YAMLMap): ReadonlyMap<string, Pair> {
  const pairs = new Map<string, Pair>();
  for (const pair of map.items) if (!pairs.has(keyText(pair))) pairs.set(keyText(pair), pair);
  return pairs;
}

/** Entries that count as left out were left out when the list was read. */
function entriesThatCount(list: YAMLSeq): readonly unknown[] {
  return list.items.filter((item) => !isLeftOut(item));
}

/** A list or map that begins beneath its name is pointed at by its name. */
function standsOnKeyLine(yaml: string, { key, value }: Found): boolean {
  return !isEmptyValue(value) && !yaml.slice(startOf(key), startOf(value)).includes("\n");
}
