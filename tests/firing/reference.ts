/** The published values that the checks of this room stand on. */
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { type Cone, parseCone } from "../../src/terms/cones.ts";

type Row = Readonly<Record<string, string>>;

export function readReference(name: string): readonly Row[] {
  const file = new URL(`../reference/${name}.csv`, import.meta.url);
  return parse(readFileSync(file, "utf8"), { columns: true }) as Row[];
}

/** A cone by its name; throws where a test misspells one. */
export function cone(name: string): Cone {
  const reading = parseCone(name, "any");
  if (!reading.ok) throw new Error(`no cone ${name}`);
  return reading.cone;
}
