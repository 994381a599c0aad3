import { expect, test } from "vitest";
import { addTallies, failSkipped, formatTally, parseReport, tallyOf } from "./tally.ts";

const report = (status: string, ...tests: readonly string[]) =>
  JSON.stringify({
    testResults: [
      { name: "a.test.ts", status, assertionResults: tests.map((each) => ({ status: each })) },
    ],
  });

const tallyOfReport = (text: string) => parseReport(text)[0]?.tally;

test("passed, failed and otherwise ended tests are counted apart", () => {
  expect(tallyOfReport(report("failed", "passed", "passed", "failed", "skipped", "todo"))).toEqual({
    passed: 2,
    failed: 1,
    skipped: 2,
  });
});

test("a file that failed outside its tests counts as one failure", () => {
  expect(tallyOfReport(report("failed"))).toEqual({ passed: 0, failed: 1, skipped: 0 });
  expect(tallyOfReport(report("failed", "passed"))).toEqual({ passed: 1, failed: 1, skipped: 0 });
});

test("where skipping is not allowed, what was skipped has failed", () => {
  expect(failSkipped({ passed: 3, failed: 1, skipped: 2 })).toEqual({
    passed: 3,
    failed: 3,
    skipped: 0,
  });
});

test("the closing line is the sum of all", () => {
  const sum = addTallies([tallyOf(true), tallyOf(false), { passed: 4, failed: 0, skipped: 2 }]);
  expect(formatTally(sum)).toBe("5 passed, 1 failed, 2 skipped");
});
