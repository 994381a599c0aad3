/** Fields as they are written on a command line: `cones=5-6`, `bought={maker: Oxbow}`. */

import type { MapShape } from "../editing/shape.ts";
import type { RecordKind } from "../records/kinds.ts";
import type { FieldPath } from "../records/problem.ts";
import { readAs, type Source, type SourceMap } from "../records/read.ts";
import { readFlow } from "./read-flow.ts";

export interface Assigned {
  readonly source: SourceMap;
  /** Why some of it cannot be read, each with how to put it right. */
  readonly faults: readonly string[];
}

/**
 * Reads fields, each a name, an equals sign and what one would write behind the name in YAML.
 *
 * @param schema of the record
 */
export function readAssignments(
  written: readonly string[],
  schema: RecordKind["schema"],
): Assigned {
  const fields = new Map<string, Source>();
  const faults: string[] = [];
  for (const each of written) {
    const read = readOne(each, fields);
    if ("fault" in read) faults.push(`${each}: ${read.fault}`);
    else fields.set(read.name, read.value);
  }
  const source = Object.fromEntries(fields);
  return { source, faults: [...faults, ...faultsOf(schema, source)] };
}

function readOne(each: string, before: ReadonlyMap<string, Source>) {
  const [, name, value = ""] = /^\s*([^=\s]+)\s*=(.*)$/su.exec(each) ?? [];
  if (name === undefined)
    return { fault: "there is no equals sign. Write a field and its value, as in cones=5-6." };
  if (before.has(name)) return { fault: `“${name}” is written twice. Take one of them out.` };
  const read = readFlow(value);
  if ("fault" in read) return read;
  if (read.value === "")
    return { fault: "nothing is written behind it. Take it out, or say what." };
  return { name, value: read.value };
}

/** What is missing is not told here: it may still be asked for. */
function faultsOf(schema: RecordKind["schema"], source: SourceMap): readonly string[] {
  const read = readAs(schema, source);
  const faults = read.ok ? [] : read.faults;
  return faults
    .filter(({ path }) => isWritten(source, path))
    .map(({ path, message, hint }) => `${path.join(" › ")}: ${message}. ${hint}`);
}

/** A fault of the record as a whole, or of a field that it has not, is of what is missing. */
function isWritten(source: SourceMap, [field]: FieldPath): boolean {
  return typeof field === "string" && Object.hasOwn(source, field);
}

/** The fields in the order in which the schema declares them. */
export function inOrder(source: SourceMap, { fields }: MapShape): SourceMap {
  const names = [...fields.keys()];
  return Object.fromEntries(
    Object.entries(source).sort(([a], [b]) => names.indexOf(a) - names.indexOf(b)),
  );
}
