/** The plain words of the short form, and what each is in a record. */
import {
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  thicknesses,
  ways,
} from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";

/** What a word of its own says of a layer of glaze: the field of a record, and its value there. */
export interface WordOfCoat {
  readonly field: "by" | "cover" | "dried" | "thickness" | "touch-up";
  readonly value: string;
}

/** As a potter says of a layer that is on. */
const waysDone: Readonly<Record<string, string>> = {
  brushed: "brush",
  dipped: "dip",
  dotted: "dot",
  dripped: "drip",
  poured: "pour",
  rolled: "roll",
  spattered: "spatter",
  sponged: "sponge",
  sprayed: "spray",
  stencilled: "stencil",
  trailed: "trail",
};

const removalsDone: Readonly<Record<string, string>> = {
  peeled: "peel",
  scraped: "scrape",
  "washed-off": "wash-off",
  wiped: "wipe",
};

const ofField = (field: WordOfCoat["field"], values: readonly string[]) =>
  values.map((value) => [value, { field, value }] as const);

/** By the word, in small letters. */
export const wordsOfCoat: ReadonlyMap<string, WordOfCoat> = new Map([
  ...ofField("by", ways),
  ...Object.entries(waysDone).map(([word, value]) => [word, { field: "by", value }] as const),
  ...ofField("cover", covers),
  ...ofField("dried", dryings),
  ...ofField("thickness", thicknesses),
  ["touch-up", { field: "touch-up", value: "yes" }],
]);

/** Where something is, by the word. */
export const wordsOfPlace: ReadonlyMap<string, string> = new Map(areas.map((area) => [area, area]));

/** What keeps glaze off, by the word. */
export const wordsOfResist: ReadonlyMap<string, string> = new Map(resists.map((it) => [it, it]));

/** What was taken off, by the word. `all` also says where, so it needs “remove” before it. */
export const wordsOfRemoval: ReadonlyMap<string, string> = new Map([
  ...removals.map((removal) => [removal, removal] as const),
  ...Object.entries(removalsDone),
]);

export const kindsByWord: ReadonlyMap<string, string> = new Map(
  kindsOfFiring.map((it) => [it, it]),
);

/** Says nothing by itself, but leads to where something is: “on the rim”. */
export const smallWords: ReadonlySet<string> = new Set(["and", "at", "in", "on", "the"]);

/** Begins a piece, and says which kind of thing it is. */
export const headWords = ["glaze", "fade", "resist", "remove", "fired"] as const;

const linking = [
  "along",
  "by",
  "coat",
  "coats",
  "gravity",
  "over",
  "seconds",
  "sg",
  "shelf",
  "to",
  "x",
];

/** Whether a word means something in the short form wherever it stands, so that it is no part of a name. */
export function isWord(text: string): boolean {
  const key = idKey(text);
  const known = [wordsOfCoat, wordsOfPlace, wordsOfResist, wordsOfRemoval, smallWords];
  return known.some((words) => words.has(key)) || linking.includes(key) || isFigure(key);
}

/** `x2`, `2x`, `30s`, `2`: a count or a measure. */
function isFigure(key: string): boolean {
  return /^[x×]?\d+(?:[.,]\d+)?(?:x|×|s)?$/u.test(key);
}
