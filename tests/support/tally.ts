/** How many checks or tests passed, failed and were skipped. */
export type Tally = { readonly passed: number; readonly failed: number; readonly skipped: number };

/** What became of one file of tests. */
export type TestedFile = { readonly file: string; readonly tally: Tally };

type Report = {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
};

/**
 * Reads vitest's JSON report.
 * @param text the report
 * @returns the tally of every file; a file that failed outside its tests, say while it was loaded,
 *   counts as one failure
 */
export function parseReport(text: string): readonly TestedFile[] {
  const { testResults } = JSON.parse(text) as Report;
  return testResults.map(({ name, status, assertionResults }) => {
    const count = (wanted: string) => assertionResults.filter((a) => a.status === wanted).length;
    const [passed, failed] = [count("passed"), count("failed")];
    const skipped = assertionResults.length - passed - failed;
    const elsewhere = status === "failed" && failed === 0 ? 1 : 0;
    return { file: name, tally: { passed, failed: failed + elsewhere, skipped } };
  });
}

/** The sum of some tallies; nothing at all where there are none. */
export function addTallies(tallies: readonly Tally[]): Tally {
  const sum = (part: keyof Tally) => tallies.reduce((total, tally) => total + tally[part], 0);
  return { passed: sum("passed"), failed: sum("failed"), skipped: sum("skipped") };
}

/** The same tally with what was skipped counted as failed. */
export function failSkipped({ passed, failed, skipped }: Tally): Tally {
  return { passed, failed: failed + skipped, skipped: 0 };
}

/** The tally of a check that holds or does not. */
export function tallyOf(holds: boolean): Tally {
  return { passed: holds ? 1 : 0, failed: holds ? 0 : 1, skipped: 0 };
}

/** The tally as a closing line of a test run. */
export function formatTally({ passed, failed, skipped }: Tally): string {
  return `${passed} passed, ${failed} failed, ${skipped} skipped`;
}
