/** Problems as annotations of a GitHub workflow, which show them beside the changed lines. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { gatherAlikeInFile, type Told } from "./alike.ts";
import { sayHowMany, sayWhatWasRead } from "./counting.ts";
import { tellMessage } from "./located-problem.ts";
import type { Shown } from "./request-view.ts";
import { makeLine, makeVisible } from "./visible.ts";

/**
 * Renders one annotation a line, and one for all that is alike in a file, then how many problems there are.
 *
 * @param problems all there are
 * @param shown what is told in full; a forge shows about ten annotations of a kind, the first ones
 * @param folder the archive's folder relative to the repository, with `/`; empty for its root
 */
export function renderGithub(
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  { shown, folder }: { readonly shown: Shown; readonly folder: string },
): string {
  const lines = gatherAlikeInFile(shown.problems).map((told) => renderAnnotation(told, folder));
  const folded = shown.folded === null ? [] : [renderFolded(shown.folded)];
  return [...lines, ...folded, sayWhatWasRead(counts), sayHowMany(problems)].join("\n");
}

function renderFolded(words: string): string {
  return `::notice title=before-this-request::${escapeData(makeLine(words))}`;
}

function renderAnnotation({ problem, alike }: Told, folder: string): string {
  const { severity, code, file, line, column, hint } = problem;
  const properties = [
    `file=${escapeProperty(makeVisible(folder === "" ? file : `${folder}/${file}`))}`,
    `line=${line}`,
    `col=${column}`,
    `title=${escapeProperty(code)}`,
  ];
  const lines = alike.map((other) => other.takenBy ?? `line ${other.line}`).join(", ");
  const also = lines === "" ? "" : ` (also: ${lines})`;
  const words = `${makeLine(tellMessage(problem) + also, 1000)}\n${makeLine(hint)}`;
  return `::${severity} ${properties.join(",")}::${escapeData(words)}`;
}

/** A workflow command is one line, and `%` begins its escapes. */
function escapeData(text: string): string {
  return text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
}

/** Between properties, a colon or a comma would end the value. */
function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
}
