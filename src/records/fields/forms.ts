/** Values that may have one of several forms. */
import * as z from "zod";
import { editorHints } from "./scalar.ts";

/** A fault of a value's form, found before any schema was chosen for it. */
export interface FormFault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

/**
 * A value that may have one of several forms, told apart by looking at it, so that a fault is
 * always described in terms of the form that was meant.
 */
export function oneForm<Out>(
  forms: readonly z.ZodType<Out>[],
  choose: (input: unknown) => z.ZodType<Out> | FormFault,
) {
  const schema = z.unknown().transform((input, context): Out => {
    const chosen = choose(input);
    if (chosen instanceof z.ZodType) return readInto(context, chosen, input);
    addFault(context, chosen);
    return z.NEVER;
  });
  editorHints.add(schema, { kind: "any-of", of: forms });
  return schema;
}

/** Chooses a form by whether the value is a scalar or a map. */
export function scalarOrMap<Out>(scalarForm: z.ZodType<Out>, mapForm: z.ZodType<Out>) {
  return oneForm<Out>([scalarForm, mapForm], (input) =>
    typeof input === "string" ? scalarForm : mapForm,
  );
}

/**
 * Demands that a map carries exactly one of some keys; the rest of the map is read all the same.
 *
 * @param what what the keys tell, for the message: `where the glaze comes from`
 */
export function exactlyOneOf<Out>(schema: z.ZodType<Out>, keys: readonly string[], what: string) {
  return demanding(schema, { keys, exactly: true }, (input) => {
    const found = keys.filter((key) => key in input);
    if (found.length > 1) return severalOf(found, keys, what);
    if (found.length === 1) return undefined;
    return {
      code: "none-of",
      message: `Nothing says ${what}`,
      hint: `Write exactly one of: ${keys.join(", ")}.`,
    };
  });
}

/** Demands that a map carries no more than one of some keys; otherwise as `exactlyOneOf`. */
export function atMostOneOf<Out>(schema: z.ZodType<Out>, keys: readonly string[], what: string) {
  return demanding(schema, { keys, exactly: false }, (input) => {
    const found = keys.filter((key) => key in input);
    return found.length > 1 ? severalOf(found, keys, what) : undefined;
  });
}

function severalOf(found: readonly string[], keys: readonly string[], what: string): FormFault {
  return {
    code: "more-than-one-of",
    message: `${found.join(" and ")} both say ${what}`,
    hint: `Keep exactly one of: ${keys.join(", ")}.`,
  };
}

/** Reads a map as `schema` does and adds a fault of its form, so that no fault hides another. */
function demanding<Out>(
  schema: z.ZodType<Out>,
  demand: { readonly keys: readonly string[]; readonly exactly: boolean },
  findFault: (input: object) => FormFault | undefined,
) {
  const demanded = z.unknown().transform((input, context): Out => {
    const isMap = typeof input === "object" && input !== null && !Array.isArray(input);
    const fault = isMap ? findFault(input) : undefined;
    if (fault) addFault(context, fault);
    return readInto(context, schema, input);
  });
  editorHints.add(demanded, { kind: "demanding", of: schema, ...demand });
  return demanded;
}

/** Reads a value as `schema` does, unless `findFault` refuses it without looking any closer. */
export function refusing<Out>(
  schema: z.ZodType<Out>,
  findFault: (input: unknown) => FormFault | undefined,
) {
  const bounded = z.unknown().transform((input, context): Out => {
    const fault = findFault(input);
    if (!fault) return readInto(context, schema, input);
    addFault(context, fault);
    return z.NEVER;
  });
  editorHints.add(bounded, { kind: "any-of", of: [schema] });
  return bounded;
}

function addFault(context: z.RefinementCtx, fault: FormFault): void {
  context.addIssue({
    code: "custom",
    message: `${fault.message}\n${fault.hint}`,
    params: { code: fault.code },
  });
}

function readInto<Out>(context: z.RefinementCtx, schema: z.ZodType<Out>, input: unknown): Out {
  const result = schema.safeParse(input, { reportInput: true });
  if (result.success) return result.data;
  for (const issue of result.error.issues) context.issues.push({ ...issue } as never);
  return z.NEVER;
}
