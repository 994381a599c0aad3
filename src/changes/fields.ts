/** Which fields of a record are otherwise than before. */
import type { FieldChange, RecordChange } from "./types.ts";

/** What is never told of a record: who somebody is, and where what is not listed can be seen. */
const privateFields: Readonly<Record<RecordChange["kind"] | "glaze" | "tile", readonly string[]>> =
  {
    clay: [],
    firing: [],
    glaze: [],
    material: [],
    page: [],
    set: ["link", "maker", "teacher"],
    studio: ["makers"],
    tile: ["maker"],
  };

type Kind = keyof typeof privateFields;

interface Written {
  readonly record: object;
  readonly notes: string;
}

/**
 * The fields of a record that differ, in the order of their names, those of a set's defaults by
 * themselves; the words below the front matter last, as `notes`.
 *
 * @param before left out for a new record
 */
export function fieldChanges(
  kind: Kind,
  before: Written | undefined,
  after: Written,
): readonly FieldChange[] {
  const [was, now] = [spread(before?.record ?? {}), spread(after.record)];
  const names = [...new Set([...was.keys(), ...now.keys()])].sort();
  const changes = [...names, "notes"].map((field) => ({
    field,
    before: field === "notes" ? (before?.notes ?? "") : (was.get(field) ?? null),
    after: field === "notes" ? after.notes : (now.get(field) ?? null),
    isPrivate: privateFields[kind].includes(field.replace(/^defaults: /u, "")),
  }));
  return changes
    .filter((change) => !isSame(change.before, change.after))
    .map((change) => (change.isPrivate ? { ...change, before: null, after: null } : change));
}

function spread(record: object): ReadonlyMap<string, unknown> {
  return new Map(
    Object.entries(record).flatMap(([field, value]) =>
      field === "defaults" && typeof value === "object" && value !== null
        ? Object.entries(value).map(([name, one]) => [`defaults: ${name}`, one] as const)
        : [[field, value] as const],
    ),
  );
}

/** Whether two values that were read are the same, left out or undefined alike. */
export function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
