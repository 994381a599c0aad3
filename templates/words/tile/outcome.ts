/** What the kiln did, and what came out of it, in words. */

import type { TileFiring } from "../../../src/catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import {
  type Again,
  type Fate,
  type Shape,
  type Stage,
  textures,
} from "../../../src/terms/choices.ts";
import { article, capital, formatDay, listed, spoken } from "../english/numbers.ts";
import { shelfWords } from "./steps.ts";

const kinds = {
  bisque: "bisque fired",
  glaze: "glaze fired",
  onglaze: "onglaze firing",
  once: "fired once, raw",
  raku: "raku fired",
} as const;

/** `Glaze fired to cone 6 in oxidation in The Wardrobe (electric), middle shelf, 18 October 2026` */
export function firingSentence(firing: TileFiring): string {
  return [firingHead(firing), firingTail(firing)].filter(Boolean).join(" ");
}

/** `Glaze fired to cone 6` */
export function firingHead({ kind, cone }: TileFiring): string {
  const words = [kinds[kind], cone && `to cone ${cone}`].filter(Boolean).join(" ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `in oxidation in The Wardrobe (electric), middle shelf, 18 October 2026` */
export function firingTail(firing: TileFiring): string {
  const { atmosphere, kiln, heatedBy, shelf, on } = firing;
  const kilnWords = kiln && `in ${kiln}${heatedBy ? ` (${heatedBy})` : ""}`;
  const main = [
    atmosphere && (atmosphere === "neutral" ? "in a neutral atmosphere" : `in ${atmosphere}`),
    !kiln && heatedBy && `by ${heatedBy}`,
    kilnWords,
  ];
  const tail = [shelf && shelfWords(shelf), on && formatDay(on)];
  return [main.filter(Boolean).join(" "), ...tail].filter(Boolean).join(", ");
}

const againWords: Readonly<Record<Again, string>> = {
  yes: "Again: yes.",
  changed: "Again: yes, but changed.",
  no: "Again: no.",
};

export function againSentence(again: Again): string {
  return againWords[again];
}

const fates: Readonly<Record<Fate, string>> = {
  broken: "broken",
  cracked: "cracked",
  exploded: "exploded in the kiln",
  lost: "lost",
  stuck: "stuck to the shelf",
  unreadable: "code unreadable",
};

/** What became of a tile, in a word or two. */
export function fateWords(fate: Fate): string {
  return fates[fate];
}

const fateSentences: Readonly<Record<Fate, string>> = {
  broken: "It was broken.",
  cracked: "It cracked.",
  exploded: "It exploded in the kiln.",
  lost: "It was lost.",
  stuck: "It stuck to the kiln shelf.",
  unreadable: "Its code could not be read any more.",
};

export function fateSentence(fate: Fate): string {
  return fateSentences[fate];
}

const stageWords: Readonly<Record<Stage, string>> = {
  waiting: "still to be fired",
  fired: "fired, and not yet described",
  recorded: "recorded",
  lost: "lost",
};

export function stageName(stage: Stage): string {
  return stageWords[stage];
}

/** `did not run`, `ran 3 mm` */
export function runWords(run: number): string {
  return run === 0 ? "did not run" : `ran ${run}\u00a0mm`;
}

/** `satin; breaking and pooling; fault: crawling; ran 3 mm`: the look of a result. */
export function lookWords(look: {
  readonly surface?: readonly string[] | undefined;
  readonly effects?: readonly string[] | undefined;
  readonly faults?: readonly string[] | undefined;
  readonly run?: number | undefined;
}): string {
  const faults = (look.faults ?? []).filter((fault) => fault !== "none").map(spoken);
  const looked = look.faults?.includes("none") ? "no fault found" : "";
  const told = [
    listed(look.surface ?? [], "and"),
    listed((look.effects ?? []).map(spoken)),
    faults.length > 0 ? `${faults.length === 1 ? "fault" : "faults"}: ${listed(faults)}` : looked,
    look.run === undefined ? "" : runWords(look.run),
  ];
  return told.filter(Boolean).join("; ");
}

/** `flat`, `L-shaped` */
export function shapeName(shape: Shape): string {
  return shape === "l-shape" ? "L-shaped" : spoken(shape);
}

/** `flat tile`, `L-shaped tile`, `ring` */
export function pieceName(shape: Shape): string {
  return shape === "pot" || shape === "ring" ? shape : `${shapeName(shape)} tile`;
}

/** `a stamped flat tile`; a texture in the maker's own words is told after it, by `textureInOwnWords`. */
export function pieceWithTexture(tile: CatalogueTile): string {
  const texture = textureInOwnWords(tile) === null ? `${spoken(tile.texture)} ` : "";
  const what = texture + pieceName(tile.shape);
  return `${article(what).toLowerCase()} ${what}`;
}

/** `pressed with a coot's foot`; null where the texture is one of the archive's own words. */
export function textureInOwnWords({ texture }: CatalogueTile): string | null {
  return (textures as readonly string[]).includes(texture) ? null : texture;
}

/** What a tile is, in one sentence: `A flat, stamped tile of Levels Buff by Bram T., waiting.` */
export function tileSentence(tile: CatalogueTile): string {
  const made = [
    capital(pieceWithTexture(tile)),
    tile.clay && `of ${tile.clay.name}`,
    tile.maker && `by ${tile.maker.name}`,
  ];
  const told = [
    made.filter(Boolean).join(" "),
    textureInOwnWords(tile),
    tile.glazed && `glazed ${formatDay(tile.glazed)}`,
  ];
  return `${told.filter(Boolean).join(", ")}.`;
}
