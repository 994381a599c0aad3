/** What the copy stand tells of measuring and writing. */

import { colourSentence, spreadSentences } from "../../templates/words/colour/measured.ts";
import type { FieldsWritten, FieldToWrite } from "../archive/write-fields.ts";
import type { MeasuredColour } from "../colour/measure.ts";
import type { MeasuredWords } from "./types.ts";

export function tellMeasured(colour: MeasuredColour): MeasuredWords {
  return {
    hex: colour.hex,
    sentence: colourSentence(colour),
    spread: spreadSentences(colour).join(" "),
  };
}

const partWords = { crop: "where the glaze lies", grey: "where the grey card lies" };

/** `Written into studio.yaml: where the glaze lies and where the grey card lies.` */
export function tellWritten(file: string, parts: readonly ("crop" | "grey")[]): string {
  return `Written into ${file}: ${parts.map((part) => partWords[part]).join(" and ")}.`;
}

/** Codes that are named one by one; of more there is a count. */
const mostNamed = 6;

/** Tells which photographs the new frames do not reach; says nothing where there are none. */
export function tellKeepers(ids: readonly string[]): readonly string[] {
  if (ids.length === 0) return [];
  const named = ids.slice(0, mostNamed).join(", ");
  const more = ids.length > mostNamed ? ` and ${ids.length - mostNamed} more` : "";
  const keep = ids.length === 1 ? "keeps its own, or its set's" : "keep their own, or their set's";
  return [`${named}${more} ${keep}.`];
}

type Refusal = Extract<FieldsWritten, { ok: false }>["because"];

/** Why nothing was written, and what to do. */
export function tellRefusal(
  because: Refusal,
  file: string,
  fields: readonly FieldToWrite[],
): string {
  if (because === "changed")
    return `${file} was changed after it was read here, so nothing was written. It has been read again: look at the frames, and write once more.`;
  if (because === "faulty")
    return `${file} has faults of its own, so nothing was written. Mend them first: the command “check” tells them.`;
  const lines = fields.map(
    ({ path, value }) =>
      `${path.join(" › ")}: ${typeof value === "string" ? value : `[${value.join(", ")}]`}`,
  );
  return `${file} is written in a way that could not be changed without changing more, so nothing was written. Write it by hand: ${lines.join("; ")}.`;
}
