/** What a set found out, in words: no surer than the tiles that it rests on. */
import type { FoundOut, Learned, Lesson } from "../../../src/catalogue/found-out.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import { capital, count } from "../english/numbers.ts";
import { tallySentence } from "./change.ts";

export const foundOutTitle = "What it found out";

/** `What Evening class found out` */
export const foundOutOf = (set: string) => `What ${set} found out`;

export const lessonHeadings: Readonly<Record<Lesson, string>> = {
  repeat: "Worth making again",
  change: "Again, but changed",
  avoid: "What to avoid, and why",
};

/** `Of 33 tiles, 30 say what came of them.` What to make of it. */
export function foundOutSentence({ told }: Pick<FoundOut, "told">, tiles: number): string {
  const say = told === 1 ? "says" : "say";
  const who =
    told === tiles && told > 1
      ? `All ${told} tiles say what came of them`
      : `Of ${count(tiles, "tile")}, ${told} ${say} what came of ${told === 1 ? "it" : "them"}`;
  return `${who}. Each line is true of the tiles it names: at another cone, on another clay or with other coats the same glaze is another thing.`;
}

/** What a line rests on: one tile, or how like tiles came out, those that say otherwise too. */
export function restsOn({ alike }: Learned): string {
  return alike.length === 1
    ? "One tile."
    : tallySentence(alike).replace(", this one among them:", " made alike:");
}

/** `Next time: two coats`, in a maker's words. */
export const nextTimeWords = (words: string) => `Next time: ${words}`;

/** `Cone 6, oxidation, on Levels Buff.` */
export function firedOn({ cone, atmosphere, clay }: CatalogueTile): string {
  const told = [
    cone === null ? "cone not recorded" : `cone ${cone}`,
    atmosphere,
    clay ? `on ${clay.name}` : "clay not recorded",
  ];
  return `${capital(told.filter(Boolean).join(", "))}.`;
}
