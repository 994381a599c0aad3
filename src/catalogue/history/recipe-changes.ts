/** What changed in a glaze's recipe from one version of its record to another. */
import type { GlazeRecord } from "../../records/glaze.ts";
import { idKey } from "../../terms/ids.ts";

/** What a version held. */
export interface WrittenGlaze {
  readonly record: GlazeRecord;
  readonly notes: string;
}

/** A part of a recipe before and after; null where it was not in it. */
export interface RecipePart {
  /** Null for a material or a glaze that is not shown here. */
  readonly name: string | null;
  readonly isAddition: boolean;
  readonly before: number | null;
  readonly after: number | null;
}

export type RecipeChange =
  | { readonly what: "first" }
  | { readonly what: "parts"; readonly parts: readonly RecipePart[] }
  | { readonly what: "measure"; readonly by: "volume" | "weight" }
  | { readonly what: "unreadable" };

/** What a recipe's words mean: an id that is the same for all names of one thing, and the name that is shown. */
export interface RecipeNames {
  readonly material: (written: string) => { readonly id: string; readonly name: string } | null;
  readonly glaze: (written: string) => { readonly id: string; readonly name: string } | null;
}

/** A line of a recipe. */
interface Line {
  readonly key: string;
  readonly name: string | null;
  readonly list: "addition" | "blend" | "ingredient";
  readonly parts: number;
}

/** What differs between two recipes; empty where nothing does. */
export function recipeChanges(
  before: GlazeRecord,
  after: GlazeRecord,
  names: RecipeNames,
): readonly RecipeChange[] {
  const [a, b] = [linesOf(before, names), linesOf(after, names)];
  const parts = [...new Map([...a, ...b]).values()].flatMap(({ key, name, list }) => {
    const part = {
      name,
      isAddition: list === "addition",
      before: a.get(key)?.parts ?? null,
      after: b.get(key)?.parts ?? null,
    };
    return part.before === part.after ? [] : [part];
  });
  const by = after.by ?? "weight";
  const isMeasured = after.blend !== undefined && before.blend !== undefined;
  return [
    ...(parts.length > 0 ? [{ what: "parts", parts } as const] : []),
    ...(isMeasured && by !== (before.by ?? "weight") ? [{ what: "measure", by } as const] : []),
  ];
}

/** Shares closer than this are the same: a recipe may be written in other parts. */
const closeEnough = 1e-6;

/** Whether two recipes give the same glaze: all parts of one may be twice those of the other. */
export function isSameRecipe(a: GlazeRecord, b: GlazeRecord, names: RecipeNames): boolean {
  const [before, after] = [sharesOf(a, names), sharesOf(b, names)];
  const keys = new Set([...before.keys(), ...after.keys()]);
  const isBlend = a.blend !== undefined && b.blend !== undefined;
  return (
    [...keys].every(
      (key) => Math.abs((before.get(key) ?? 0) - (after.get(key) ?? 0)) < closeEnough,
    ) && !(isBlend && (a.by ?? "weight") !== (b.by ?? "weight"))
  );
}

/** Of ingredients and blends the share in their sum; additions are written for a hundred already. */
function sharesOf(record: GlazeRecord, names: RecipeNames): ReadonlyMap<string, number> {
  const lines = [...linesOf(record, names).values()];
  const sum = lines.reduce((all, { list, parts }) => (list === "addition" ? all : all + parts), 0);
  return new Map(
    lines.map(({ key, list, parts }) => [key, parts / (list === "addition" ? 100 : sum || 1)]),
  );
}

/** A recipe's lines by their keys; what is named twice in one list is one line. */
function linesOf(record: GlazeRecord, names: RecipeNames): ReadonlyMap<string, Line> {
  const lines = new Map<string, Line>();
  const put = (list: Line["list"], written: string, parts: number) => {
    const found = list === "blend" ? names.glaze(written) : names.material(written);
    const key = `${list} ${idKey(found?.id ?? written)}`;
    const more = (lines.get(key)?.parts ?? 0) + parts;
    lines.set(key, { key, name: found?.name ?? null, list, parts: more });
  };
  for (const { material, parts } of record.ingredients ?? []) put("ingredient", material, parts);
  for (const { glaze, parts } of record.blend ?? []) put("blend", glaze, parts);
  for (const { material, parts } of record.additions ?? []) put("addition", material, parts);
  return lines;
}
