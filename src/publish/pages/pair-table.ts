/** Two glazes side by side, as the page of a pair sets them out. */
import { nameCodes } from "../../../templates/parts/codes.tsx";
import type { PairCellView, PairTableView } from "../../../templates/parts/pair-table.tsx";
import { pairCoatsWords } from "../../../templates/words/glaze/pair.ts";
import { circumstanceHeading, firedWords } from "../../../templates/words/tile/circumstance.ts";
import type { Circumstance } from "../../catalogue/circumstance.ts";
import type { PairCircumstance, PairCoats, PairRow } from "../../catalogue/pairs-table.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import type { Site } from "./site.ts";
import { testedTile } from "./tested-tile.ts";

/** So many rows are set out, and of each so many tiles of either order and of each glaze alone. */
const [mostRows, mostOfAnOrder, mostAlone] = [8, 2, 1];

/** More of the same are named by their codes. */
const mostNamed = 6;

/** A table cut to what a page has room for. */
export interface ShownTable {
  readonly circumstances: readonly {
    readonly circumstance: Circumstance;
    readonly rows: readonly ShownRow[];
  }[];
  readonly moreRows: number;
}

interface ShownRow {
  readonly coats: PairCoats | null;
  readonly asNamed: Cut;
  readonly reversed: Cut;
  readonly overAlone: CutAlone;
  readonly underAlone: CutAlone;
}

interface Cut {
  readonly shown: readonly CatalogueTile[];
  readonly more: readonly CatalogueTile[];
}

interface CutAlone extends Cut {
  readonly elsewhere: readonly CatalogueTile[];
}

export function shownTable(table: readonly PairCircumstance[]): ShownTable {
  let room = mostRows;
  const circumstances = table.flatMap(({ circumstance, rows }) => {
    const taken = rows.slice(0, room).map(cutRow);
    room -= taken.length;
    return taken.length > 0 ? [{ circumstance, rows: taken }] : [];
  });
  const all = table.reduce((sum, { rows }) => sum + rows.length, 0);
  return { circumstances, moreRows: all - (mostRows - room) };
}

function cutRow({ coats, asNamed, reversed, overAlone, underAlone }: PairRow): ShownRow {
  return {
    coats,
    asNamed: cut(asNamed, mostOfAnOrder),
    reversed: cut(reversed, mostOfAnOrder),
    overAlone: { ...cut(overAlone.here, mostAlone), elsewhere: overAlone.elsewhere },
    underAlone: { ...cut(underAlone.here, mostAlone), elsewhere: underAlone.elsewhere },
  };
}

function cut(tiles: readonly CatalogueTile[], most: number): Cut {
  return { shown: tiles.slice(0, most), more: tiles.slice(most) };
}

interface Names {
  readonly over: string;
  readonly under: string;
}

export function viewTable(
  site: Site,
  { circumstances, moreRows }: ShownTable,
  names: Names,
): PairTableView {
  return {
    circumstances: circumstances.map(({ circumstance, rows }) => ({
      heading: circumstanceHeading(circumstance),
      fired: firedWords(circumstance),
      rows: rows.map((row) => ({
        coats: pairCoatsWords(row.coats, names),
        cells: cellsOf(site, row, names),
      })),
    })),
    moreRows,
  };
}

function cellsOf(site: Site, row: ShownRow, { over, under }: Names): readonly PairCellView[] {
  return [
    viewCell(site, `${over} over ${under}`, row.asNamed),
    viewCell(site, `${under} over ${over}`, row.reversed),
    viewAlone(site, over, row.overAlone),
    viewAlone(site, under, row.underAlone),
  ];
}

function viewCell(site: Site, name: string, { shown, more }: Cut): PairCellView {
  return {
    name,
    tiles: shown.flatMap((tile) => testedTile(site, tile) ?? []),
    more: nameCodes(more, mostNamed),
    otherwise: null,
    none: "None tested like this yet.",
  };
}

/** A glaze by itself stands beside the pair whatever its coats, which are told beneath it. */
function viewAlone(site: Site, glaze: string, { elsewhere, ...cell }: CutAlone): PairCellView {
  return {
    ...viewCell(site, `${glaze} alone`, cell),
    otherwise:
      cell.shown.length > 0
        ? null
        : {
            words: "At the same cone, but not otherwise alike:",
            codes: nameCodes(elsewhere, mostNamed),
          },
  };
}
