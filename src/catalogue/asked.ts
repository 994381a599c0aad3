/** What a set asked: the facet in which its tiles differ while the rest is the same, and what it did. */
import { differenceCiede2000 } from "../colour/difference.ts";
import { unknownAspects } from "../likeness/alike.ts";
import type { Aspect } from "../likeness/make-up.ts";
import { type Series, type SeriesRow, seriesAmong } from "../likeness/series.ts";
import { isOtherRun } from "../terms/run.ts";
import type { ColourTrust } from "./colours/trust.ts";
import { compareValues } from "./strips.ts";
import type { CatalogueTile } from "./tiles.ts";

export interface Asked {
  readonly aspect: Aspect;
  /** From few to many, from cool to hot; what has no order by its letters. As facets have them. */
  readonly values: readonly string[];
  readonly rows: readonly AskedRow[];
  readonly did: Did;
  /** What nobody wrote down of some of these tiles, so that it may have differed. */
  readonly unknown: readonly Aspect[];
}

/** Tiles that differ in nothing else. */
export interface AskedRow {
  readonly step: number | null;
  /** For each value the tiles that have it; some may have none. */
  readonly cells: readonly (readonly CatalogueTile[])[];
}

/**
 * How often two neighbouring values came out otherwise, the first tile of each compared: of so many
 * comparisons in which both say what came out.
 */
export interface Did {
  readonly comparisons: number;
  readonly surface: Tally;
  readonly faults: Tally;
  readonly ran: Tally;
  readonly again: Tally;
  /** Beyond what tiles made alike differ here. */
  readonly colour: Tally;
}

export interface Tally {
  readonly changed: number;
  readonly of: number;
}

/** So many questions are laid out; a set of other series asks none of them. */
const mostAsked = 3;

/**
 * What some tiles ask, what most of them take part in first.
 *
 * @param tiles those of a set; what has no result yet is left out
 */
export function askedAmong(
  tiles: readonly CatalogueTile[],
  trust: ColourTrust | null,
): readonly Asked[] {
  const recorded = tiles.filter(({ results }) => results.length > 0);
  return seriesAmong(recorded, ({ makeUp }) => makeUp)
    .map((series) => ({ series, takesPart: countTiles(series) }))
    .toSorted((a, b) => b.takesPart - a.takesPart)
    .slice(0, mostAsked)
    .map(({ series }) => layOut(series, trust));
}

function countTiles({ rows }: Series<CatalogueTile>): number {
  return new Set(rows.flatMap(({ byValue }) => [...byValue.values()].flat())).size;
}

function layOut({ aspect, rows }: Series<CatalogueTile>, trust: ColourTrust | null): Asked {
  const found = new Set(rows.flatMap(({ byValue }) => [...byValue.keys()]));
  const values = [...found].toSorted((a, b) => compareValues(aspect, a, b));
  const laid = rows.map((row) => ({ step: row.step, cells: cellsOf(row, values) }));
  const unknown = new Set(
    laid.flatMap(({ cells }) => cells.flat().flatMap(({ makeUp }) => unknownAspects(makeUp))),
  );
  return {
    aspect,
    values,
    rows: laid,
    did: countDid(neighboursIn(laid), trust),
    unknown: [...unknown],
  };
}

function cellsOf({ byValue }: SeriesRow<CatalogueTile>, values: readonly string[]) {
  return values.map((value) => byValue.get(value) ?? []);
}

function neighboursIn(rows: readonly AskedRow[]): readonly Compared[] {
  return rows.flatMap(({ cells }) => {
    const tiles = cells.flatMap(([first]) => first ?? []);
    return tiles.slice(1).map((tile, i) => [tiles[i] ?? tile, tile] as const);
  });
}

type Compared = readonly [CatalogueTile, CatalogueTile];

/** Counts how often the second of two tiles came out otherwise than the first. */
export function countDid(pairs: readonly Compared[], trust: ColourTrust | null): Did {
  const tally = <T>(
    look: (tile: CatalogueTile) => T | undefined,
    differs: (a: T, b: T) => boolean,
  ): Tally => {
    const looks = pairs.flatMap(([a, b]) => {
      const [one, other] = [look(a), look(b)];
      return one === undefined || other === undefined ? [] : [[one, other] as const];
    });
    return { changed: looks.filter(([a, b]) => differs(a, b)).length, of: looks.length };
  };
  const isOther = (a: string, b: string) => a !== b;
  return {
    comparisons: pairs.length,
    surface: tally(({ surface }) => surface.join() || undefined, isOther),
    faults: tally(faultsOf, isOther),
    ran: tally(({ run }) => run ?? undefined, isOtherRun),
    again: tally(({ again }) => again ?? undefined, isOther),
    colour: tally(
      ({ colour }) => (trust && colour?.lab) ?? undefined,
      (a, b) => differenceCiede2000(a, b) > (trust?.difference ?? 0),
    ),
  };
}

/** What was found; undefined where nobody looked for faults. */
function faultsOf({ faults, results }: CatalogueTile): string | undefined {
  return results.some((result) => result.faults !== undefined) ? faults.join() : undefined;
}
