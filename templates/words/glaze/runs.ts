/** What runs, in words: no surer than the tiles, and common practice named as such. */
import type { Circumstance } from "../../../src/catalogue/circumstance.ts";
import { type Runner, type RunnerLayer, standsAsAWall } from "../../../src/catalogue/runners.ts";
import type { Movement, Shape } from "../../../src/terms/choices.ts";
import { leastRun } from "../../../src/terms/run.ts";
import { count } from "../english/numbers.ts";

/** `Oilskin over Mist`, `Sandbar and Kelp` where they lie side by side. */
export function layersName(layers: readonly RunnerLayer[]): string {
  return layers
    .map(({ glazes, under }) => {
      const name = glazes.map((glaze) => glaze.name).join(" fading to ");
      return under === null ? name : `${under === "over" ? " over " : " and "}${name}`;
    })
    .join("");
}

/** `Ran 55 mm`, or that nobody measured. */
export function farthestWords({ farthest }: Pick<Runner, "farthest">): string {
  return farthest === null ? "Ran, not measured" : `Ran ${farthest}\u00a0mm`;
}

/** `1 of 4 tiles ran; 3 moved less than 5 mm.`: what an entry rests on. */
export function tallyOfRun({ ran, held, unmeasured, elsewhere }: Runner): string {
  const tiles = ran.length + held.length;
  const notAll = held.length > 0 && `; ${held.length} moved less than ${leastRun}\u00a0mm`;
  const here =
    tiles === 1
      ? "One tile, and it ran."
      : `${ran.length} of ${count(tiles, "tile")} ran${notAll || ""}.`;
  return [
    here,
    unmeasured > 0 && `${unmeasured} more: run not recorded.`,
    elsewhere.tiles > 0 && elsewhereWords(elsewhere),
  ]
    .filter(Boolean)
    .join(" ");
}

function elsewhereWords({ tiles, ran }: Runner["elsewhere"]): string {
  const others = `${count(tiles, "other")} on another clay, shape or firing`;
  if (tiles === 1) return `${others}: ${ran === 1 ? "it ran too" : "it did not run"}.`;
  return `${others}: ${ran === 0 ? "none" : ran === tiles ? "all" : ran} ran.`;
}

/** What it means for an upright wall: as much as these tiles tell, and no more. */
export function wallAdvice(runner: Runner): string {
  const { circumstance, farthest } = runner;
  if (!standsAsAWall(circumstance))
    return "For an upright wall this is no measure: try a standing tile first, on a catch tray.";
  const foot =
    farthest === null
      ? "leave a wide foot bare"
      : `leave at least ${farthest}\u00a0mm of the foot bare`;
  return `On an upright wall: ${foot}, and use a catch tray. ${coatAdvice(runner)}`;
}

function coatAdvice({ coats: { ranWith, heldWith } }: Runner): string {
  if (ranWith === null) return "How many coats ran is not recorded.";
  if (heldWith !== null)
    return `Never more than ${count(heldWith, "coat")} together: ${ranWith} ran.`;
  return ranWith === 1
    ? "A single coat ran: keep it off the lower part of the wall."
    : `${count(ranWith, "coat")} together ran: never so many near the foot.`;
}

/** What a record says of a glaze that its tiles do not bear out. */
export function recordAgainstTile(moves: Movement | null): string {
  if (moves === "none") return "Its record says that it does not move: trust the tile.";
  return moves === "little" ? "Its record says that it moves little: trust the tile." : "";
}

/** `On upright tiles, cone 6` */
export function testTitle({ shape, cone }: Pick<Circumstance, "cone" | "shape">): string {
  return `${aboutTests[shape].title}, ${cone === null ? "cone not recorded" : `cone ${cone}`}`;
}

/** What a shape of test says of a pot's wall. Common practice, no source. */
export const aboutTests: Readonly<
  Record<Shape, { readonly title: string; readonly words: string }>
> = {
  pot: { title: "On pots", words: "What ran down the wall of a pot itself." },
  upright: {
    title: "On upright tiles",
    words: "These stand as the wall of a pot does. Common practice, no source.",
  },
  "l-shape": {
    title: "On L-shaped tiles",
    words:
      "These stand on a foot of their own: a glaze runs down them as down a wall. Common practice, no source.",
  },
  ring: {
    title: "On rings",
    words: "Rings cut from a thrown wall stand as it did. Common practice, no source.",
  },
  flat: {
    title: "On flat tiles",
    words:
      "Lying flat, a glaze has little to run down. What moved a few millimetres here may run much farther on a wall. Common practice, no source.",
  },
  channel: {
    title: "In channels",
    words:
      "A sloping channel keeps the melt together, so it runs farther than on a wall. It compares one glaze with another, and is no measure for a foot. Common practice, no source.",
  },
};
