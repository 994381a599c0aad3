/** Finds a field again in the text it was read from. Done only for what is wrong. */
import { isAlias, isMap, isScalar, isSeq } from "yaml";
import type { FieldPath } from "../records/problem.ts";
import { placeOfOffset } from "./decode-text.ts";
import { isEmptyValue, keyText, parseYamlDocument, startOf } from "./yaml-document.ts";

/** Line and column, both from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Where a file begins. */
export const beginning: Position = { line: 1, column: 1 };

/**
 * Finds where a field is written.
 *
 * @param yaml its lines numbered as in the file it comes from
 * @param path the field; where it is missing, the nearest one around it is found
 * @param atKey finds the field's name, not its value
 */
export function findPosition(yaml: string, path: FieldPath, atKey = false): Position {
  const root = path.length === 0 ? undefined : parseYamlDocument(yaml).contents;
  return root ? placeOfOffset(yaml, findOffset(yaml, root, path, atKey)) : beginning;
}

/** What a step of a path led to: a list's entry has no name. */
interface Found {
  readonly key: unknown;
  readonly value: unknown;
}

function findOffset(yaml: string, root: unknown, path: FieldPath, atKey: boolean): number {
  let found: Found = { key: null, value: root };
  let isWhole = true;
  for (const step of path) {
    const next = isWhole ? takeStep(found, step) : undefined;
    if (next) found = next;
    else isWhole = false;
  }
  return found.key && (atKey || !standsOnKeyLine(yaml, found))
    ? startOf(found.key)
    : startOf(found.value);
}

function takeStep(found: Found, step: string | number): Found | undefined {
  const { value } = found;
  if (typeof step === "number") {
    if (isSeq(value)) {
      // Empty entries were left out when the list was read, so they do not count here either.
      const entry = value.items.filter((item) => !isEmptyValue(item))[step];
      return entry === undefined ? undefined : { key: null, value: entry };
    }
    // One value where a list might stand counts as its only entry.
    return step === 0 && (isMap(value) || isScalar(value) || isAlias(value)) ? found : undefined;
  }
  if (!isMap(value)) return undefined;
  const pair = value.items.find((item) => keyText(item) === step);
  return pair && { key: pair.key, value: pair.value };
}

/** A list or map that begins beneath its name is pointed at by its name. */
function standsOnKeyLine(yaml: string, { key, value }: Found): boolean {
  return !isEmptyValue(value) && !yaml.slice(startOf(key), startOf(value)).includes("\n");
}
