/** Where the YAML of a text lies while it is being written, its second fence perhaps still to come. */
import type { Form } from "./parsed-text.ts";

/** From where to where, as offsets; `to` is the first that is no part of it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The span of the YAML; undefined where a record does not begin with a fence. */
export function yamlSpan(text: string, form: Form): Span | undefined {
  const begin = text.startsWith("\ufeff") ? 1 : 0;
  if (form === "yaml") return { from: begin, to: text.length };
  const fence = /^---[ \t]*(?:ya?ml[ \t]*)?(?:\r?\n|$)/iu.exec(text.slice(begin, begin + 20));
  if (!fence) return undefined;
  const from = begin + fence[0].length;
  if (text.startsWith("---", from)) return { from, to: from };
  const end = text.indexOf("\n---", from);
  return { from, to: end < 0 ? text.length : end + 1 };
}
