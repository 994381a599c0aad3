/** Makes the files that the grid is drawn with. */
import { spoken } from "../../templates/words/english/numbers.ts";
import { groupBy } from "../catalogue/group-by.ts";
import { findDecidingFiring } from "../catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import { tilesByCode } from "../catalogue/tiles-by-code.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { atmospheres, faults } from "../terms/choices.ts";
import { type Cone, compareCones, coneSlug } from "../terms/cones.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { rememberFor } from "../terms/remember.ts";
import type { DataFile } from "./data/entry.ts";
import type { GridChoices, GridColour, GridIndex, GridPart, GridRow } from "./grid-file.ts";
import { thumbnailUrl } from "./pages/tiles.ts";

/** So many squares are in one file: some 100 KB. */
const rowsInAPart = 1_000;

/** Two glazes that met on tiles, or one alone, which is told as over itself: by their places. */
interface Meeting {
  readonly over: number;
  readonly under: number;
  readonly tiles: readonly CatalogueTile[];
}

/** The index, and the parts of each cone in its order. */
export interface Grid {
  readonly index: GridIndex;
  readonly parts: readonly (readonly GridPart[])[];
}

/** Its page and its files are made of the same. */
export const makeGrid: (catalogue: Catalogue) => Grid = rememberFor((catalogue) => {
  const meetings = listMeetings(catalogue);
  const tiles = meetings.flatMap((meeting) => meeting.tiles);
  const cones = conesOf(tiles);
  const clays = choicesOf(
    new Map(tiles.map(({ clay }) => [clay?.id ?? "", clay?.name ?? ""])),
    compareIds,
  );
  const fires = choicesOf(
    new Map(tiles.map(({ atmosphere }) => [atmosphere ?? "", spoken(atmosphere ?? "")])),
    (a, b) => atmospheres.indexOf(a as never) - atmospheres.indexOf(b as never),
  );
  const rowsOf = rowMaker(clays, fires);
  const parts = cones.map((cone) => partsOf(catalogue, cone, meetings.flatMap(at(cone, rowsOf))));
  return {
    index: {
      glazes: catalogue.glazes.map(toGridGlaze),
      cones: {
        keys: cones.map((cone) => (cone === null ? "" : coneSlug(cone))),
        labels: cones.map((cone) => cone ?? ""),
        parts: parts.map(({ length }) => length),
      },
      clays,
      atmospheres: fires as GridIndex["atmospheres"],
      faults: faults.map(spoken),
      first: mostTried(tiles, cones),
      tried: meetings.map(({ over, under, tiles: on }) => [
        over,
        under,
        ...new Set(on.map(({ cone }) => cones.indexOf(cone))),
      ]),
    },
    parts,
  };
});

/** The path of a part: `data/grid-6-1.js`; the squares of tiles without a cone are in `unknown`. */
export function gridPartPath(cone: string, part: number): string {
  return `data/grid-${cone || "unknown"}-${part + 1}.js`;
}

/** The files as classic scripts, which a page opened from a folder can load as well. */
export function makeGridScripts(catalogue: Catalogue): readonly DataFile[] {
  const { index, parts } = makeGrid(catalogue);
  const main = `self.tilebookGrid=${JSON.stringify(index)};\n`;
  const rest = parts.flatMap((ofCone, cone) =>
    ofCone.map((part, i) => ({
      path: gridPartPath(index.cones.keys[cone] ?? "", i),
      content: `(self.tilebookSquares??={})["${cone} ${i}"]=${JSON.stringify(part)};\n`,
    })),
  );
  return [{ path: "data/grid.js", content: main }, ...rest];
}

function listMeetings(catalogue: Catalogue): readonly Meeting[] {
  const { glazes, pairs } = catalogue;
  const placeOf = new Map(glazes.map(({ id }, place) => [idKey(id), place]));
  const alone = glazes.map(({ alone: codes }, place) => ({
    over: place,
    under: place,
    tiles: tilesByCode(catalogue, codes),
  }));
  const met = pairs.flatMap(({ over, under, tiles: codes }) => {
    const [top, beneath] = [placeOf.get(idKey(over.id)), placeOf.get(idKey(under.id))];
    if (top === undefined || beneath === undefined || top === beneath) return [];
    return [{ over: top, under: beneath, tiles: tilesByCode(catalogue, codes) }];
  });
  return [...alone, ...met].filter(({ tiles }) => tiles.length > 0);
}

/** From cool to hot, and last what has no cone, where there is such a tile. */
function conesOf(tiles: readonly CatalogueTile[]): readonly (Cone | null)[] {
  const found = new Set(tiles.map(({ cone }) => cone));
  const known = [...found].filter((cone) => cone !== null).sort(compareCones);
  return found.has(null) ? [...known, null] : known;
}

function mostTried(tiles: readonly CatalogueTile[], cones: readonly (Cone | null)[]): number {
  const counts = cones.map((cone) =>
    cone === null ? 0 : tiles.filter((tile) => tile.cone === cone).length,
  );
  return Math.max(0, counts.indexOf(Math.max(...counts)));
}

/** What nobody wrote down comes last, and has no words here. */
function choicesOf(
  found: ReadonlyMap<string, string>,
  compare: (a: string, b: string) => number,
): GridChoices {
  const keys = [...found.keys()].sort(
    (a, b) => Number(a === "") - Number(b === "") || compare(a, b),
  );
  return { keys, labels: keys.map((key) => found.get(key) ?? "") };
}

type RowsOf = (meeting: Meeting) => readonly GridRow[];

/** The rows of a meeting at one cone alone. */
function at(cone: Cone | null, rowsOf: RowsOf): RowsOf {
  return ({ tiles, ...meeting }) =>
    rowsOf({ ...meeting, tiles: tiles.filter((tile) => tile.cone === cone) });
}

/** A row for each clay and kind of fire, that one first whose tile is shown for all of them. */
function rowMaker(clays: GridChoices, fires: GridChoices): RowsOf {
  return ({ over, under, tiles }) => {
    const inOrder = [...tiles].sort(tellingFirst(over === under ? 1 : 2));
    const groups = groupBy(inOrder, ({ clay, atmosphere }) => `${clay?.id ?? ""} ${atmosphere}`);
    return groups.map((group) => {
      const [{ clay, atmosphere }] = group;
      const places = [clays.keys.indexOf(clay?.id ?? ""), fires.keys.indexOf(atmosphere ?? "")];
      const [onClay = 0, inFire = 0] = places;
      return [over, under, onClay, inFire, ...rowOf(group)];
    });
  };
}

type RestOfRow = GridRow extends readonly [number, number, number, number, ...infer Rest]
  ? Rest
  : never;

function rowOf(group: readonly [CatalogueTile, ...CatalogueTile[]]): RestOfRow {
  const [shown] = group;
  const runs = group.flatMap(({ run }) => run ?? []);
  const saying = (word: CatalogueTile["again"]) =>
    group.filter(({ again }) => again === word).length;
  const found = new Set(group.flatMap((tile) => tile.faults));
  return [
    group.length,
    shown.id,
    thumbnailUrl(shown) ?? "",
    runs.length,
    Math.max(0, ...runs),
    saying("yes"),
    saying("changed"),
    saying("no"),
    faults.flatMap((fault, place) => (found.has(fault) ? [place] : [])),
  ];
}

/**
 * Which tile is shown for several: one with a photograph, with a result, with no other glaze than
 * these, and of what is left the newest.
 *
 * @param glazes how many glazes a tile has that shows these alone
 */
function tellingFirst(glazes: number): (a: CatalogueTile, b: CatalogueTile) => number {
  const lacks = (tile: CatalogueTile) => [
    thumbnailUrl(tile) === null,
    tile.results.length === 0,
    Object.keys(tile.glazes).length > glazes,
  ];
  return (a, b) => {
    const [ofA, ofB] = [lacks(a), lacks(b)];
    const place = ofA.findIndex((lack, i) => lack !== ofB[i]);
    if (place >= 0) return ofA[place] ? 1 : -1;
    return compareText(dayOf(b), dayOf(a)) || compareText(a.id, b.id);
  };
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function dayOf({ steps, glazed }: CatalogueTile): string {
  return findDecidingFiring(steps)?.on ?? glazed ?? "";
}

function partsOf({ glazes }: Catalogue, cone: Cone | null, rows: readonly GridRow[]): GridPart[] {
  const cut = Array.from({ length: Math.max(1, Math.ceil(rows.length / rowsInAPart)) }, (_, i) =>
    rows.slice(i * rowsInAPart, (i + 1) * rowsInAPart),
  );
  const colours = glazes.flatMap((glaze, place) => colourAt(glaze, place, cone));
  return cut.map((part, i) => ({ rows: part, colours: i === 0 ? colours : [] }));
}

/** The colour that speaks for a glaze, where it was measured at this very cone, else another of this cone. */
function colourAt(
  { shownAs, onClays }: Catalogue["glazes"][number],
  place: number,
  cone: Cone | null,
): readonly GridColour[] {
  const measured = [...(shownAs ? [shownAs] : []), ...onClays.flatMap((on) => on.measured)];
  const found = measured.find((one) => one.cone === cone);
  return found ? [[place, found.colour.hex, found.colour.name]] : [];
}

function toGridGlaze(glaze: Catalogue["glazes"][number]): GridIndex["glazes"][number] {
  const { id, name, stocked, cones, moves } = glaze;
  return { id, name, stocked, cones: cones && [cones.from, cones.to], moves };
}
