/** Problems as a person reads them in a terminal. */
import pc from "picocolors";
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { sayHowMany, sayWhatWasRead } from "./counting.ts";
import { tellMessage } from "./located-problem.ts";
import { makeLine, makeVisible } from "./visible.ts";

type Colours = ReturnType<typeof pc.createColors>;

/**
 * Renders problems file by file: where, what is wrong, the line with a marker beneath it, how to
 * put it right; then how many there are.
 *
 * @param colour whether the terminal shows colours
 */
export function renderText(
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  { colour }: { readonly colour: boolean },
): string {
  const colours = pc.createColors(colour);
  const blocks = problems.map((problem) => renderProblem(problem, colours));
  const closing = `${sayWhatWasRead(counts)}\n${colours.bold(sayHowMany(problems))}`;
  return [...blocks, closing].join("\n\n");
}

function renderProblem(problem: LocatedProblem, colours: Colours): string {
  const { severity, code, file, line, column, hint } = problem;
  const place = colours.bold(`${makeLine(file)}:${line}:${column}`);
  const grade = severity === "error" ? colours.red("error") : colours.yellow("warning");
  return [
    `${place} ${grade}: ${makeLine(tellMessage(problem))} ${colours.dim(`[${makeLine(code)}]`)}`,
    ...quoteLine(problem, colours),
    `  ${colours.cyan(makeLine(hint))}`,
  ].join("\n");
}

/** How much of a line is quoted: what fits beside its number in a narrow window. */
const quoted = 72;

function quoteLine({ line, column, lineText }: LocatedProblem, colours: Colours): string[] {
  if (lineText.trim() === "") return [];
  const start = column > quoted ? column - Math.round(quoted / 2) : 0;
  const text = makeVisible(lineText.slice(start, start + quoted));
  const before = lineText.slice(start, column - 1);
  const number = String(line);
  const margin = " ".repeat(number.length);
  const marker = `${" ".repeat([...before].length)}${colours.red("^")}`;
  return [`  ${colours.dim(`${number} |`)} ${text}`, `  ${colours.dim(`${margin} |`)} ${marker}`];
}
