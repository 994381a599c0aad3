/** From a YAML document to a source: every scalar as text, what was left empty left out. */
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { Source } from "../records/read.ts";
import {
  deepestNesting,
  longestKey,
  longestList,
  longestMap,
  longestValue,
  mostAnchors,
  mostRepeated,
  mostValues,
} from "../terms/limits.ts";
import { isEmptyValue, keyText, startOf } from "./yaml-document.ts";
import { describeNoColon, describeOddKey, mendKey, type Neighbour } from "./yaml-keys.ts";
import { findValueFaults, mendValue, typedText } from "./yaml-values.ts";
import {
  badBeginning,
  duplicateField,
  type FaultAt,
  longKey,
  longList,
  longValue,
  tooDeep,
  tooManyAliases,
  tooManyValues,
} from "./yaml-words.ts";

/** The name of a field that was left empty: nothing is lost by it, if there is such a field. */
export interface Blank {
  /** The names that lead to it, its own the last; entries of lists have none. */
  readonly path: readonly string[];
  readonly offset: number;
}

export interface SourceReading {
  /** Undefined where the document holds nothing. */
  readonly source: Source | undefined;
  readonly blanks: readonly Blank[];
  readonly faults: readonly FaultAt[];
}

interface Anchor {
  readonly source: Source | undefined;
  readonly size: number;
  readonly offset: number;
  used: boolean;
}

interface Walk {
  readonly yaml: string;
  readonly anchors: Map<string, Anchor>;
  readonly faults: FaultAt[];
  readonly blanks: Blank[];
  /** The names that lead to where the walk is. */
  readonly path: string[];
  /** How many maps and lists lie around where the walk is. */
  depth: number;
  /** How many values there are so far, those that aliases repeat included. */
  size: number;
  repeated: number;
}

/** Ends the walk: what is left is not looked at. */
class TooMuch extends Error {
  constructor(readonly fault: FaultAt) {
    super(fault.message);
  }
}

/** Turns the root of a YAML document into a source. */
export function toSource(yaml: string, root: unknown): SourceReading {
  const walk: Walk = {
    yaml,
    anchors: new Map(),
    faults: [],
    blanks: [],
    path: [],
    depth: 0,
    size: 0,
    repeated: 0,
  };
  const { faults, blanks } = walk;
  try {
    const source = sourceOf(root, walk);
    for (const [name, anchor] of walk.anchors)
      if (!anchor.used)
        faults.push({
          offset: yaml.lastIndexOf(`&${name}`, anchor.offset),
          ...badBeginning("&"),
        });
    return { source, faults, blanks };
  } catch (cause) {
    if (!(cause instanceof TooMuch)) throw cause;
    return { source: undefined, faults: [cause.fault], blanks: [] };
  }
}

function sourceOf(node: unknown, walk: Walk): Source | undefined {
  const before = walk.size;
  walk.size += 1;
  if (walk.size > mostValues) throw new TooMuch({ offset: startOf(node), ...tooManyValues });
  const source = contentOf(node, walk);
  const name = anchorOf(node);
  if (name === undefined) return source;
  const offset = startOf(node);
  if (walk.anchors.size >= mostAnchors) throw new TooMuch({ offset, ...badBeginning("&") });
  walk.anchors.set(name, { source, size: walk.size - before, offset, used: false });
  return source;
}

function anchorOf(node: unknown): string | undefined {
  return isMap(node) || isSeq(node) || isScalar(node) ? node.anchor : undefined;
}

function contentOf(node: unknown, walk: Walk): Source | undefined {
  if (isAlias(node)) return repeat(node.source, startOf(node), walk);
  if (isScalar(node)) return isEmptyValue(node) ? undefined : textOf(node, walk);
  if (!isMap(node) && !isSeq(node)) return undefined;
  const items: readonly unknown[] = node.items;
  const most = isMap(node) ? longestMap : longestList;
  if (items.length > most)
    throw new TooMuch({ offset: startOf(node), ...longList(items.length, most) });
  walk.depth += 1;
  if (walk.depth > deepestNesting) throw new TooMuch({ offset: startOf(node), ...tooDeep });
  const source = isMap(node) ? mapOf(node, walk) : listOf(node, walk);
  walk.depth -= 1;
  return source;
}

function textOf(scalar: Scalar, walk: Walk): string {
  const text = String(scalar.value);
  if (text.length > longestValue)
    throw new TooMuch({ offset: startOf(scalar), ...longValue(text.length) });
  const faults = findValueFaults(walk.yaml, scalar, walk.path.at(-1) ?? "");
  walk.faults.push(...faults);
  return faults.length > 0 ? mendValue(text) : text;
}

/** A map of which every value was left empty counts as left out; `{}` was meant as it stands. */
function mapOf(map: YAMLMap, walk: Walk): Source | undefined {
  const entries: [string, Source][] = [];
  const keys = new Set<string>();
  let before: Neighbour | undefined;
  for (const pair of map.items) {
    const key = checkKey(pair, keys, before, walk);
    const source = fieldOf(pair, key, walk);
    if (source !== undefined && !keys.has(key)) entries.push([key, source]);
    keys.add(key);
    before =
      typeof source === "string" ? { key, value: typedText(walk.yaml, pair.value) } : undefined;
  }
  // Unlike an assignment, this makes a field of a key such as `__proto__`.
  return entries.length > 0 || keys.size === 0 ? Object.fromEntries(entries) : undefined;
}

/** The name of a field, without what was found wrong with it. */
function checkKey(
  pair: Pair,
  earlier: ReadonlySet<string>,
  before: Neighbour | undefined,
  walk: Walk,
): string {
  const key = keyText(pair);
  const offset = startOf(pair.key);
  if (key.length > longestKey) throw new TooMuch({ offset, ...longKey });
  // Between brackets, an entry without a colon has no value at all, not even an empty one.
  if (pair.value === null) {
    walk.faults.push(describeNoColon(key, offset, before));
    return key;
  }
  const odd = describeOddKey(key, offset);
  if (odd) {
    walk.faults.push(odd);
    return mendKey(key);
  }
  if (isScalar(pair.key)) walk.faults.push(...findValueFaults(walk.yaml, pair.key, key));
  if (earlier.has(key)) walk.faults.push({ offset, ...duplicateField(key) });
  return key;
}

function fieldOf(pair: Pair, key: string, walk: Walk): Source | undefined {
  walk.path.push(key);
  const source = sourceOf(pair.value, walk);
  if (source === undefined && pair.value !== null)
    walk.blanks.push({ path: [...walk.path], offset: startOf(pair.key) });
  walk.path.pop();
  return source;
}

function listOf(list: YAMLSeq, walk: Walk): Source | undefined {
  const entries = list.items
    .map((item) => sourceOf(item, walk))
    .filter((source) => source !== undefined);
  return entries.length > 0 || list.items.length === 0 ? entries : undefined;
}

function repeat(name: string, offset: number, walk: Walk): Source | undefined {
  const anchor = walk.anchors.get(name);
  if (!anchor) {
    walk.faults.push({ offset, ...badBeginning("*") });
    return undefined;
  }
  anchor.used = true;
  walk.size += anchor.size;
  walk.repeated += anchor.size;
  if (walk.repeated > mostRepeated) throw new TooMuch({ offset, ...tooManyAliases });
  return anchor.source;
}
