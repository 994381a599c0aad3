import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LocatedProblem } from "../../src/reader/locate.ts";
import { reportAs } from "../../src/reporting/report.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const obeyed = /[\0-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e]/u;

const counts = { tiles: 1, sets: 0, firings: 0, glazes: 0, clays: 0, materials: 0, pictures: 0 };

const unknown: LocatedProblem = {
  ...{ file: "tiles/evening/WL-101.md", path: ["layers", 0, "glaze"], line: 4, column: 12 },
  ...{ severity: "error", code: "unknown-glaze", lineText: "", takenBy: null },
  ...{ message: "There is no glaze “tidewrak”", hint: "Did you mean “tidewrack”?" },
};

function report(problems: readonly LocatedProblem[], folder = "") {
  return JSON.parse(reportAs("gitlab", problems, counts, { folder }));
}

/** The properties and severities that the forge documents: https://docs.gitlab.com/ci/testing/code_quality/#code-quality-report-format */
const documented = {
  description: expect.any(String),
  check_name: expect.any(String),
  fingerprint: expect.any(String),
  severity: expect.stringMatching(/^(?:info|minor|major|critical|blocker)$/u),
  location: { path: expect.any(String), lines: { begin: expect.any(Number) } },
};

describe("a Code Quality report", () => {
  test("is a list of what the forge documents, files named from the root of the repository", () => {
    const warning = { ...unknown, severity: "warning" as const, line: 9 };
    expect(report([unknown, warning], "studio")).toEqual([documented, documented]);
    expect(report([unknown], "studio")[0]).toMatchObject({
      description: "There is no glaze “tidewrak” Did you mean “tidewrack”?",
      check_name: "unknown-glaze",
      severity: "blocker",
      location: { path: "studio/tiles/evening/WL-101.md", lines: { begin: 4 } },
    });
    expect(report([])).toEqual([]);
  });

  test("knows a problem again whose line has moved, and tells two of a kind apart", () => {
    const moved = { ...unknown, line: 40 };
    const print = (problems: readonly LocatedProblem[]) =>
      report(problems).map(({ fingerprint }: { fingerprint: string }) => fingerprint);
    expect(print([moved])).toEqual(print([unknown]));
    expect(new Set(print([unknown, moved])).size).toBe(2);
    expect(print([unknown, moved])[0]).toBe(print([unknown])[0]);
  });

  test("has as many fingerprints as problems, and nothing that a terminal would obey", () => {
    const text = fc.string({ unit: "binary", maxLength: 20 });
    const any = fc.record({ file: text, message: text, hint: text, line: fc.integer({ min: 1 }) });
    fc.assert(
      fc.property(fc.array(any), (found) => {
        const problems = found.map((each) => ({ ...unknown, ...each }));
        const told = report(problems);
        expect(new Set(told.map(({ fingerprint }: never) => fingerprint)).size).toBe(told.length);
        expect(reportAs("gitlab", problems, counts)).not.toMatch(obeyed);
      }),
      { numRuns: 50 },
    );
  });
});
