/** One facet that differs between two tiles, in words: first what the other tile has. */
import { stepAt } from "../../../src/catalogue/apart.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import type { FacetChange } from "../../../src/likeness/change.ts";
import type { Aspect } from "../../../src/likeness/make-up.ts";
import type {
  CoatStep,
  FiredStep,
  RemoveStep,
  ResistStep,
  TileStep,
} from "../../../src/records/archive.ts";
import type { Area, Removal, Shape, Way } from "../../../src/terms/choices.ts";
import { count, spoken } from "../english/numbers.ts";
import { firingName, markWords, wayWords, whereWords } from "./steps.ts";

/** `one more coat of Tidewrack: 3, not 2`, `cooled slowly, not left to cool`. */
export function facetWords(change: FacetChange, from: CatalogueTile, to: CatalogueTile): string {
  if (change.step === null) return wholeWords(change.aspect, from, to);
  const [a, b] = [stepAt(from, change.step), stepAt(to, change.step)];
  if (a?.step === "coat" && b?.step === "coat")
    return coatChange(change.aspect, { step: a, tile: from }, { step: b, tile: to });
  if (a?.step === "fired" && b?.step === "fired") return firingChange(change, a, b);
  return isMark(a) && isMark(b) ? markChange(change.aspect, a, b) : "another step";
}

function wholeWords(aspect: Aspect, from: CatalogueTile, to: CatalogueTile): string {
  if (aspect === "clay") return `on ${to.clay?.name}, not ${from.clay?.name}`;
  if (aspect === "texture") return `${spoken(to.texture)}, not ${spoken(from.texture)}`;
  return `${shapeWords(to)}, not ${shapeWords(from)}`;
}

const shapes: Readonly<Record<Shape, string>> = {
  channel: "in a channel",
  flat: "lying flat",
  "l-shape": "as an L shape",
  pot: "on a pot",
  ring: "on a ring",
  upright: "standing upright",
};

function shapeWords({ shape, angle }: CatalogueTile): string {
  const words = shapes[shape];
  return angle === null ? words : `${words} at ${angle}°`;
}

interface CoatOf {
  readonly step: CoatStep;
  readonly tile: CatalogueTile;
}

function coatChange(aspect: Aspect, a: CoatOf, b: CoatOf): string {
  const [before, after] = [glazeName(a.step, a.tile), glazeName(b.step, b.tile)];
  if (aspect === "what" && before !== after) return `with ${after} instead of ${before}`;
  if (aspect === "coats") return coatsChange(after, a.step, b.step);
  const words = facetOfCoat[aspect as keyof typeof facetOfCoat] ?? facetOfCoat.what;
  return `${after} ${words(b.step)}, not ${words(a.step, "again")}`;
}

/** The glazes of a layer by name. */
export function glazeName({ glazes }: CoatStep, tile: CatalogueTile): string {
  return glazes.map((id) => tile.glazes[id]?.name ?? id).join(" fading to ");
}

/** Between numbers, how many more; between a sparse and a dense cover, which. */
function coatsChange(name: string, a: CoatStep, b: CoatStep): string {
  if (a.coats === null || b.coats === null) return `${name} ${coverWords(b)}, not ${coverWords(a)}`;
  const [more, less] = [b.coats - a.coats, a.coats - b.coats];
  const how = more > 0 ? howMany(more, "more coat") : howMany(less, "coat fewer", "coats fewer");
  return `${how} of ${name}: ${b.coats}, not ${a.coats}`;
}

/** `one coat`, `2 coats`. */
export function howMany(number: number, one: string, many = `${one}s`): string {
  return number === 1 ? `one ${one}` : count(number, one, many);
}

function coverWords({ cover, coats }: CoatStep): string {
  return cover === null ? count(coats ?? 0, "coat") : `with ${cover} cover`;
}

/** The verb is said once: `put on thick, not thin`. */
const facetOfCoat = {
  what: roleWords,
  way: ({ by }: CoatStep) => (by === null ? "" : wayWords(by)),
  thickness: ({ thickness }: CoatStep, again?: "again") =>
    [!again && "put on", thickness === "usual" ? "as usual" : thickness].filter(Boolean).join(" "),
  dipping: dippingWords,
  dried: ({ dried }: CoatStep, again?: "again") =>
    [!again && "put on", driedWords[dried]].filter(Boolean).join(" "),
  area: placeWords,
};

const driedWords: Readonly<Record<CoatStep["dried"], string>> = {
  overnight: "after a night’s drying",
  "touch-dry": "touch-dry",
  "wet-on-wet": "wet on wet",
};

/** The same glazes in another part: touching up, or fading another way. */
function roleWords({ touchUp, along }: CoatStep): string {
  if (touchUp) return "as a touch-up";
  return along === null ? "as a layer" : `fading ${along}`;
}

function dippingWords({ seconds, gravity }: CoatStep, again?: "again"): string {
  const told = [
    !again && "dipped",
    seconds !== null && `for ${count(seconds, "second")}`,
    gravity !== null && `at SG ${gravity.toFixed(2)}`,
  ];
  return told.filter(Boolean).join(" ");
}

type MarkStep = ResistStep | RemoveStep;

function isMark(step: TileStep | undefined): step is MarkStep {
  return step?.step === "resist" || step?.step === "remove";
}

function markChange(aspect: Aspect, a: MarkStep, b: MarkStep): string {
  return aspect === "area"
    ? `${markName(b)} ${placeWords(b)}, not ${placeWords(a)}`
    : `with ${toolName(b)} instead of ${toolName(a)}`;
}

const doing: Readonly<Record<Removal, string>> = {
  all: "washing all of it off",
  peel: "peeling",
  scrape: "scraping",
  sgraffito: "scratching through",
  "wash-off": "washing off",
  wipe: "wiping",
};

/** `wax resist`, `wiping`. */
export function toolName(step: MarkStep): string {
  return step.step === "resist" ? markName(step) : doing[step.remove];
}

/** `wax resist`, `wiped`. */
export function markName(step: MarkStep): string {
  return markWords(step).toLowerCase();
}

function placeWords(step: CoatStep | MarkStep): string {
  const laps = step.step === "coat" && step.over.length > 0 ? "lapping over what is beneath" : "";
  return [whereWords(step.where) || "all over", step.detail, laps].filter(Boolean).join(", ");
}

function firingChange({ aspect, from, to }: FacetChange, a: FiredStep, b: FiredStep): string {
  switch (aspect) {
    case "what":
      return `${firingName(b.kind).toLowerCase()}, not ${firingName(a.kind).toLowerCase()}`;
    case "cone":
      return `fired to cone ${to}, not cone ${from}`;
    case "atmosphere":
      return `fired ${airWords(to)}, not ${airWords(from)}`;
    case "cooling":
      return to === "slowed" ? "cooled slowly, not left to cool" : "left to cool, not slowly";
    case "fire":
      return `fired ${fireWords(to)}, not ${fireWords(from)}`;
    default:
      return "another bisque firing";
  }
}

function airWords(atmosphere: string): string {
  return atmosphere === "neutral" ? "in a neutral atmosphere" : `in ${atmosphere}`;
}

/** What a fire leaves on a glaze. */
function fireWords(fire: string): string {
  if (fire === "clean") return "where no ash or salt reaches it";
  return fire === "pit" || fire === "saggar" ? `in a ${fire}` : `with ${fire}`;
}

/**
 * One value of a facet by itself, for the head of a column: `cooled slowly`, `2 coats`, `cone 6`.
 *
 * @param tile one that has it
 */
export function facetValueWords(aspect: Aspect, value: string, tile: CatalogueTile): string {
  switch (aspect) {
    case "clay":
      return tile.clay?.name ?? value;
    case "shape":
      return shapeWords(tile);
    case "cone":
      return `cone ${value}`;
    case "cooling":
      return value === "slowed" ? "cooled slowly" : "left to cool";
    case "atmosphere":
      return airWords(value);
    case "fire":
      return fireWords(value);
    case "coats":
      return Number.isNaN(Number(value)) ? `${value} cover` : count(Number(value), "coat");
    case "way":
      return wayWords(value as Way);
    case "area":
      return areaWords(JSON.parse(value));
    case "dried":
      return driedWords[value as CoatStep["dried"]];
    case "bisque":
      return bisqueWords(JSON.parse(value));
    case "dipping":
      return `dipped for ${value.replace(/null s, |, null$/gu, "")}`;
    default:
      return spoken(value);
  }
}

function areaWords([areas, detail]: readonly [readonly Area[], string | null]): string {
  return [whereWords(areas) || "all over", detail].filter(Boolean).join(", ");
}

function bisqueWords([cone]: readonly [string | null]): string {
  return cone === null ? "another bisque" : `bisque to cone ${cone}`;
}
