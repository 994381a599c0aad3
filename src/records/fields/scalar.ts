/**
 * What every field is made of. Each YAML scalar arrives as the text its author wrote; the schemas
 * of this folder alone make numbers, dates and yes or no of it.
 *
 * A fault's message is two lines: what is wrong, then how to put it right.
 */
import * as z from "zod";

/** What a reading of a scalar gives: the value, or what is wrong with the text. */
export type Reading<T> =
  | { readonly value: T }
  | { readonly code: string; readonly message: string; readonly hint: string };

/** What a field may name: another record, a jar of its set, a maker of the studio, or a firing by its kind alone. */
export type Named =
  | "clay"
  | "firing"
  | "glaze"
  | "jar"
  | "kind of firing"
  | "maker"
  | "material"
  | "tile";

/**
 * What an editor is told of a field: YAML tools may take a scalar for a number or a truth value,
 * some fields take one value or a list, and some maps must carry one of several keys.
 */
export type EditorHint =
  | {
      readonly kind: "scalar";
      readonly schema: Readonly<Record<string, unknown>>;
      readonly names?: readonly Named[];
    }
  | { readonly kind: "one-or-many"; readonly of: object }
  | { readonly kind: "any-of"; readonly of: readonly object[] }
  | {
      readonly kind: "demanding";
      readonly of: object;
      /** The map carries one of these at most. */
      readonly keys: readonly string[];
      /** True where it carries no fewer. */
      readonly exactly: boolean;
    };

/** The editors' hints of the schemas made by this file; a described clone keeps its hint. */
export const editorHints = z.registry<EditorHint>();

/** @param names what the field may name, where it names something */
export function scalar<T>(
  read: (text: string) => Reading<T>,
  editor: Readonly<Record<string, unknown>>,
  names: readonly Named[] = [],
) {
  const schema = z.string().transform((text, context): T => {
    const reading = read(text.trim());
    if ("value" in reading) return reading.value;
    context.addIssue({
      code: "custom",
      message: `${reading.message}\n${reading.hint}`,
      params: { code: reading.code },
    });
    return z.NEVER;
  });
  editorHints.add(schema, { kind: "scalar", schema: editor, names });
  return schema;
}
