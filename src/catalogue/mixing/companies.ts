/**
 * The studio's own glazes beside one another: what their tiles came out as, and the figures that a
 * mixer looks for first. Other cones, other coolings and fires that land on glaze (salt, wood) are
 * other companies.
 */

import { type MixFigures, mixFiguresOf } from "../../chemistry/mix-figures.ts";
import type { Cooling } from "../../firing/cooling.ts";
import { lastValue } from "../../likeness/make-up.ts";
import { type Atmosphere, type Surface, surfaces } from "../../terms/choices.ts";
import { type Cone, compareCones } from "../../terms/cones.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { type FireOnGlaze, fireOn } from "../colours/measured-alone.ts";
import type { CatalogueGlaze } from "../glazes.ts";
import { groupBy } from "../group-by.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";

export type Outcome = Surface | "crazed";

export interface SeenOutcome {
  readonly outcome: Outcome;
  /** The codes of the tiles that show it. */
  readonly tiles: readonly string[];
}

/** A glaze in a company, by its tiles there. */
export interface PlacedGlaze {
  readonly glaze: Link;
  /** What it measured alone, as `#rrggbb`; null where it is not known. */
  readonly colour: string | null;
  readonly figures: MixFigures;
  readonly seen: readonly SeenOutcome[];
}

/** Mixed glazes fired alone to one cone, cooled in one way and in one kind of fire, each with a tile that tells its surface. */
export interface Company {
  readonly cone: Cone;
  readonly cooling: Cooling;
  readonly fire: FireOnGlaze | null;
  /** The air of its firings; null among them where nobody wrote it down. */
  readonly airs: readonly (Atmosphere | null)[];
  /** In the order of their names. */
  readonly glazes: readonly PlacedGlaze[];
}

/** By cone from cool to hot, then by cooling and fire. */
export function listCompanies(
  glazes: readonly CatalogueGlaze[],
  tileById: ReadonlyMap<string, CatalogueTile>,
): readonly Company[] {
  const companies = new Map<string, OpenCompany>();
  for (const glaze of glazes) {
    for (const { tiles, ...alike } of firedAlike(glaze, tileById)) {
      const placed = placeGlaze(glaze, tiles);
      if (!placed) continue;
      const key = keyOf(alike);
      const company = companies.get(key) ?? { ...alike, airs: new Set(), glazes: [] };
      for (const { atmosphere } of tiles) company.airs.add(atmosphere);
      company.glazes.push(placed);
      companies.set(key, company);
    }
  }
  const found = [...companies.values()].map((open) => ({ ...open, airs: [...open.airs] }));
  return found.sort((a, b) => compareCones(a.cone, b.cone) || compareIds(keyOf(a), keyOf(b)));
}

/** A company to which glazes are still added. */
interface OpenCompany extends Alike {
  readonly airs: Set<Company["airs"][number]>;
  readonly glazes: PlacedGlaze[];
}

type Alike = Pick<Company, "cone" | "cooling" | "fire">;

type FiredAlike = Alike & { readonly tiles: readonly CatalogueTile[] };

function keyOf({ cone, cooling, fire }: Alike): string {
  return [cone, cooling, fire].join(" ");
}

/** The tiles that have the glaze alone and were fired, by how they were. */
function firedAlike(
  { alone }: CatalogueGlaze,
  tileById: ReadonlyMap<string, CatalogueTile>,
): readonly FiredAlike[] {
  const fired = alone.flatMap((code) => {
    const tile = tileById.get(idKey(code));
    if (!tile || tile.cone === null) return [];
    const cooling = (lastValue(tile.makeUp, "cooling") ?? "unknown") as Cooling;
    return [{ tile, alike: { cone: tile.cone, cooling, fire: fireOn(tile) } }];
  });
  return groupBy(fired, ({ alike }) => keyOf(alike)).map((group) => ({
    ...group[0].alike,
    tiles: group.map(({ tile }) => tile),
  }));
}

/** A glaze that melts, is mixed of known materials, and of whose tiles somebody told a surface. */
function placeGlaze(
  { id, name, url, kind, chemistry, shownAs }: CatalogueGlaze,
  tiles: readonly CatalogueTile[],
): PlacedGlaze | undefined {
  const seen = seeOutcomes(tiles);
  if (kind !== "glaze" || !chemistry || seen.length === 0) return undefined;
  return {
    glaze: { id, name, url },
    colour: shownAs?.colour.hex ?? null,
    figures: mixFiguresOf(chemistry),
    seen,
  };
}

/** What tiles came out as; crazing counts whenever it was seen. */
function seeOutcomes(tiles: readonly CatalogueTile[]): readonly SeenOutcome[] {
  const found: readonly SeenOutcome[] = [
    ...surfaces.map((surface) => see(surface, tiles, (tile) => tile.surface.includes(surface))),
    see("crazed", tiles, hasCrazed),
  ];
  return found.filter((outcome) => outcome.tiles.length > 0);
}

function see(
  outcome: Outcome,
  tiles: readonly CatalogueTile[],
  holds: (tile: CatalogueTile) => boolean,
): SeenOutcome {
  return { outcome, tiles: tiles.filter(holds).map(({ id }) => id) };
}

function hasCrazed({ faults, later }: CatalogueTile): boolean {
  return faults.includes("crazing") || later.some((look) => look.faults?.includes("crazing"));
}

/**
 * The companies that a glaze may be looked for in: those that its own tiles are in, the largest
 * first, or else those of the cones that its record gives.
 */
export function companiesOf(
  { id, cones }: Pick<CatalogueGlaze, "cones" | "id">,
  companies: readonly Company[],
): readonly Company[] {
  const own = companies.filter(({ glazes }) => glazes.some(({ glaze }) => glaze.id === id));
  const suited = companies.filter(
    ({ cone }) => cones && compareCones(cones.from, cone) <= 0 && compareCones(cone, cones.to) <= 0,
  );
  return [...(own.length > 0 ? own : suited)].sort((a, b) => b.glazes.length - a.glazes.length);
}
