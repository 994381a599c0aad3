/** The one place that knows the YAML parser: how it is set up, and how a field is found again. */
import { type Document, isMap, isNode, isScalar, isSeq, type Pair, parseDocument } from "yaml";

/** A YAML document of which every scalar is the text its author wrote. */
export type YamlDocument = Document.Parsed;

/** Parses one document; its faults are in `errors` and `warnings`, with offsets into the text. */
export function parseYamlDocument(yaml: string): YamlDocument {
  return parseDocument(yaml, {
    schema: "failsafe",
    stringKeys: true,
    // Told apart in linear time by `toSource`, which also sees the first of them.
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
  });
}

/** Whether a value was left empty: nothing, white space, `~` or `null`. */
export function isEmptyValue(node: unknown): boolean {
  if (node === null || node === undefined) return true;
  if (!isScalar(node)) return false;
  if (node.value === null) return true;
  const text = String(node.value);
  return text.trim() === "" || (node.type === "PLAIN" && (text === "~" || text === "null"));
}

/** Whether a node counts as left out: it is empty, or a map or list of nothing but such nodes. */
export function isLeftOut(node: unknown): boolean {
  if (isMap(node))
    return node.items.length > 0 && node.items.every((pair) => isLeftOut(pair.value));
  if (isSeq(node)) return node.items.length > 0 && node.items.every(isLeftOut);
  return isEmptyValue(node);
}

/** A key as text. */
export function keyText(pair: Pair<unknown, unknown>): string {
  return isScalar(pair.key) && pair.key.value !== null ? String(pair.key.value) : "";
}

/** Where a node begins, as an offset into the text. */
export function startOf(node: unknown): number {
  return isNode(node) ? (node.range?.[0] ?? 0) : 0;
}
