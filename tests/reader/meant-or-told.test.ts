/**
 * Nothing is lost or changed in silence: what is read of a record, however it was typed, is what was
 * meant, or something is told of it. The usual run types the same records each time;
 * `TILEBOOK_RECORDS=10000` types as many, and others each time.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { parseText } from "../../src/archive/parse-text.ts";
import { decodeText } from "../../src/reader/decode-text.ts";
import type { FoundFiles, KindOfRecord } from "../../src/reader/found-files.ts";
import { readRecords } from "../../src/reader/read-records.ts";
import { recordKinds } from "../../src/records/kinds.ts";
import { readAs, type Source, type SourceMap } from "../../src/records/read.ts";
import { makeReference } from "../../src/records/reference.ts";
import { meant } from "./intended.ts";
import { hand, save, type } from "./typed.ts";

const count = Number(process.env.TILEBOOK_RECORDS ?? 600);
const perKind = Math.ceil(count / recordKinds.length);

test("the records at random have every field that the schemas declare", () => {
  for (const { kind, fields } of makeReference()) {
    const arbitrary = meant[kind];
    const seen = new Set(fc.sample(arbitrary ?? fc.constant({}), 2000).flatMap((r) => namesIn(r)));
    const missing = fields.filter(({ name }) => !seen.has(name.split(" › ").at(-1) ?? ""));
    expect([kind, missing.map(({ name }) => name)]).toEqual([kind, []]);
  }
});

function namesIn(value: Source): string[] {
  if (typeof value === "string") return [];
  const parts = Array.isArray(value) ? [] : Object.keys(value);
  return [...parts, ...Object.values(value).flatMap(namesIn)];
}

test.each(recordKinds)(
  "a $name typed without a slip is read as it was meant",
  ({ name, schema }) => {
    const record = meant[name] ?? fc.constant({});
    fc.assert(
      fc.property(record, hand(0), (source, by) => {
        const found = readTyped(name, save(type(source, by), formOf(name), by));
        expect(found.problems).toEqual([]);
        expect(found.record).toEqual(asRead(schema, source));
      }),
      { numRuns: perKind },
    );
  },
);

test.each(recordKinds)(
  "a $name typed with slips is read as it was meant, or told",
  ({ name, schema }) => {
    const record = meant[name] ?? fc.constant({});
    fc.assert(
      fc.property(record, hand(25), (source, by) => {
        const found = readTyped(name, save(type(source, by), formOf(name), by));
        if (found.problems.length > 0 || namesNothing(found.source, "")) return;
        expect(withPlainSpaces(found.record)).toEqual(withPlainSpaces(asRead(schema, source)));
      }),
      { numRuns: perKind },
    );
  },
);

function asRead(schema: (typeof recordKinds)[number]["schema"], source: SourceMap): unknown {
  const reading = readAs(schema, source);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.record;
}

function formOf(kind: string): "markdown" | "yaml" {
  return kind === "studio" ? "yaml" : "markdown";
}

/** What the reader makes of one file, and what it has to say of it. */
function readTyped(kind: KindOfRecord | "studio", bytes: Uint8Array) {
  const decoded = decodeText(bytes);
  if (!decoded.ok) return { record: null, source: null, problems: [decoded.fault] };
  const file = "a.md";
  const parsed = parseText(decoded.text, formOf(kind));
  const files: FoundFiles = {
    studio: kind === "studio" ? file : undefined,
    records: kind === "studio" ? [] : [{ kind, id: "a", file, folder: "" }],
    pictures: [],
    logs: [],
    problems: [],
  };
  const all = readRecords(files, new Map([[file, parsed]]));
  const record = kind === "studio" ? all.studio : all[`${kind}s`].read.get("a")?.record;
  return { record, source: parsed.source, problems: all.problems };
}

/** Fields that name another record or a code: what cannot be the name of any is told later. */
const naming = new Set(
  "after clay codes control fired formerly from glaze jars maker material over teacher tiles to".split(
    " ",
  ),
);

function namesNothing(source: Source | null, field: string): boolean {
  if (source === null) return false;
  if (typeof source === "string") return naming.has(field) && /[^\w.-]/u.test(source.trim());
  if (Array.isArray(source)) return source.some((entry) => namesNothing(entry, field));
  return Object.entries(source).some(([key, value]) =>
    namesNothing(value, naming.has(field) ? field : key),
  );
}

/** A no-break space in a text stays as it was typed, and reads like any other. */
function withPlainSpaces(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, part) => (part instanceof Map ? [...part] : part)).replaceAll(
      "\u00a0",
      " ",
    ),
  );
}
