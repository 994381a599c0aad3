/** What the desk tells of writing. */
import { count, listed } from "../../templates/words/english/numbers.ts";
import type { FieldChange, FieldsWritten } from "../archive/write-fields.ts";
import type { NewFile, NotWrittenAnew } from "../archive/write-new.ts";

/** `Written into tiles/TB-1.md, line 4.` */
export function tellWritten(file: string, lines: readonly { readonly line: number }[]): string {
  const numbers = listed(lines.map(({ line }) => String(line)));
  return `Written into ${file}, ${lines.length === 1 ? "line" : "lines"} ${numbers}.`;
}

/** Whether the last change was taken back, and if not, why. */
export function tellTakenBack(isBack: boolean, file: string): string {
  return isBack
    ? `Taken back: ${file} is as it was before.`
    : `${file} was changed since, so nothing was taken back. Open the file and mend it there.`;
}

/** Files that are named one by one; of more there is a count. */
const mostNamed = 6;

/** `Written: tiles/TB-1.md.` */
export function tellNewFiles(files: readonly NewFile[]): string {
  const named = files.slice(0, mostNamed).map(({ path }) => path);
  const more = files.length - named.length;
  return `Written: ${listed(more > 0 ? [...named, count(more, "other file")] : named)}.`;
}

/** Why no new file was written, and what to do. */
export function tellInTheWay({ because, file }: NotWrittenAnew): string {
  return because === "taken"
    ? `${file} is there already, so nothing was written. Take another code, or open that file.`
    : `The folder of ${file} is a link that leads out of the archive, so nothing was written.`;
}

type Refusal = Extract<FieldsWritten, { ok: false }>["because"];

/** Why nothing was written, and what to do. */
export function tellRefusal(
  because: Refusal,
  file: string,
  fields: readonly FieldChange[],
): string {
  if (because === "changed")
    return `${file} was changed after this page read it, so nothing was written. Load this page again, look at what is there now, and write once more.`;
  if (because === "faulty")
    return `${file} has faults of its own, so nothing was written. Mend them first: the command “check” tells them.`;
  return `${file} is written in a way that could not be changed without changing more, so nothing was written. Write it by hand: ${fields.map(fieldWords).join("; ")}.`;
}

function fieldWords({ path, value }: FieldChange): string {
  const place = path.join(" › ");
  if (value === null) return `take ${place} out`;
  return `${place}: ${typeof value === "string" ? value : listWords(value)}`;
}

/** As a list is written in a record. */
function listWords(list: readonly (string | readonly string[])[]): string {
  return `[${list.map((entry) => (typeof entry === "string" ? entry : listWords(entry))).join(", ")}]`;
}
