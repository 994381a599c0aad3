/** From a source, as its author wrote it, to a typed record or the faults in it. */
import type * as z from "zod";
import type { FieldFault, FieldPath } from "./problem.ts";
import { suggestOneOf } from "./suggest.ts";

/** What YAML gives when every scalar is text and what was left empty is left out. */
export type Source = string | readonly Source[] | SourceMap;
export interface SourceMap {
  readonly [key: string]: Source;
}

export type Read<T> =
  | { readonly ok: true; readonly record: T }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * Reads a source by a schema of this folder.
 *
 * @returns the record, or every fault in it, each with its field and a hint
 */
export function readAs<T>(schema: z.ZodType<T>, source: SourceMap): Read<T> {
  const unkept = findUnkept(source, []);
  const result = schema.safeParse(source, { reportInput: true });
  if (result.success && unkept.length === 0) return { ok: true, record: result.data };
  const faults = result.success ? [] : result.error.issues.flatMap(toFaults);
  const told = new Set(unkept.map(({ path }) => JSON.stringify(path)));
  return {
    ok: false,
    faults: [...unkept, ...faults.filter(({ path }) => !told.has(JSON.stringify(path)))],
  };
}

/** The one word that schemas lose in silence where it names something, as an object has it already. */
const unkeptName = "__proto__";

function findUnkept(source: Source, path: FieldPath): FieldFault[] {
  if (typeof source === "string") return [];
  return Object.entries(source).flatMap(([key, value]: [string, Source]) => {
    const at = [...path, Array.isArray(source) ? Number(key) : key];
    return [...(key === unkeptName ? [unkept(at)] : []), ...findUnkept(value, at)];
  });
}

function unkept(path: FieldPath): FieldFault {
  return {
    path,
    atKey: true,
    code: "unusable-name",
    message: `“${unkeptName}” cannot be the name of anything here`,
    hint: "Take another word.",
  };
}

function toFaults(issue: z.core.$ZodIssue): FieldFault[] {
  const path = issue.path.filter((step) => typeof step !== "symbol") as FieldPath;
  if (issue.code === "unrecognized_keys") return unknownFields(path, issue.keys, issue.message);
  if (issue.code === "invalid_type") return [wrongForm(path, issue.expected, issue.input)];
  if (issue.code === "too_small") return [emptyList(path)];
  if (issue.code === "too_big") return [longList(path, Number(issue.maximum))];
  const [message = "", hint = ""] = issue.message.split("\n");
  const params = issue.code === "custom" ? (issue.params ?? {}) : {};
  const code = String(params.code ?? "invalid");
  return [{ path, code, message, hint, ...(params.atKey === true ? { atKey: true } : {}) }];
}

/** A schema's message for unknown fields is the list of those it knows: see `fields`. */
function unknownFields(path: FieldPath, keys: readonly string[], known: string): FieldFault[] {
  return keys.map((key) => ({ path: [...path, key], ...unknownField(key, known.split(" ")) }));
}

/** The fault of a field that nobody declared, whatever its value. */
export function unknownField(key: string, known: readonly string[]): Omit<FieldFault, "path"> {
  return {
    atKey: true,
    code: "unknown-field",
    message: `There is no field “${key}” here`,
    hint: isForNotes(key)
      ? "Write it as notes, beneath the second line “---”, in your own words."
      : suggestOneOf(key, known),
  };
}

function isForNotes(key: string): boolean {
  return /^(?:notes?|comments?|descriptions?|remarks?)$/iu.test(key);
}

function wrongForm(path: FieldPath, expected: string, input: unknown): FieldFault {
  const name = lastName(path);
  if (input === undefined)
    return {
      path,
      code: "missing-field",
      message: `“${name}” is missing`,
      hint: missingHints[name] ?? `Add a line “${name}:” with its value.`,
    };
  return {
    path,
    code: "wrong-form",
    message: `“${name}” should be ${forms[expected] ?? expected}, and ${describe(input)} was found`,
    hint: formHints[expected] ?? "Write it as the reference page shows.",
  };
}

/** What to add for a field whose value is always much the same. */
const missingHints: Readonly<Record<string, string | undefined>> = {
  __proto__: null as never,
  format: "Add a line “format: 1” at the top of the file.",
  layers: "Add a line “layers:” and, beneath it, what was put on first: “  - glaze: soot”.",
};

function emptyList(path: FieldPath): FieldFault {
  return {
    path,
    code: "empty-list",
    message: `“${lastName(path)}” is an empty list`,
    hint: "Add at least one entry, or take the field out.",
  };
}

function longList(path: FieldPath, most: number): FieldFault {
  return {
    path,
    code: "list-too-long",
    message: `“${lastName(path)}” has more than the ${most} entries that are read`,
    hint: "Check that nothing was pasted here twice.",
  };
}

function lastName(path: FieldPath): string {
  return String(path.findLast((step) => typeof step === "string") ?? "this record");
}

const forms: Readonly<Record<string, string>> = {
  array: "a list",
  object: "a map of fields",
  record: "a map",
  string: "a single value",
};

const formHints: Readonly<Record<string, string>> = {
  array: "Begin each entry on a line of its own with “- ”.",
  object: "Write its fields as “name: value”, indented, or in curly brackets.",
  record: "Write it as “name: value”, indented, or in curly brackets.",
  string: "Write one value on the same line.",
};

function describe(input: unknown): string {
  if (Array.isArray(input)) return "a list";
  if (typeof input === "object") return "a map";
  return `“${String(input)}”`;
}
