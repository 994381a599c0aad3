/** What the grid says of a square and of itself, for eye and ear alike. */
import type { GridColour, GridGlaze, GridIndex } from "../../publish/grid-file.ts";
import { groupThousands } from "../../terms/figures.ts";
import { keyOf, type Square, type Squares } from "./squares.ts";
import type { Order, Pair, View } from "./view.ts";

/** What is known while a square is named. */
export interface Known {
  readonly view: View;
  readonly index: GridIndex;
  readonly squares: Squares;
  /** Whether every square of the cone has come: before that, nothing is said of an empty one. */
  readonly whole: boolean;
  /** The cones at which each two glazes met, by `keyOf`. */
  readonly triedAt: ReadonlyMap<number, readonly number[]>;
}

/** `Chalk over Soot`, `Chalk alone`. */
export function titleOf({ over, under }: Pair, { glazes }: Pick<GridIndex, "glazes">): string {
  const [top, beneath] = [glazes[over]?.name ?? "", glazes[under]?.name ?? ""];
  return over === under ? `${top} alone` : `${top} over ${beneath}`;
}

/** `GR-31, ran 12 mm, again: no`, or of several tiles the like, with how many say so. */
export function tellSquare(square: Square, { faults }: Pick<GridIndex, "faults">): string {
  const { tiles, code, measured, run } = square;
  const seen = square.faults.map((place) => faults[place] ?? "").join(", ");
  const ran = measured === 0 || run === 0 ? "" : `ran ${tiles > 1 ? "up to " : ""}${run}\u00a0mm`;
  const still = measured > 0 && run === 0 ? "did not run" : "";
  const again = verdicts(square)
    .map(([word, times]) => (tiles > 1 ? `${word} ${times}` : word))
    .join(", ");
  return [
    tiles > 1 ? `${tiles} tiles, ${code} is shown` : code,
    ran || still,
    seen,
    again && `again: ${again}`,
  ]
    .filter(Boolean)
    .join("; ");
}

/** The verdicts that somebody gave, and on how many tiles. */
export function verdicts({
  again,
}: Square): readonly (readonly ["yes" | "changed" | "no", number])[] {
  return (["yes", "changed", "no"] as const).flatMap((word) =>
    again[word] > 0 ? [[word, again[word]] as const] : [],
  );
}

/** What a square is called by those who hear it. */
export function nameSquare(pair: Pair, known: Known): string {
  const { index, squares } = known;
  const square = squares.tried.get(keyOf(pair, index));
  const said = square ? tellSquare(square, index) : tellEmpty(pair, known);
  return [`${titleOf(pair, index)}: ${said}`, tellStock(pair, index)].filter(Boolean).join(" ");
}

/** `Nobody has tried this at cone 6, on any clay.` */
export function tellEmpty(pair: Pair, known: Known): string {
  if (!known.whole) return "still being loaded.";
  const besides = tellBesides(pair, known);
  return [`nobody has tried this ${placeOf(known)}.`, ...besides].join(" ");
}

/** Where else the same two met: on other clays, at other cones. */
export function tellBesides(
  pair: Pair,
  { view, index, squares, triedAt }: Known,
): readonly string[] {
  const besides = squares.besides.get(keyOf(pair, index)) ?? 0;
  const cones = triedAt.get(keyOf(pair, index)) ?? [];
  const others = cones
    .filter((cone) => cone !== view.cone)
    .map((cone) => index.cones.labels[cone] ?? "");
  const named = others.filter((label) => label !== "");
  return [
    besides > 0 ? `${tilesOf(besides)} on other clays or in other fires.` : "",
    named.length > 0 ? `Tried at cone ${listed(named)}.` : "",
    others.includes("") ? "A tile with it has no cone yet." : "",
  ].filter(Boolean);
}

/** `Mist is not in stock.`; empty where both glazes are. */
function tellStock({ over, under }: Pair, { glazes }: GridIndex): string {
  const out = [...new Set([over, under])].flatMap((place) => {
    const glaze = glazes[place];
    return glaze && !glaze.stocked ? [glaze.name] : [];
  });
  return out.length === 0 ? "" : `${listed(out)} ${out.length > 1 ? "are" : "is"} not in stock.`;
}

/** Whether somebody could not try it for want of a glaze. */
export function isOutOfStock({ over, under }: Pair, { glazes }: GridIndex): boolean {
  return glazes[over]?.stocked === false || glazes[under]?.stocked === false;
}

/** `at cone 6, on Buff stoneware, in oxidation` */
export function placeOf({ view, index }: Pick<Known, "index" | "view">): string {
  const { cones, clays, atmospheres } = index;
  const cone = cones.labels[view.cone] ?? "";
  const words = [cone === "" ? "without a cone" : `at cone ${cone}`];
  if (view.clay !== undefined)
    words.push(`on ${clays.labels[view.clay] || "a clay not written down"}`);
  const fire = view.atmosphere === undefined ? undefined : atmospheres.labels[view.atmosphere];
  if (fire === "") words.push("in a fire not written down");
  else if (fire !== undefined) words.push(fire === "neutral" ? "in a neutral fire" : `in ${fire}`);
  return words.join(", ");
}

/**
 * What the whole view comes to: how many pairs there are, how many were tried, and how many nobody can
 * try for want of a glaze.
 *
 * @param glazes those that have a row and a column
 */
export function tellAll(glazes: readonly number[], known: Known): string {
  const { index, squares } = known;
  const isShown = new Set(glazes);
  const keys = [...squares.tried.keys()].filter((key) => {
    const pair = pairOf(key, index);
    return pair.over !== pair.under && isShown.has(pair.over) && isShown.has(pair.under);
  });
  const all = glazes.length * (glazes.length - 1);
  const stocked = glazes.filter((place) => index.glazes[place]?.stocked !== false).length;
  const triedInStock = keys.filter((key) => !isOutOfStock(pairOf(key, index), index)).length;
  const untried = all - keys.length;
  const outOfStock = untried - (stocked * (stocked - 1) - triedInStock);
  return [
    `${grouped(keys.length)} of ${grouped(all)} pairs of these ${glazes.length} glazes were tried ${placeOf(known)}.`,
    untried > 0
      ? `Nobody has tried ${keys.length === 0 ? "any" : `the other ${grouped(untried)}`}.`
      : "",
    outOfStock > 0 ? `${grouped(outOfStock)} of those need a glaze that is not in stock.` : "",
  ]
    .filter(Boolean)
    .join(" ");
}

function pairOf(key: number, { glazes }: GridIndex): Pair {
  return { over: Math.floor(key / glazes.length), under: key % glazes.length };
}

/** What a head says beneath the glaze's name: what it is in its place by. */
export function tellHead(
  place: number,
  order: Order,
  { index, squares }: Known,
  colours: ReadonlyMap<number, GridColour>,
): string {
  const glaze = index.glazes[place];
  const alone = squares.tried.get(keyOf({ over: place, under: place }, index));
  const words: Readonly<Record<Order, () => string>> = {
    name: () => "",
    tried: () => "",
    colour: () => colours.get(place)?.[2] ?? "not measured",
    range: () => (glaze?.cones ? `cone ${rangeOf(glaze.cones)}` : "no range"),
    movement: () => {
      if (alone && alone.measured > 0)
        return alone.run > 0 ? `ran ${alone.run}\u00a0mm` : "did not run";
      return glaze?.moves ? `label: ${labelWords[glaze.moves]}` : "not known";
    },
  };
  return [words[order](), glaze?.stocked === false ? "not in stock" : ""]
    .filter(Boolean)
    .join(", ");
}

const labelWords = { little: "moves little", none: "stays", runs: "runs" } as const;

function rangeOf([from, to]: NonNullable<GridGlaze["cones"]>): string {
  return from === to ? from : `${from}–${to}`;
}

function tilesOf(number: number): string {
  return number === 1 ? "1 tile" : `${grouped(number)} tiles`;
}

function grouped(number: number): string {
  return groupThousands(String(number));
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
