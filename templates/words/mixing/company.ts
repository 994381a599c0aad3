/** What is said of a glaze among the others of its cone. */
import type {
  Company,
  Outcome,
  PlacedGlaze,
  SeenOutcome,
} from "../../../src/catalogue/mixing/companies.ts";
import type { MixFigure } from "../../../src/chemistry/mix-figures.ts";
import { rememberFor } from "../../../src/terms/remember.ts";
import { capital, codesInShort, count, listed } from "../english/numbers.ts";
import { fixed, formatMoles } from "./chemistry.ts";

export const figureNames: Readonly<Record<MixFigure, string>> = {
  silicaToAlumina: "Silica to alumina",
  alkaliToEarth: "Alkalis to alkaline earths",
  boron: "Boric oxide to one of flux",
};

/** `9.1`, `0.26 : 0.74`, `0.32`: to the figures that matter. */
export function figureOf(figure: MixFigure, value: number): string {
  if (figure === "silicaToAlumina") return fixed(value, 1);
  if (figure === "boron") return value === 0 ? "none" : formatMoles(value);
  return `${fixed(value, 2)}\u00A0:\u00A0${fixed(1 - Number(value.toFixed(2)), 2)}`;
}

const cooled = {
  natural: "left to cool",
  slowed: "cooled slowly",
  unknown: "cooling not recorded",
} as const;

const fires = {
  pit: "in a pit",
  raku: "in raku",
  saggar: "in a saggar",
  salt: "in salt",
  soda: "in soda",
  wood: "fired with wood",
} as const;

/** `cone 6, left to cool`. */
export function companyName({ cone, cooling, fire }: Company): string {
  return `cone ${cone}${fire ? ` ${fires[fire]}` : ""}, ${cooled[cooling]}`;
}

/** `gloss (T-1, T-2) and crazed (T-2)`. */
export function seenOutcomes(seen: readonly SeenOutcome[]): string {
  return listed(seen.map(({ outcome, tiles }) => `${outcome} (${codesInShort(tiles)})`));
}

/** What the marks rest on, and what they leave out. */
export const restsOnWords = rememberFor((company: Company): string => {
  const tiles = new Set(company.glazes.flatMap(({ seen }) => seen.flatMap((entry) => entry.tiles)));
  const airs = company.airs.map((air) => air ?? "not recorded");
  const air = airs.length > 1 ? ` Atmospheres differ (${listed([...airs].sort())}).` : "";
  return `From ${count(tiles.size, "tile")} of ${count(company.glazes.length, "mixed glaze")}, each alone on its tile, at ${companyName(company)}.${air} Other cones, coolings and kinds of fire are left out, and so are glazes whose tiles have no result.`;
});

interface Known {
  readonly name: string;
  readonly value: number;
  readonly seen: readonly SeenOutcome[];
}

/** Where a figure is among those of the other glazes, outcome by outcome, and its neighbours. */
export function placeWords(
  figure: MixFigure,
  value: number,
  others: readonly PlacedGlaze[],
  outcomes: readonly Outcome[],
): string {
  const known = others.flatMap(({ glaze, figures, seen }): readonly Known[] => {
    const found = figures[figure];
    return found === null ? [] : [{ name: glaze.name, value: found, seen }];
  });
  if (known.length === 0) return "No other glaze here has this figure yet.";
  if ([value, ...known.map((other) => other.value)].every((each) => each === 0))
    return "No glaze here has any.";
  const ranges = outcomes.flatMap((outcome) => rangeWords(figure, value, outcome, known));
  return [...ranges, nearestWords(figure, value, known)].filter(Boolean).join(" ");
}

/** `Gloss: 4 other glazes (7 tiles) from 7.2 to 9.8; this one is among them.` */
function rangeWords(
  figure: MixFigure,
  value: number,
  outcome: Outcome,
  known: readonly Known[],
): readonly string[] {
  const shown = known.flatMap((glaze) => {
    const tiles = glaze.seen.find((entry) => entry.outcome === outcome)?.tiles;
    return tiles ? [{ value: glaze.value, tiles: tiles.length }] : [];
  });
  if (shown.length === 0) return [];
  const values = shown.map((glaze) => glaze.value);
  const tiles = shown.reduce((sum, glaze) => sum + glaze.tiles, 0);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const [from, to] = [figureOf(figure, low), figureOf(figure, high)];
  const range = from === to ? (high === 0 ? "without any" : `at ${from}`) : `from ${from} to ${to}`;
  const own = figureOf(figure, value);
  const place =
    own === from || own === to || (value >= low && value <= high)
      ? "this one is among them"
      : `this one is ${value < low ? "below" : "above"}`;
  const who = `${count(values.length, "other glaze")} (${count(tiles, "tile")})`;
  return [`${capital(outcome)}: ${who} ${range}; ${place}.`];
}

function nearestWords(figure: MixFigure, value: number, known: readonly Known[]): string {
  const [nearest] = [...known].sort(
    (a, b) => Math.abs(a.value - value) - Math.abs(b.value - value),
  );
  return nearest
    ? `Nearest: ${nearest.name}, ${figureOf(figure, nearest.value)}: ${seenOutcomes(nearest.seen)}.`
    : "";
}
