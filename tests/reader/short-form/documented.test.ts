/** What docs/short-form.md shows is read as it says, and it names every word that there is. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readShortForm } from "../../../src/reader/short-form/read-short-form.ts";
import {
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  thicknesses,
  ways,
} from "../../../src/terms/choices.ts";
import { project } from "../../house/files.ts";
import { names } from "./names.ts";

const page = readFileSync(join(project, "docs/short-form.md"), "utf8");
const shown = [...page.matchAll(/`([^`]+)`|^ {4}(.+)$/gmu)]
  .map(([, word, line]) => word ?? line ?? "")
  .filter((line) => !line.startsWith("tilebook"));

test("every line that it shows is read without a fault", () => {
  expect(shown.length).toBeGreaterThan(20);
  const faulty = shown.filter((line) => readShortForm(line, names).faults.length > 0);
  expect(faulty).toEqual([]);
});

test("it names every word", () => {
  const words = [areas, covers, dryings, kindsOfFiring, removals, resists, thicknesses, ways];
  const missing = words.flat().filter((word) => !new RegExp(`\\b${word}\\b`, "u").test(page));
  expect(missing).toEqual([]);
});
