/** A tile as it is set beside others: lines that are compared by their labels. */
import { comparedSteps } from "../../../src/catalogue/apart.ts";
import { firingsOf } from "../../../src/catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import type { Facet } from "../../../src/likeness/make-up.ts";
import { capital, formatDay, listed, spoken } from "../english/numbers.ts";
import { facetValueWords } from "./change-of-facet.ts";
import { fateWords, lookWords, runWords, shapeName, stageName } from "./outcome.ts";
import { firingName, shelfWords, stepWords } from "./steps.ts";

/**
 * Lines that are compared by their labels. Where one is missing: of facts nobody wrote it down; of parts
 * there is nothing of it; notes are not compared at all.
 */
export interface ComparedTable {
  readonly title: string;
  readonly kind: "facts" | "notes" | "parts";
  readonly lines: readonly (readonly [label: string, words: string])[];
}

/** Of a line without words nobody wrote anything down, so it is left out. */
export function comparedTable(
  title: string,
  kind: ComparedTable["kind"],
  lines: readonly (readonly [label: string, words: string | false | null])[],
): ComparedTable {
  const known = lines.flatMap(([label, words]) => (words ? [[label, words] as const] : []));
  return { title, kind, lines: known };
}

/** What a tile is, what came of it, what else was not the same, and what to mind. */
export function tablesOfTile(tile: CatalogueTile): readonly ComparedTable[] {
  const { clay, texture, shape, angle } = tile;
  return [
    comparedTable("The piece", "facts", [
      ["Clay", clay?.name ?? null],
      ["Texture", spoken(texture)],
      ["Shape", angle === null ? shapeName(shape) : `${shapeName(shape)}, ${angle}°`],
    ]),
    cameOut(tile),
    comparedTable("What else there was", "facts", besides(tile)),
    comparedTable(
      "Take care",
      "notes",
      tile.cautions.map(({ message }) => [message, "yes"] as const),
    ),
  ];
}

function cameOut(tile: CatalogueTile) {
  const { results, later, stage, fate, surface, effects, faults, again, run } = tile;
  const [last] = results.slice(-1);
  const looked = last?.faults?.includes("none") ? "none found" : null;
  const seen = later.map(
    (look) =>
      [
        `Looked at again, ${formatDay(look.on)}`,
        capital(lookWords(look)) || "nothing written down",
      ] as const,
  );
  return comparedTable("What came out", "facts", [
    ["Now", results.length === 0 && fate === null ? stageName(stage) : null],
    ["What became of it", fate === null ? null : fateWords(fate)],
    ["Surface", listed(surface)],
    ["Effects", listed(effects.map(spoken))],
    ["Faults", listed(faults.map(spoken)) || looked],
    ["Run", run === null ? null : runWords(run)],
    ["Again", again],
    ...seen,
  ]);
}

/** What counts as no difference of make-up, and may have made one all the same. */
function besides(tile: CatalogueTile): readonly (readonly [string, string | null])[] {
  const firings = firingsOf(tile.steps);
  const loads = firings.flatMap(({ page }) => page?.name ?? []);
  const shelves = firings.flatMap(({ shelf }) => (shelf ? [shelfWords(shelf)] : []));
  const kilns = [...new Set(firings.flatMap(({ kiln }) => kiln ?? []))];
  return [
    ["Maker", tile.maker?.name ?? null],
    ["Set", tile.set?.name ?? null],
    ["Glazed", tile.glazed && formatDay(tile.glazed)],
    ["Batch of clay", tile.clayBatch],
    ["Kiln", listed(kilns)],
    ["Loads", loads.join(", ")],
    ["Shelf", shelves.join(", ")],
  ];
}

/**
 * The steps that are compared, in words.
 *
 * @param parts the facets of each
 */
export function stepsInWords(
  tile: CatalogueTile,
  parts: readonly (readonly Facet[])[],
): readonly string[] {
  const nameOf = (id: string) => tile.glazes[id]?.name ?? id;
  return comparedSteps(tile).map((step, place) => {
    if (step.step !== "fired") return stepWords(step, nameOf);
    const told = (parts[place] ?? []).flatMap(({ aspect, value }) =>
      aspect === "what" || value === null ? [] : [facetValueWords(aspect, value, tile)],
    );
    return `${firingName(step.kind)}${told.length > 0 ? `: ${told.join(", ")}` : ""}`;
  });
}
