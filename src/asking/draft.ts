/** A record while it is being written: every answer is read by the record's own schema at once. */
import type { RecordKind } from "../records/kinds.ts";
import { type FieldPath, isFieldPathWithin } from "../records/problem.ts";
import { readAs, type Source, type SourceMap } from "../records/read.ts";

export interface Draft {
  /** What was answered so far. */
  readonly source: SourceMap;
  /** What would be wrong with a field, or in it, were this its value. */
  faultsOf(path: FieldPath, value: Source): readonly string[];
  /** Gives a field its value; without one the field goes. */
  put(path: FieldPath, value: Source | undefined): void;
}

export function makeDraft(schema: RecordKind["schema"], begin: SourceMap = {}): Draft {
  let source = begin;
  return {
    get source() {
      return source;
    },
    faultsOf(path, value) {
      const read = readAs(schema, withValue(source, path, value) as SourceMap);
      const faults = read.ok ? [] : read.faults;
      return faults
        .filter((fault) => isFieldPathWithin(fault.path, path))
        .map(({ message, hint }) => `${message}. ${hint}`);
    },
    put(path, value) {
      source = (withValue(source, path, value) ?? {}) as SourceMap;
    },
  };
}

/** The same with a value at a path: what lies around it is made; without a value the field goes. */
function withValue(
  around: Source | undefined,
  path: FieldPath,
  value: Source | undefined,
): Source | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (typeof step === "number") {
    const entries = Array.isArray(around) ? (around as readonly Source[]) : [];
    const entry = withValue(entries[step], rest, value);
    const after = entries.slice(step + 1);
    return [...entries.slice(0, step), ...(entry === undefined ? [] : [entry]), ...after];
  }
  const fields = typeof around === "object" && !Array.isArray(around) ? (around as SourceMap) : {};
  const field = withValue(Object.hasOwn(fields, step) ? fields[step] : undefined, rest, value);
  const { [step]: _, ...others } = fields;
  if (field === undefined) return others;
  // Unlike an assignment, this makes a field of a key such as `__proto__`, and leaves it in its place.
  return Object.fromEntries(
    Object.hasOwn(fields, step)
      ? Object.entries(fields).map(([key, old]) => [key, key === step ? field : old])
      : [...Object.entries(fields), [step, field]],
  );
}
