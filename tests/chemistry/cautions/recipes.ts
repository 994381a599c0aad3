/** Recipes, materials and glazes to read cautions from. */
import type { Caution } from "../../../src/chemistry/cautions/cautions.ts";
import { cautionsOfMixture } from "../../../src/chemistry/cautions/cautions.ts";
import { cautionsOfGlazes } from "../../../src/chemistry/cautions/cautions-of-glazes.ts";
import { ingredientFinder } from "../../../src/chemistry/cautions/ingredients.ts";
import { glazeSchema } from "../../../src/records/glaze.ts";
import { materialSchema } from "../../../src/records/material.ts";
import { readAs, type SourceMap } from "../../../src/records/read.ts";

/** A base of which nothing is loud. */
export const base = { "potash-feldspar": 40, silica: 30, whiting: 20, kaolin: 10 };

function recordsOf<S extends typeof glazeSchema | typeof materialSchema>(
  schema: S,
  sources: Readonly<Record<string, SourceMap>>,
) {
  return new Map(
    Object.entries(sources).map(([id, source]) => {
      const reading = readAs(schema as typeof glazeSchema, source);
      if (!reading.ok) throw new Error(reading.faults[0]?.message);
      return [id, { id, file: `${id}.md`, record: reading.record, notes: "" }] as const;
    }),
  );
}

/** Materials as their records give them; numbers may stand as numbers. */
export function materialsOf(records: Readonly<Record<string, object>>) {
  const asText = JSON.parse(JSON.stringify(records), (_, value: unknown) =>
    typeof value === "number" ? String(value) : value,
  ) as Record<string, SourceMap>;
  const named = Object.fromEntries(
    Object.entries(asText).map(([id, source]) => [id, { name: id, ...source } as SourceMap]),
  );
  return recordsOf(materialSchema as never, named) as never as ReturnType<typeof findNothing>;
}

const findNothing = () => new Map() as Parameters<typeof ingredientFinder>[0]["materials"];

/** The cautions for a recipe of parts by the ids of materials. */
export function cautionsFor(
  recipe: Readonly<Record<string, number>>,
  materials: Readonly<Record<string, object>> = {},
): readonly Caution[] {
  const find = ingredientFinder({ materials: materialsOf(materials) });
  const batch = Object.entries(recipe).map(([id, weight]) => ({ ingredient: find(id), weight }));
  return cautionsOfMixture({ ingredients: batch.map(({ ingredient }) => ingredient), batch });
}

/** What a glaze is mixed of: parts by material, or a blend of glazes. */
export const recipe = (parts: Readonly<Record<string, number>>) => ({
  ingredients: Object.entries(parts).map(([material, n]) => ({ material, parts: String(n) })),
});
export const blendOf = (parts: Readonly<Record<string, number>>, by: "volume" | "weight") => ({
  by,
  blend: Object.entries(parts).map(([glaze, n]) => ({ glaze, parts: String(n) })),
});

/** The cautions of glazes by their ids. */
export function cautionsOf(
  glazes: Readonly<Record<string, object>>,
  materials: Readonly<Record<string, object>> = {},
): (id: string) => readonly Caution[] {
  const sources = Object.fromEntries(
    Object.entries(glazes).map(([id, source]) => [
      id,
      { name: id, kind: "glaze", ...source } as SourceMap,
    ]),
  );
  const found = cautionsOfGlazes({
    glazes: recordsOf(glazeSchema, sources) as never,
    materials: materialsOf(materials),
  });
  return (id) => found.get(id) ?? [];
}

export const loud = (cautions: readonly Caution[]) => cautions.filter(({ isLoud }) => isLoud);
export const messages = (cautions: readonly Caution[]) => cautions.map(({ message }) => message);
export const about = (cautions: readonly Caution[]) => cautions.map((caution) => caution.about);
