/** `check --fix`: shows what can be mended without a guess, asks, and does it. */
import { type CarriedOut, carryOutMend } from "../../archive/carry-out-mend.ts";
import type { Mend } from "../../records/mend.ts";
import type { Problem } from "../../records/problem.ts";
import { mendsOf } from "../../records/sure-mends.ts";
import { type Ask, mayDo } from "../ask.ts";
import { whyNotDone } from "../not-done.ts";
import { drawLink } from "../random-link.ts";

export interface MendOptions {
  readonly archive: string;
  /** Do it without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
}

/** What is wrong with an archive, and what its records held when that was found, by file. */
export interface Faults {
  readonly problems: readonly Problem[];
  readonly texts: ReadonlyMap<string, string>;
}

/** One mend makes room for another two or three times at most: this ends what would go in a circle. */
const mostRounds = 5;

/**
 * Shows every mend of an archive, asks, and carries them out; what can be mended only then, such as
 * the photograph of a record that has just got its name, is shown and asked for in the next round.
 * No mend is tried twice. All it says goes to standard error.
 *
 * @param find looks for what is wrong
 * @returns what is wrong in the end
 */
export async function mendInRounds<F extends Faults>(
  find: () => Promise<F>,
  options: MendOptions,
): Promise<F> {
  const tried = new Set<string>();
  let found = await find();
  for (let round = 1; round <= mostRounds; round += 1) {
    const mends = mendsOf(found.problems).filter((mend) => !tried.has(JSON.stringify(mend)));
    if (mends.length === 0) {
      if (round === 1) console.error("Nothing here can be mended without a guess.");
      return found;
    }
    for (const mend of mends) tried.add(JSON.stringify(mend));
    console.error(round === 1 ? "This can be mended:" : "Now this can be mended too:");
    if ((await mendAll(mends, found.texts, options)) === 0) return found;
    found = await find();
  }
  return found;
}

/** Shows mends, asks once, carries them out, and gives how many were. */
async function mendAll(
  wanted: readonly Mend[],
  texts: ReadonlyMap<string, string>,
  { archive, yes, ask }: MendOptions,
): Promise<number> {
  const mends = wanted.map(withRandomWords);
  console.error(mends.flatMap(tellMend).join("\n"));
  if (!(await mayDo({ yes, ask }))) return 0;
  const outcomes = mends.map((mend) => ({ mend, carriedOut: carryOutMend(archive, mend, texts) }));
  for (const { mend, carriedOut } of outcomes)
    if (!carriedOut.ok) console.error(tellRefusal(mend, carriedOut));
  const done = outcomes.filter(({ carriedOut }) => carriedOut.ok).length;
  console.error(`${done} of ${mends.length} done.`);
  return done;
}

/** What is shown is what is written: a random word is made before. */
function withRandomWords(mend: Mend): Mend {
  if (mend.does !== "write" || typeof mend.value === "string") return mend;
  return { ...mend, value: drawLink() };
}

function tellMend(mend: Mend): readonly string[] {
  if (mend.does === "rename")
    return mend.renamings.map(({ from, to }) => `  rename ${from} → ${to}`);
  return [`  write into ${mend.file}: ${mend.path.join(" › ")}: ${String(mend.value)}`];
}

function tellRefusal(mend: Mend, { inTheWay }: Extract<CarriedOut, { ok: false }>): string {
  const [first = ""] = tellMend(mend);
  return `Not done: ${first.trim()}: ${whyNotDone(inTheWay)}.`;
}
