import { describe, expect, test } from "vitest";
import { ownProblems } from "../../src/changes/own-problems.ts";
import type { LocatedProblem } from "../../src/reader/locate.ts";

function problem(file: string, more: Partial<LocatedProblem> = {}): LocatedProblem {
  return {
    ...{
      file,
      path: [],
      severity: "warning",
      code: "a-code",
      message: "Something",
      hint: "Mend it",
    },
    ...{ line: 1, column: 1, lineText: "", takenBy: null },
    ...more,
  };
}

const none: ReadonlySet<string> = new Set();

describe("a problem belongs to a request", () => {
  test("where it is in a file that the request changes, though it was there before", () => {
    const [a, b] = [problem("a.md"), problem("b.md")];
    const isOwn = ownProblems([a, b], new Set(["a.md"]), [a, b]);
    expect([isOwn(a), isOwn(b)]).toEqual([true, false]);
  });

  test("where it was not there before, though its file is as it was", () => {
    const [old, fresh] = [problem("a.md"), problem("a.md", { code: "another-code" })];
    const isOwn = ownProblems([old], none, [old, fresh]);
    expect([isOwn(old), isOwn(fresh)]).toEqual([false, true]);
  });

  test("where there is one more of the same, and not where its line has moved", () => {
    const [one, other] = [problem("a.md", { line: 3 }), problem("a.md", { line: 9 })];
    expect([one, other].map(ownProblems([one], none, [one, other]))).toEqual([false, true]);
    expect(ownProblems([one], none, [other])(other)).toBe(false);
  });

  test("where a tile has the faulty field from its set, and either of the two is changed", () => {
    const taken = problem("set.md", { takenBy: "tile.md" });
    const before = [problem("tile.md")];
    expect(ownProblems(before, new Set(["set.md"]), [taken])(taken)).toBe(true);
    expect(ownProblems(before, new Set(["tile.md"]), [taken])(taken)).toBe(true);
    expect(ownProblems(before, none, [taken])(taken)).toBe(false);
  });
});
