/** Writes a record as a potter would: YAML between two lines of `---`. */
import { Document, isCollection, isMap, isPair, type Node, visit } from "yaml";
import { isOdd } from "./yaml-values.ts";

/** A field's value; a list holds one entry a line, and whatever lies deeper stands on one line. */
export type FieldValue =
  | string
  | readonly FieldValue[]
  | { readonly [key: string]: FieldValue | undefined };

/**
 * Renders a record's file. Fields that are undefined are left out; texts are quoted where YAML
 * would read something else in them.
 */
export function renderRecord(fields: Readonly<Record<string, FieldValue | undefined>>): string {
  const document = new Document(fields, { schema: "failsafe", keepUndefined: false });
  if (isMap(document.contents)) {
    for (const pair of document.contents.items) if (isPair(pair)) setLayout(pair.value);
  }
  return `---\n${document.toString({ flowCollectionPadding: false, lineWidth: 0 })}---\n`;
}

function setLayout(value: unknown): void {
  quoteOdd(value);
  if (isMap(value)) value.flow = true;
  else if (isCollection(value)) for (const item of value.items) if (isMap(item)) item.flow = true;
}

/** What would be told of as a slip, were it typed without quotes. */
function quoteOdd(node: unknown): void {
  visit(node as Node, {
    Scalar: (_, scalar) => {
      if (typeof scalar.value === "string" && isOdd(scalar.value)) scalar.type = "QUOTE_DOUBLE";
    },
  });
}
