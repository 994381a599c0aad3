/** `check --fix`: shows what can be mended without a guess, asks, and does it. */
import { type CarriedOut, carryOutMend } from "../archive/carry-out-mend.ts";
import type { Mend } from "../records/mend.ts";
import type { Problem } from "../records/problem.ts";
import { mendsOf } from "../records/sure-mends.ts";
import type { Ask } from "./ask.ts";
import { drawLink } from "./random-link.ts";

export interface MendOptions {
  readonly archive: string;
  /** Do it without asking. */
  readonly yes: boolean;
  /** Undefined where nobody sits at a terminal. */
  readonly ask: Ask | undefined;
}

/**
 * Shows every mend of these problems, asks once, and carries them out. All it says goes to
 * standard error.
 *
 * @param texts what the records held when they were read, by file
 * @returns how many were carried out
 */
export async function mendProblems(
  problems: readonly Problem[],
  texts: ReadonlyMap<string, string>,
  { archive, yes, ask }: MendOptions,
): Promise<number> {
  const mends = mendsOf(problems).map(withRandomWords);
  if (mends.length === 0) {
    console.error("Nothing here can be mended without a guess.");
    return 0;
  }
  console.error(["This can be mended:", ...mends.flatMap(tellMend)].join("\n"));
  if (!(await mayMend(yes, ask))) return 0;
  const outcomes = mends.map((mend) => ({ mend, carriedOut: carryOutMend(archive, mend, texts) }));
  for (const { mend, carriedOut } of outcomes)
    if (!carriedOut.ok) console.error(tellRefusal(mend, carriedOut));
  const done = outcomes.filter(({ carriedOut }) => carriedOut.ok).length;
  console.error(`${done} of ${mends.length} done.`);
  return done;
}

async function mayMend(yes: boolean, ask: Ask | undefined): Promise<boolean> {
  if (yes) return true;
  const answer = await ask?.("Do it? (y/n)");
  if (/^y(es)?$/iu.test(answer ?? "")) return true;
  console.error(
    ask
      ? "Nothing was changed."
      : "Nothing was changed: add --yes to do it where nobody can be asked.",
  );
  return false;
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

const refusals: Readonly<
  Record<Extract<CarriedOut, { ok: false }>["inTheWay"]["because"], (file: string) => string>
> = {
  gone: (file) => `${file} is not there any more`,
  taken: (file) => `there is a file ${file} already`,
  changed: (file) => `${file} was changed meanwhile`,
  faulty: (file) => `${file} has other faults, which come first`,
  unchangeable: (file) => `${file} cannot be changed there without changing more`,
};

function tellRefusal(mend: Mend, { inTheWay }: Extract<CarriedOut, { ok: false }>): string {
  const [first = ""] = tellMend(mend);
  return `Not done: ${first.trim()}: ${refusals[inTheWay.because](inTheWay.file)}.`;
}
