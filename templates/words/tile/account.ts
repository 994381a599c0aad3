/** A tile in a few lines: how its glaze went on, and what came of it. */
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import type { CoatStep } from "../../../src/records/archive.ts";
import { capital, count, spoken } from "../english/numbers.ts";
import { againSentence, fateSentence, lookWords } from "./outcome.ts";
import { stepWords } from "./steps.ts";

/** A tile on which more was done shows no more than so many steps here; its own page has all. */
const mostSteps = 6;

/** `Chalk: 2 coats, brushed; then Oilskin: 2 coats, brushed. Stamped.` */
export function howItWentOn({ steps, glazes, texture }: CatalogueTile): string {
  const done = steps.filter(({ step }) => step !== "fired");
  const told = done.slice(0, mostSteps).map((step, i) => {
    const words = stepWords(step, (id) => glazes[id]?.name ?? id);
    return step.step === "coat" ? coatsOrUnknown(words, step) : afterOthers(words, i);
  });
  const more = done.length - mostSteps;
  const words = [...told, ...(more > 0 ? [`${count(more, "more step")}`] : [])].join("; then ");
  const clay = texture === "smooth" ? "" : ` ${capital(spoken(texture))} clay.`;
  return words === "" ? clay.trim() : `${words}.${clay}`;
}

function coatsOrUnknown(words: string, { coats, cover }: CoatStep): string {
  const isUncounted = coats === null && cover === null;
  return isUncounted ? `${words}${words.includes(":") ? "," : ":"} coats not recorded` : words;
}

/** Only the first of them begins a sentence; the name of a glaze keeps its capital anywhere. */
function afterOthers(words: string, place: number): string {
  return place === 0 ? words : words.charAt(0).toLowerCase() + words.slice(1);
}

/** `Gloss; variegated; fault: running; ran 24 mm. Again: yes, but changed.` What nobody wrote down is said. */
export function cameOut({
  results,
  fate,
  faults,
  run,
  again,
  surface,
  effects,
}: CatalogueTile): string {
  if (results.length === 0) return fate ? fateSentence(fate) : "No result recorded.";
  const looked = results.some((result) => result.faults !== undefined) || faults.length > 0;
  const none = looked && faults.length === 0 ? (["none"] as const) : [];
  const told = [
    lookWords({ surface, effects, faults: [...faults, ...none], run: run ?? undefined }),
    !looked && "faults not recorded",
    run === null && "run not measured",
  ];
  return [
    `${capital(told.filter(Boolean).join("; "))}.`,
    again ? againSentence(again) : "Again: not recorded.",
    fate && fateSentence(fate),
  ]
    .filter(Boolean)
    .join(" ");
}
