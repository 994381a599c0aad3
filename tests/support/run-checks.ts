/**
 * Everything that `npm test` stands for: a browser to test pages with, the type check, the style
 * check, the rules of the house and all other tests, each even where an earlier one failed. Arguments
 * go to vitest, so `npm test -- tests/chemistry` runs the tests of one room after the first checks.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve, sep } from "node:path";
import { findBrowser } from "./find-browser.ts";
import {
  addTallies,
  failSkipped,
  formatTally,
  parseReport,
  type Tally,
  type TestedFile,
  tallyOf,
} from "./tally.ts";

const results = "node_modules/.cache/tilebook-checks";
const reportFile = join(results, "vitest.json");
const tallyFile = join(results, "tally.txt");

type Outcome = { readonly name: string; readonly tally: Tally };

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
const outcomes: readonly Outcome[] = [
  { name: "browser", tally: tallyOf(settleBrowser()) },
  { name: "types", tally: tallyOf(run("typescript/bin/tsc", "--noEmit")) },
  {
    name: "style",
    tally: tallyOf(run("@biomejs/biome/bin/biome", "check", "--error-on-warnings")),
  },
  ...runTests(process.argv.slice(2)),
];
const all = addTallies(outcomes.map(({ tally }) => tally));
writeFileSync(tallyFile, `${formatTally(all)}\n`);
console.log("");
for (const { name, tally } of [...outcomes, { name: "all", tally: all }]) {
  console.log(`${name.padEnd(9)}${verdictOn(tally).padEnd(9)}${formatTally(tally)}`);
}
process.exitCode = all.failed > 0 ? 1 : 0;

function verdictOn({ passed, failed }: Tally): string {
  if (failed > 0) return "FAILED";
  return passed > 0 ? "ok" : "not run";
}

/** Finds the browser once for all test processes and hands it to them as CHROME_PATH. */
function settleBrowser(): boolean {
  try {
    const { path, from } = findBrowser();
    process.env.CHROME_PATH = path;
    console.log(`Testing pages with the browser of ${from}: ${path}`);
    return true;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return false;
  }
}

/** Runs vitest, and tells the rules of the house (tests/house) from the other tests. */
function runTests(vitestArguments: readonly string[]): readonly Outcome[] {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${reportFile}`];
  const succeeded = run("vitest/vitest.mjs", "run", ...reporters, ...vitestArguments);
  const files = readReport();
  const house = addTallies(files.filter(isOf("house")).map(({ tally }) => tally));
  const others = addTallies(files.filter((file) => !isOf("house")(file)).map(judge));
  // vitest also fails where no test does: on an error outside of any, or where it found no tests.
  const unseen = !succeeded && house.failed + others.failed === 0;
  return [
    { name: "house", tally: house },
    { name: "tests", tally: unseen ? addTallies([others, tallyOf(false)]) : others },
  ];
}

function readReport(): readonly TestedFile[] {
  try {
    return parseReport(readFileSync(reportFile, "utf8"));
  } catch (error) {
    console.error("vitest left no report that can be read:", error);
    return [];
  }
}

/** On a continuous-integration machine a test of pages may not be skipped. */
function judge(tested: TestedFile): Tally {
  return process.env.CI && isOf("site")(tested) ? failSkipped(tested.tally) : tested.tally;
}

function isOf(folder: string): (tested: TestedFile) => boolean {
  const start = resolve("tests", folder) + sep;
  return ({ file }) => resolve(file).startsWith(start);
}

/** Runs a program of node_modules and tells whether it succeeded. */
function run(program: string, ...args: readonly string[]): boolean {
  const started = spawnSync(process.execPath, [join("node_modules", program), ...args], {
    stdio: "inherit",
  });
  return started.status === 0;
}
