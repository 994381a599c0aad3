/** The numbered jars of a set. */
import type { Filed } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import type { SetRecord } from "../../records/set.ts";
import { idKey } from "../../terms/ids.ts";
import { problemOfKey } from "../problem-of-file.ts";
import { type Followed, follow, type Known, lookUp } from "./look-up.ts";
import { type GlazeNames, glazeLookup } from "./lookups.ts";

/** Which glaze is in which jar: ids as published, by the key of the jar's number. */
export type Jars = Known;

/** Follows the jars of a set to their glazes. */
export function followJars(set: Filed<SetRecord>, glazes: GlazeNames): Followed<Jars> {
  const jars = new Map<string, string>();
  const numbers = new Map<string, string>();
  const problems: Problem[] = [];
  for (const [number, written] of Object.entries(set.record.jars ?? {})) {
    const path = ["jars", number];
    const glaze = follow({ file: set.file, path, written }, glazes.ids, glazeLookup(glazes));
    problems.push(...glaze.problems, ...faultsOfNumber(set.file, number, numbers, glazes));
    if (glaze.value !== null && !jars.has(idKey(number))) jars.set(idKey(number), glaze.value);
    numbers.set(idKey(number), number);
  }
  return { value: jars, problems };
}

function faultsOfNumber(
  file: string,
  number: string,
  earlier: ReadonlyMap<string, string>,
  glazes: GlazeNames,
): Problem[] {
  const problems: Problem[] = [];
  const namesake = lookUp(glazes.ids, number);
  if (namesake !== undefined)
    problems.push(
      problemOfKey(
        file,
        {
          code: "ambiguous-jar",
          message: `“${number}” is the number of a jar and the id of a glaze, so it is not clear which is meant`,
          hint: `Give the jar another number, or rename the glaze “${namesake}”.`,
        },
        ["jars", number],
      ),
    );
  const twin = earlier.get(idKey(number));
  if (twin !== undefined)
    problems.push(
      problemOfKey(
        file,
        {
          code: "duplicate-jar",
          message: `The jars “${twin}” and “${number}” differ only in how they are spelt`,
          hint: "Keep one of the two.",
        },
        ["jars", number],
      ),
    );
  return problems;
}
