/** Which mends are sure, and each of them once. */
import type { Mend } from "./mend.ts";
import type { Problem } from "./problem.ts";

/**
 * The problems with those mends that can all be carried out: where two want to touch one file or
 * one name, neither is sure, and both are taken out.
 */
export function keepSureMends(problems: readonly Problem[]): readonly Problem[] {
  const wanted = new Map<string, Set<string>>();
  for (const { mend } of problems)
    for (const place of mend ? placesOf(mend) : [])
      wanted.set(place, (wanted.get(place) ?? new Set()).add(JSON.stringify(mend)));
  const isSure = (mend: Mend) => placesOf(mend).every((place) => wanted.get(place)?.size === 1);
  return problems.map((problem) => {
    const { mend, ...rest } = problem;
    return mend === undefined || isSure(mend) ? problem : rest;
  });
}

/** The mends of problems, each once though several problems may ask for it. */
export function mendsOf(problems: readonly Problem[]): readonly Mend[] {
  const byWords = new Map<string, Mend>();
  for (const { mend } of problems) if (mend) byWords.set(JSON.stringify(mend), mend);
  return [...byWords.values()];
}

/** What a mend touches; names in one case, as some disks compare them. */
function placesOf(mend: Mend): readonly string[] {
  if (mend.does === "write") return [JSON.stringify([mend.file, ...mend.path])];
  return mend.renamings.flatMap(({ from, to }) => [keyOfName(from), keyOfName(to)]);
}

function keyOfName(name: string): string {
  return name.normalize("NFC").toLowerCase();
}
