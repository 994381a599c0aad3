/** Asks for what is to be taken in, and takes it. */
import type { Addition, ReceivingPlan } from "../../receive/outcomes.ts";
import { tellAddition, tellChanges } from "../../receive/words.ts";
import { makeVisible } from "../../reporting/visible.ts";
import type { Ask } from "../ask.ts";
import { writeAddition, writeTile } from "./receive-write.ts";

interface Answers {
  readonly archive: string;
  readonly yes: boolean;
  readonly ask: Ask | undefined;
}

/** What of a plan was not carried out, a sentence each. */
export interface TakenIn {
  /** Somebody said no to it. */
  readonly declined: string[];
  /** It could not be written, or nobody could be asked. */
  readonly failed: string[];
}

/**
 * Takes in what is agreed to: the new tiles in one answer, and each addition in one of its own.
 *
 * @param texts what the archive's records held when the plan was made
 */
export async function takeIn(
  plan: ReceivingPlan,
  texts: ReadonlyMap<string, string>,
  answers: Answers,
): Promise<TakenIn> {
  const taken: TakenIn = { declined: [], failed: [] };
  const left = answers.ask && !answers.yes ? taken.declined : taken.failed;
  await takeNewTiles(plan, answers, taken, left);
  for (const addition of plan.additions) {
    say(tellAddition(addition));
    const parts = await askForParts(addition, answers);
    left.push(...tellLeft(addition, parts, answers));
    const why = writeAddition(answers.archive, addition, texts, parts);
    if (why !== undefined) taken.failed.push(why);
  }
  if (taken.failed.length > 0 && !answers.yes && !answers.ask)
    taken.failed.push("Add --yes to take in what is new where nobody can be asked.");
  return taken;
}

async function takeNewTiles(
  { newTiles }: ReceivingPlan,
  answers: Answers,
  { failed }: TakenIn,
  left: string[],
): Promise<void> {
  const [one, ...more] = newTiles;
  if (!one) return;
  const what =
    more.length === 0 ? `the new tile ${one.code}` : `these ${newTiles.length} new tiles`;
  if (!answers.yes && !(await agrees(answers, `Take in ${what}? (y/n)`))) {
    left.push(more.length === 0 ? "The new tile was not taken." : "The new tiles were not taken.");
    return;
  }
  const reasons = newTiles.flatMap((tile) => writeTile(answers.archive, tile) ?? []);
  failed.push(...reasons);
  say([`${newTiles.length - reasons.length} of ${newTiles.length} new tiles taken in.`, ""]);
}

/** What somebody agreed to of an addition. */
export interface Parts {
  readonly isAdded: boolean;
  /** Whether what the archive says otherwise is changed too. */
  readonly isChanged: boolean;
}

async function askForParts(addition: Addition, answers: Answers): Promise<Parts> {
  const question = `Add this to ${addition.tile}? (y/n)`;
  const isAdded = hasNew(addition) && (answers.yes || (await agrees(answers, question)));
  if (addition.changes.length === 0) return { isAdded, isChanged: false };
  say(tellChanges(addition));
  // No option says yes to this.
  const isChanged = !answers.yes && (await agrees(answers, `Change it in ${addition.tile}? (y/n)`));
  return { isAdded, isChanged };
}

function hasNew({ fields, notes, pictures }: Addition): boolean {
  return fields.length > 0 || notes !== "" || pictures.length > 0;
}

async function agrees({ ask }: Answers, question: string): Promise<boolean> {
  return /^y(es)?$/iu.test((await ask?.(question)) ?? "");
}

/** The archive's word holds until somebody at a terminal says otherwise. */
function tellLeft(addition: Addition, parts: Parts, { yes }: Answers): readonly string[] {
  const { tile, changes } = addition;
  const isKept = changes.length > 0 && !parts.isChanged;
  const how = yes ? " Receive it without --yes to be asked." : "";
  return [
    ...(hasNew(addition) && !parts.isAdded ? [`Nothing was added to ${tile}.`] : []),
    ...(isKept ? [`Nothing was changed in ${tile}.${how}`] : []),
  ];
}

/** Says something on standard error; what people wrote must not steer a terminal. */
export function say(lines: readonly string[]): void {
  if (lines.length > 0) console.error(lines.map(makeVisible).join("\n"));
}
