/** From a YAML document to a source: every scalar as text, what was left empty left out. */
import { isAlias, isMap, isScalar, isSeq, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { Source } from "../records/read.ts";
import { findUnseen } from "./decode-text.ts";
import { isEmptyValue, keyText, startOf } from "./yaml-document.ts";

/** What is found on the way: faults that the parser itself does not see. */
export type SourceFault =
  | { readonly found: "duplicate-key"; readonly key: string; readonly offset: number }
  | { readonly found: "unseen-character"; readonly name: string; readonly offset: number }
  | { readonly found: "unknown-alias"; readonly name: string; readonly offset: number }
  | { readonly found: "unused-anchor"; readonly name: string; readonly offset: number }
  | { readonly found: "too-many-aliases"; readonly offset: number };

export interface SourceReading {
  /** Undefined where the document holds nothing. */
  readonly source: Source | undefined;
  readonly faults: readonly SourceFault[];
}

/** How many values aliases may repeat in one record: nobody needs more, and a bomb needs millions. */
const mostRepeated = 1000;

interface Anchor {
  readonly source: Source | undefined;
  readonly size: number;
  readonly offset: number;
  used: boolean;
}

interface Walk {
  readonly anchors: Map<string, Anchor>;
  readonly faults: SourceFault[];
  /** How many values there are so far, those that aliases repeat included. */
  size: number;
  repeated: number;
}

/** Turns the root of a YAML document into a source. */
export function toSource(root: unknown): SourceReading {
  const walk: Walk = { anchors: new Map(), faults: [], size: 0, repeated: 0 };
  const source = sourceOf(root, walk);
  for (const [name, anchor] of walk.anchors)
    if (!anchor.used) walk.faults.push({ found: "unused-anchor", name, offset: anchor.offset });
  return { source, faults: walk.faults };
}

function sourceOf(node: unknown, walk: Walk): Source | undefined {
  const before = walk.size;
  walk.size += 1;
  const source = contentOf(node, walk);
  const name = anchorOf(node);
  if (name !== undefined)
    walk.anchors.set(name, {
      source,
      size: walk.size - before,
      offset: startOf(node),
      used: false,
    });
  return source;
}

function anchorOf(node: unknown): string | undefined {
  return isMap(node) || isSeq(node) || isScalar(node) ? node.anchor : undefined;
}

function contentOf(node: unknown, walk: Walk): Source | undefined {
  if (isAlias(node)) return repeat(node.source, startOf(node), walk);
  if (isMap(node)) return mapOf(node, walk);
  if (isSeq(node)) return listOf(node, walk);
  return isScalar(node) && !isEmptyValue(node) ? textOf(node, walk) : undefined;
}

/** An escape such as `"\b"` can bring in what could not stand in the file itself. */
function textOf(scalar: Scalar, walk: Walk): string {
  const text = String(scalar.value);
  const unseen = findUnseen(text);
  if (unseen)
    walk.faults.push({ found: "unseen-character", name: unseen.name, offset: startOf(scalar) });
  return text;
}

/** A map of which every value was left empty counts as left out; `{}` was meant as it stands. */
function mapOf(map: YAMLMap, walk: Walk): Source | undefined {
  const entries: [string, Source][] = [];
  const keys = new Set<string>();
  for (const pair of map.items) {
    const key = keyText(pair);
    if (isScalar(pair.key)) textOf(pair.key, walk);
    const source = sourceOf(pair.value, walk);
    if (keys.has(key)) walk.faults.push({ found: "duplicate-key", key, offset: startOf(pair.key) });
    else if (source !== undefined) entries.push([key, source]);
    keys.add(key);
  }
  // Unlike an assignment, this makes a field of a key such as `__proto__`.
  return entries.length > 0 || keys.size === 0 ? Object.fromEntries(entries) : undefined;
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
    walk.faults.push({ found: "unknown-alias", name, offset });
    return undefined;
  }
  anchor.used = true;
  walk.size += anchor.size;
  walk.repeated += anchor.size;
  if (walk.repeated <= mostRepeated) return anchor.source;
  if (walk.repeated - anchor.size <= mostRepeated)
    walk.faults.push({ found: "too-many-aliases", offset });
  return undefined;
}
