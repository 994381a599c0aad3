/** No more problems of one file than anybody mends at once; the rest is counted. */
import type { Problem } from "../records/problem.ts";
import { mostProblemsOfFile } from "../terms/limits.ts";

/** Keeps the first problems of each file, errors before warnings, and says how many there are besides. */
export function limitProblems(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= mostProblemsOfFile) return problems;
  const byFile = new Map<string, Problem[]>();
  for (const problem of problems) {
    const ofFile = byFile.get(problem.file);
    if (ofFile) ofFile.push(problem);
    else byFile.set(problem.file, [problem]);
  }
  return [...byFile.values()].flatMap(limitOfFile);
}

function limitOfFile(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= mostProblemsOfFile) return problems;
  const errorsFirst = [
    ...problems.filter(({ severity }) => severity === "error"),
    ...problems.filter(({ severity }) => severity === "warning"),
  ];
  const [kept, rest] = [
    errorsFirst.slice(0, mostProblemsOfFile),
    errorsFirst.slice(mostProblemsOfFile),
  ];
  return [...kept, ...rest.slice(0, 1).map((first) => countRest(first, rest.length))];
}

function countRest({ file, severity }: Problem, count: number): Problem {
  return {
    file,
    path: [],
    severity,
    code: "more-problems",
    message:
      count === 1
        ? "This file has one more problem, which is not told here"
        : `This file has ${count} more problems, which are not told here`,
    hint: "Mend those that are told, and check again.",
  };
}
