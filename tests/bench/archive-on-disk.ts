/** Large archives on disk, as a studio would write them: Markdown records, no pictures. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type FieldValue, renderRecord } from "../../src/reader/render-record.ts";
import type { Filed } from "../../src/records/archive.ts";
import { formatConeRange } from "../../src/terms/cones.ts";
import { makeLargeArchive } from "./large-archive.ts";

type Fields = Readonly<Record<string, unknown>>;

/** Writes an archive of so many tiles into a folder. */
export function writeLargeArchive(folder: string, tiles: number): void {
  const { records } = makeLargeArchive(tiles);
  write(folder, "studio.yaml", renderRecord(fieldsOf(records.studio)).replaceAll("---\n", ""));
  for (const { read } of [
    records.sets,
    records.tiles,
    records.firings,
    records.glazes,
    records.clays,
    records.materials,
  ]) {
    for (const { file, record, notes } of read.values() as Iterable<Filed<unknown>>)
      write(folder, file, asFile(record as Fields, notes));
  }
}

/** A tile whose result is known and that has no photograph did not come back whole. */
function asFile(record: Fields, notes: string): string {
  const whole = { ...record, ...("result" in record && { fate: "cracked" }) };
  return `${renderRecord(fieldsOf(whole))}${notes}\n`;
}

function write(folder: string, file: string, content: string): void {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
}

function fieldsOf(record: unknown): Record<string, FieldValue | undefined> {
  const { codes, ...fields } = record as Fields & { readonly codes?: readonly unknown[] };
  return {
    ...(asTyped(fields) as Record<string, FieldValue>),
    ...(codes && { codes: asTyped(codes.flat()) }),
  };
}

/** A value as it is typed: what was read of it is turned back into text. */
function asTyped(value: unknown, key = ""): FieldValue | undefined {
  if (value === undefined) return undefined;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return value.flat().map((entry) => asTyped(entry) ?? "");
  if (typeof value !== "object" || value === null) return String(value);
  if (key === "cones") return formatConeRange(value as Parameters<typeof formatConeRange>[0]);
  if ("read" in value && "cone" in value) return String(value.cone);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([name]) => name !== "step")
      .map(([name, inside]) => [fieldName(name), asTyped(inside, name)]),
  );
}

/** `nextTime` is typed `next-time`. */
function fieldName(name: string): string {
  return /^[a-z]+[A-Z][a-z]+$/u.test(name)
    ? name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)
    : name;
}
