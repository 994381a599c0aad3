/** JSON Schemas of an archive's records with the archive's own ids in them, for editors that read such. */
import type { Archive } from "../records/archive.ts";
import type { Named } from "../records/fields.ts";
import { type JsonSchema, jsonSchemaOf } from "../records/json-schema.ts";
import { recordKinds } from "../records/kinds.ts";
import { type KnownNames, knownNames } from "./names.ts";

/** The version that editors have read the longest; the records need nothing newer. */
const dialect = "http://json-schema.org/draft-07/schema#";

/**
 * The schemas, by the names of their files. An id is offered and never forced: what is new may be written as well.
 * Of makers they hold the keys alone, so that a name taken out of studio.yaml is left nowhere. Jars are left
 * out, as each set numbers its own.
 */
export function editorSchemas(archive: Archive): ReadonlyMap<string, string> {
  const known = knownNames(archive, null);
  return new Map(
    recordKinds.map(({ name, sentence, schema }) => {
      const { $schema: _, ...described } = jsonSchemaOf(schema, (names) => offered(names, known));
      const definitions = definitionsOf(known);
      const whole = {
        $schema: dialect,
        title: name,
        description: sentence,
        ...described,
        definitions,
      };
      return [`${name}.schema.json`, `${JSON.stringify(whole, null, 1)}\n`];
    }),
  );
}

function offered(names: readonly Named[], known: KnownNames): JsonSchema | undefined {
  const there = names.filter((name) => known[name].length > 0);
  if (there.length === 0) return undefined;
  const parts = there.map((name) => ({ $ref: `#/definitions/${definitionName(name)}` }));
  return { anyOf: [...parts, { type: ["string", "number"] }] };
}

function definitionsOf(known: KnownNames): JsonSchema {
  return Object.fromEntries(
    Object.entries(known).flatMap(([name, all]) =>
      all.length === 0
        ? []
        : [[definitionName(name), { enum: [...new Set(all.map(({ word }) => word))] }]],
    ),
  );
}

function definitionName(name: string): string {
  return name.replaceAll(" ", "-");
}
