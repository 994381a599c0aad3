/** Problems as a person reads them in a terminal. */
import pc from "picocolors";
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { gatherAlike } from "./alike.ts";
import { sayHowMany, sayWhatWasRead } from "./counting.ts";
import { tellMessage } from "./located-problem.ts";
import type { Shown } from "./request-view.ts";
import { makeLine, makeVisible } from "./visible.ts";

type Colours = ReturnType<typeof pc.createColors>;

export interface TextSettings {
  /** Whether the terminal shows colours. */
  readonly colour: boolean;
  /** The command that tells every place of a fault by itself; without it, that is what is rendered. */
  readonly listAll?: string | undefined;
  readonly shown: Shown;
}

/** So many places are named beside the one that is told in full. */
const mostPlaces = 12;

function tellAlike(alike: readonly LocatedProblem[], listAll: string | undefined): string[] {
  if (alike.length === 0) return [];
  const places = alike
    .slice(0, mostPlaces)
    .map(({ takenBy, file, line }) => makeLine(takenBy ?? `${file}:${line}`));
  const more = alike.length - places.length;
  const rest = more === 0 ? "." : ` and ${more} more: “${listAll}” tells them all.`;
  return [`  The same is wrong in ${alike.length} other places: ${places.join(", ")}${rest}`];
}

/**
 * Renders problems file by file: where, what is wrong, the line with a marker beneath it, how to
 * put it right; then how many there are.
 *
 * @param problems all there are; `shown` says which of them are told in full
 */
export function renderText(
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  { colour, listAll, shown }: TextSettings,
): string {
  const colours = pc.createColors(colour);
  const told =
    listAll === undefined
      ? shown.problems.map((problem) => ({ problem, alike: [] }))
      : gatherAlike(shown.problems);
  const blocks = told.map(({ problem, alike }) =>
    [renderProblem(problem, colours), ...tellAlike(alike, listAll)].join("\n"),
  );
  const closing = `${sayWhatWasRead(counts)}\n${colours.bold(sayHowMany(problems))}`;
  const folded = shown.folded === null ? [] : [makeLine(shown.folded)];
  return [...blocks, ...folded, closing].join("\n\n");
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
