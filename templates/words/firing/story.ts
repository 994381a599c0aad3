/** Whether a firing's story holds, in words. */

import type { CatalogueFiring } from "../../../src/catalogue/kilns/firings.ts";
import type { FiringAccount, FiringStory } from "../../../src/catalogue/kilns/story.ts";
import type { TileFiring } from "../../../src/catalogue/kilns/tile-firings.ts";
import type { Comparison } from "../../../src/firing/comparisons.ts";
import type { LikelyReading } from "../../../src/firing/readings.ts";
import { capital, listed } from "../english/numbers.ts";
import { shelfWords } from "../tile/steps.ts";
import { comparisonWords, leftOpenWords } from "./accounts.ts";
import { accountWords, reachedWords, stretchWords } from "./cones.ts";

/** The story's outcome as a heading: `Fired as planned`, `An uneven firing`. */
export function storyHeading(firing: Pick<CatalogueFiring, "on" | "story">): string {
  const { on, story } = firing;
  const [likeliest] = story.readings;
  if (likeliest) return differenceHeading(likeliest.code, story);
  if (story.agreement === "unknown")
    return story.leftOpen ? "The hold leaves it unclear" : "Nothing to compare it with";
  return seen(story).length > 0
    ? "Fired as planned"
    : on
      ? "The programme fits the aim"
      : "Still to come";
}

function differenceHeading(code: FiringStory["readings"][number]["code"], story: FiringStory) {
  switch (code) {
    case "double-fired":
      return `Fired to ${wordsOf(story, "log", "shelf", "programme")}, not to ${wordsOf(story, "aim")} as planned`;
    case "double-written":
      return `${capital(wordsOf(story, "shelf"))} written down, it seems, for ${wordsOf(story, "aim")}`;
    case "wrong-log":
      return "The log of another firing, it seems";
    case "uneven":
      return "An uneven firing";
    case "thermocouple-drifted":
      return story.accounts.some(({ of }) => of === "log")
        ? "The log and the cones disagree"
        : "The programme and the cones disagree";
    case "programme-not-followed":
      return "The kiln did not follow its programme";
    case "long-hold":
      return "A long hold for its aim";
    case "wrong-programme":
      return "A programme for another cone";
    case "cones-misread":
      return "The cones missed the aim";
    case "adds-up":
      return "A little off at every step";
  }
}

function wordsOf(story: FiringStory, ...kinds: readonly FiringAccount["of"][]): string {
  const found = kinds.flatMap((of) => story.accounts.find((account) => account.of === of) ?? []);
  return found[0] ? accountWords(found[0]) : "another cone";
}

/** What was seen or recorded, and not only meant. */
function seen({ accounts }: FiringStory): readonly FiringAccount[] {
  return accounts.filter(({ of }) => of === "log" || of === "shelf");
}

/** What agrees with what, or what differs most, as a sentence. */
export function storySentence({ on, story }: Pick<CatalogueFiring, "on" | "story">): string {
  const apart = tellingDifference(story);
  if (apart) return `${comparisonWords(apart)}.`;
  if (story.leftOpen) return leftOpenWords(story.leftOpen);
  if (story.agreement === "unknown")
    return "It takes two of aim, programme, log and witness cones to tell whether a firing went as planned.";
  const told = namesOf(story.accounts);
  const when = on || seen(story).length > 0 ? "" : " The kiln has not been lit yet.";
  return `${capital(listed(told))} agree to within a cone.${when}`;
}

/** Of several differences, the one that the likeliest reading is about; else the widest. */
function tellingDifference({ differences, readings }: FiringStory): Comparison | undefined {
  const [likeliest] = readings;
  const about = likeliest && subjects[likeliest.code];
  return differences.find(({ between }) => between === about) ?? differences[0];
}

const subjects: Partial<Record<LikelyReading["code"], Comparison["between"]>> = {
  "programme-not-followed": "schedule-log",
  "thermocouple-drifted": "log-witness",
  uneven: "shelves",
  "long-hold": "aim-schedule",
  "wrong-programme": "aim-schedule",
};

function namesOf(accounts: readonly FiringAccount[]): readonly string[] {
  const kinds = new Set(accounts.map(({ of }) => of));
  return (["aim", "programme", "log", "shelf"] as const)
    .filter((of) => kinds.has(of))
    .map((of) => (of === "shelf" ? "witness cones" : of));
}

/** `Aim`, `Programme`, `Log`, `Top shelf` */
export function accountName({ of, shelf }: FiringAccount): string {
  return capital(shelf === null ? of : shelfWords(shelf));
}

/** `top 6, middle 6, bottom 4½`; every shelf the same: `6 on every shelf`. */
export function witnessSummary({ accounts }: FiringStory): string {
  const shelves = accounts.flatMap((account) =>
    account.shelf === null ? [] : [{ shelf: account.shelf, words: accountWords(account) }],
  );
  const [first] = shelves;
  if (!first) return "no witness cone read";
  if (shelves.length > 1 && shelves.every(({ words }) => words === first.words))
    return `${first.words} on every shelf`;
  return shelves.map(({ shelf, words }) => `${shelf} ${words.replace(/\bcone /gu, "")}`).join(", ");
}

/** `Aimed at cone 6; the cones on its shelf showed cone 4½; the log works out at cone 6.` */
export function besideTile({ aim, witness, reached }: TileFiring): string {
  const told = [
    aim && `aimed at cone ${aim}`,
    witness && `the cones on its shelf showed ${stretchWords(witness)}`,
    reached && `the ${reached.from} works out at ${reachedWords(reached)}`,
  ].filter(Boolean);
  return told.length > 1 ? `${capital(told.join("; "))}.` : "";
}
