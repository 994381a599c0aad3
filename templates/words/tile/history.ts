/** What was known of a tile when: the versions of its record, in words. */
import type { TileStory } from "../../../src/catalogue/history/stories.ts";
import type {
  TileChange,
  ToldField,
  ToldLook,
  ToldWords,
} from "../../../src/catalogue/history/tile-changes.ts";
import type {
  ToldCoat,
  ToldFiring,
  ToldGlaze,
  ToldStep,
} from "../../../src/catalogue/history/told-steps.ts";
import type { Fate, Shape } from "../../../src/terms/choices.ts";
import { count, formatDay, listed, spoken } from "../english/numbers.ts";
import { type RecordStoryWords, storyWords } from "../site/record.ts";
import { fateWords, lookWords, runWords, shapeName } from "./outcome.ts";
import { firingName, markWords, shelfWords, wayWords, whereWords } from "./steps.ts";

const tileHistoryTitle = "What was known when";

/** What its days mean. */
const tileHistoryLede =
  "The days on which this record went into the archive. Where a value was changed, both are told; notes and other words of the maker are not repeated.";

/** The story as its page lays it out; null where there is none. */
export function tileHistory(story: TileStory | null): RecordStoryWords | null {
  const told = { title: tileHistoryTitle, lede: tileHistoryLede };
  return story && { ...told, ...storyWords(story, changeWords) };
}

/** One change: `corrected: Chalk, 2 coats → 3 coats`. */
export function changeWords(change: TileChange): string {
  switch (change.what) {
    case "first":
      return `written down, with ${count(change.layers, "layer")}${change.result ? " and a result" : ""}`;
    case "photograph":
      return change.change === "added" ? "a photograph was added" : "a photograph was changed";
    case "step":
      return stepChange(change.before, change.after);
    case "field":
      return fromTo(
        fieldNames[change.field],
        fieldWords(change.field, change.before),
        fieldWords(change.field, change.after),
      );
    case "look":
      return lookChange(change);
    case "words":
      return `${ownWordNames[change.words]} changed`;
    case "unseen":
      return "something was changed that pages do not show";
    default:
      return "a version that cannot be read";
  }
}

/** What was not there, and what is there no more, is told without an arrow. */
function fromTo(what: string, before: string | null, after: string | null): string {
  if (before === null) return after === null ? `${what} changed` : `${what}: ${after}`;
  return after === null
    ? `taken out: ${what}, ${before}`
    : `corrected: ${what}, ${before} → ${after}`;
}

const fieldNames: Readonly<Record<ToldField, string>> = {
  angle: "the angle",
  clay: "the clay",
  fate: "what became of it",
  formed: "when it was formed",
  glazed: "when it was glazed",
  shape: "the shape",
  texture: "the texture",
};

function fieldWords(field: ToldField, value: string | null): string | null {
  if (value === null) return null;
  if (field === "formed" || field === "glazed") return formatDay(value);
  if (field === "angle") return `${value}°`;
  if (field === "fate") return fateWords(value as Fate);
  if (field === "shape") return shapeName(value as Shape);
  return field === "texture" ? spoken(value) : value;
}

const ownWordNames: Readonly<Record<ToldWords, string>> = {
  batch: "the clay's batch was",
  codes: "its former codes were",
  laboratory: "what a laboratory found was",
  layers: "words beside the layers were",
  "next-time": "the words for next time were",
  notes: "the notes were",
  photo: "what is said of the photograph was",
  "result-firing": "which firing the result is of was",
  texture: "the words for its texture were",
};

function lookChange({ on, before, after }: Extract<TileChange, { what: "look" }>): string {
  const what = on === null ? "the result" : `the look on ${formatDay(on)}`;
  if (before && after) return fromTo(what, ...differingLook(before, after));
  return fromTo(what, before && wholeLook(before), after && wholeLook(after));
}

function wholeLook(look: ToldLook): string {
  const told = [lookWords(look).replaceAll("; ", ", "), look.again && `again: ${look.again}`];
  return told.filter(Boolean).join(", ") || "nothing told yet";
}

/** What of a look differs, before and after. */
function differingLook(before: ToldLook, after: ToldLook): readonly [string, string] {
  const parts: readonly ((look: ToldLook) => string)[] = [
    ({ surface }) => listed(surface ?? []) || "no surface told",
    ({ effects }) => listed((effects ?? []).map(spoken)) || "no effects",
    ({ faults }) => faultWords(faults),
    ({ run }) => (run === undefined ? "run not measured" : runWords(run)),
    ({ again }) => (again === undefined ? "again: not told" : `again: ${again}`),
  ];
  const differing = parts.filter((part) => part(before) !== part(after));
  const told = (look: ToldLook) => differing.map((part) => part(look)).join(", ");
  return [told(before), told(after)];
}

function faultWords(faults: ToldLook["faults"]): string {
  if (faults === undefined) return "no faults told";
  return faults.includes("none") ? "no fault found" : `fault: ${listed(faults.map(spoken))}`;
}

function stepChange(before: ToldStep | null, after: ToldStep | null): string {
  if (after === null) return before === null ? "" : `taken out: ${stepName(before)}`;
  if (before === null)
    return after.step === "fired" ? firedWords(after) : `added: ${stepName(after)}`;
  if (before.step === "coat" && after.step === "coat") return coatChange(before, after);
  if (before.step === "fired" && after.step === "fired") {
    const isNamedNow = before.kind !== null && after.kind === null;
    return isNamedNow
      ? firedWords(after)
      : `corrected: ${firedWords(before)} → ${firedWords(after)}`;
  }
  return `corrected: ${stepName(before)} → ${stepName(after)}`;
}

/** `fired in g-1020`; of a firing of which nothing but its kind is known, that one was noted. */
function firedWords({ kind, firing, shelf }: ToldFiring): string {
  const what =
    kind !== null
      ? `${firingName(kind).toLowerCase()} noted`
      : firing === null
        ? "fired in a load that is not shown here"
        : `fired in ${firing}`;
  return [what, shelf && shelfWords(shelf)].filter(Boolean).join(", ");
}

function stepName(step: ToldStep): string {
  if (step.step === "fired") return firedWords(step);
  if (step.step === "coat") return [glazeNames(step), ...facetsOf(step, plain)].join(", ");
  const words = markWords({ ...step, at: null, detail: null });
  return [words, whereWords(step.where)].filter(Boolean).join(", ");
}

function glazeNames({ glazes }: ToldCoat): string {
  return glazes.map(glazeWords).join(" fading to ");
}

function glazeWords(glaze: ToldGlaze): string {
  if ("name" in glaze) return glaze.name;
  return "jar" in glaze ? `jar ${glaze.jar}` : "a glaze that is not shown here";
}

function coatChange(before: ToldCoat, after: ToldCoat): string {
  const [was, is] = [glazeNames(before), glazeNames(after)];
  const [a, b] = [facetsOf(before, after), facetsOf(after, before)];
  if (was === is && a.length === 0) return "the glaze of a layer was corrected";
  if (was === is) return `corrected: ${is}, ${a.join(", ")} → ${b.join(", ")}`;
  return `corrected: ${[was, ...a].join(", ")} → ${[is, ...b].join(", ")}`;
}

/** What is told of a layer, each as a phrase that also says what was left out. */
const facets: readonly ((coat: ToldCoat) => string)[] = [
  ({ coats }) => (coats === null ? "coats not noted" : count(coats, "coat")),
  ({ cover }) => (cover === null ? "cover not noted" : `${cover} cover`),
  ({ by }) => (by === null ? "way not noted" : wayWords(by)),
  ({ where }) => whereWords(where) || "all over",
  ({ thickness }) => `${thickness} thickness`,
  ({ seconds }) => (seconds === null ? "seconds not noted" : count(seconds, "second")),
  ({ gravity }) => (gravity === null ? "gravity not noted" : `at SG ${gravity.toFixed(2)}`),
  ({ dried }) => spoken(dried),
  ({ touchUp }) => (touchUp ? "a touch-up" : "no touch-up"),
];

/** A layer of which nothing is told. */
const plain: ToldCoat = {
  step: "coat",
  glazes: [],
  coats: null,
  cover: null,
  by: null,
  where: ["all"],
  thickness: "usual",
  seconds: null,
  gravity: null,
  dried: "touch-dry",
  touchUp: false,
};

function facetsOf(coat: ToldCoat, other: ToldCoat): readonly string[] {
  return facets.filter((facet) => facet(coat) !== facet(other)).map((facet) => facet(coat));
}
