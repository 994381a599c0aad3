/** A value as one would write it behind a field's name in YAML. */
import { parseYaml } from "../reader/parse-yaml.ts";
import type { Source } from "../records/read.ts";

export type ReadFlow = { readonly value: Source } | { readonly fault: string };

/** Reads a value; an empty one is an empty text. */
export function readFlow(written: string): ReadFlow {
  const { source, faults } = parseYaml(`value: ${written}\n`);
  const [fault] = faults;
  if (fault) return { fault: `${fault.message}. ${fault.hint}` };
  return { value: source?.value ?? "" };
}
