/** What a set asked, as its page lays it out. */

import type { AskedTable } from "../../../templates/parts/asked.tsx";
import { nameCodes } from "../../../templates/parts/codes.tsx";
import { spoken } from "../../../templates/words/english/numbers.ts";
import { didSentence, questionWords } from "../../../templates/words/tile/asked.ts";
import { facetValueWords, glazeName } from "../../../templates/words/tile/change-of-facet.ts";
import { comparedSteps } from "../../catalogue/apart.ts";
import { type Asked, type AskedRow, askedAmong } from "../../catalogue/asked.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import type { Aspect } from "../../likeness/make-up.ts";
import type { Site } from "./site.ts";

/** So many rows are laid out of all questions together, and so many values of each. */
const [mostRows, mostValues] = [8, 6];

/** Of tiles made alike one is shown, and so many more are named. */
const mostNamed = 3;

export function askedTables(site: Site, codes: readonly string[]): readonly AskedTable[] {
  const { catalogue } = site;
  const all = askedAmong(tilesByCode(catalogue, codes), catalogue.trust);
  const most = Math.floor(mostRows / Math.max(1, all.length));
  return all.map((asked) => tableOf(site, asked, most));
}

function tableOf(site: Site, asked: Asked, most: number): AskedTable {
  const { aspect, values, rows } = asked;
  const shown = rows.slice(0, most);
  const names = nameRows(site, aspect, shown);
  return {
    question: questionWords(aspect),
    answer: didSentence(asked),
    values: values.slice(0, mostValues).map((value, i) => {
      const tile = rows.flatMap(({ cells }) => cells[i]?.[0] ?? [])[0];
      return tile ? facetValueWords(aspect, value, tile) : value;
    }),
    moreValues: Math.max(0, values.length - mostValues),
    rows: shown.map((row, i) => ({
      name: names[i] ?? "",
      cells: row.cells.slice(0, mostValues).map((cell) => ({
        tile: site.entries(cell.slice(0, 1).map(({ id }) => id))[0] ?? null,
        more: nameCodes(cell.slice(1), mostNamed),
      })),
    })),
    moreRows: rows.length - shown.length,
  };
}

/** What all tiles of a row have in common, and what tells rows of the same glazes apart. */
function nameRows(site: Site, aspect: Aspect, rows: readonly AskedRow[]): readonly string[] {
  const all = rows.map((row) => describeRow(site, aspect, row));
  return all.map((parts) =>
    parts
      .filter((part, i) => part && (i === 0 || all.some((other) => other[i] !== part)))
      .join(", "),
  );
}

/** What all tiles of a row have in common, the glazes first; empty for what differs or is unknown. */
export function describeRow(
  site: Site,
  aspect: Aspect,
  { step, cells }: AskedRow,
): readonly string[] {
  const [tile] = cells.flat();
  if (!tile) return [];
  const layer = step === null ? undefined : comparedSteps(tile)[step];
  return [
    site.names(tile) || "No glaze",
    layer?.step === "coat" ? `the layer of ${glazeName(layer, tile)}` : "",
    aspect === "clay" ? "" : (tile.clay?.name ?? ""),
    aspect === "cone" || tile.cone === null ? "" : `cone ${tile.cone}`,
    aspect === "texture" ? "" : spoken(tile.texture),
  ];
}
