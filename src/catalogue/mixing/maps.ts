/** The maps: mixed glazes by silica to alumina and by their glass, one map for each cone they were fired to. */

import type { Note } from "../../chemistry/notes.ts";
import { type RatioRegion, ratioRegion } from "../../chemistry/stull.ts";
import { type Surface, surfaces } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import { mapUrl } from "../addresses.ts";
import type { CatalogueCone } from "../cones.ts";
import type { CatalogueGlaze } from "../glazes.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";
import { tilesByCode } from "../tiles-by-code.ts";

/** Mixed glazes fired alone to one cone, by the figures of their unity formulas. */
export interface CatalogueMap {
  readonly cone: Cone;
  readonly url: string;
  /** In the order of their names. */
  readonly marks: readonly MapMark[];
}

export interface MapMark {
  readonly glaze: Link;
  /** Moles to one of flux. */
  readonly silica: number;
  readonly alumina: number;
  /** What makes the glass, in moles to one of flux: silica, boric oxide and phosphorus pentoxide. */
  readonly glass: number;
  /** Moles of silica for one of alumina; null without alumina. */
  readonly ratio: number | null;
  /** Whether an analysis that it rests on does not add up, or leaves something out. */
  readonly isIncomplete: boolean;
  /** Its tiles alone at this cone. */
  readonly tiles: readonly string[];
  /** The one whose photograph stands on the map. */
  readonly shown: string | null;
  /** The colour that the one shown measured, as `#rrggbb`; null where it is not known. */
  readonly colour: string | null;
  /** The surfaces that came out. */
  readonly surface: readonly Surface[];
  /** What the old ratio lines would have of it; null without alumina. */
  readonly region: RatioRegion | null;
  /** Whether a surface that came out is another than the lines would have. */
  readonly disagrees: boolean;
}

/** From cool to hot; a cone without a mixed glaze that some tile has alone has no map. */
export function listMaps(
  cones: readonly CatalogueCone[],
  glazes: readonly CatalogueGlaze[],
  tileById: ReadonlyMap<string, CatalogueTile>,
): readonly CatalogueMap[] {
  const marksAt = new Map<Cone, MapMark[]>(cones.map(({ cone }) => [cone, []]));
  for (const glaze of glazes) {
    if (!glaze.chemistry?.unity) continue;
    const alone = tilesByCode({ tileById }, glaze.alone);
    for (const cone of new Set(alone.flatMap((tile) => tile.cone ?? []))) {
      const mark = findMark(
        glaze,
        alone.filter((tile) => tile.cone === cone),
      );
      if (mark) marksAt.get(cone)?.push(mark);
    }
  }
  return [...marksAt]
    .filter(([, marks]) => marks.length > 0)
    .map(([cone, marks]) => ({ cone, url: mapUrl(cone), marks }));
}

function findMark(
  { id, name, url, kind, chemistry }: CatalogueGlaze,
  tiles: readonly CatalogueTile[],
): MapMark | undefined {
  const unity = chemistry?.unity;
  if (!unity || kind !== "glaze" || tiles.length === 0) return undefined;
  const surface = surfaces.filter((word) => tiles.some((tile) => tile.surface.includes(word)));
  const { silicaToAlumina } = chemistry;
  const shown = chooseShown(tiles);
  const region = silicaToAlumina === null ? null : ratioRegion(silicaToAlumina);
  return {
    glaze: { id, name, url },
    silica: unity.SiO2 ?? 0,
    alumina: unity.Al2O3 ?? 0,
    glass: (unity.SiO2 ?? 0) + (unity.B2O3 ?? 0) + (unity.P2O5 ?? 0),
    ratio: silicaToAlumina,
    isIncomplete: chemistry.notes.some(({ code }) => leavesOut.has(code)),
    tiles: tiles.map((tile) => tile.id),
    shown: shown?.id ?? null,
    colour: shown?.colour?.hex ?? null,
    surface,
    region,
    disagrees: region !== null && surface.some((word) => !surfacesOf[region].includes(word)),
  };
}

/** Notes on an analysis that is not the whole of a material. */
const leavesOut: ReadonlySet<Note["code"]> = new Set([
  "analysis-sum",
  "charges-do-not-balance",
  "loss-taken-as-rest",
  "oxide-not-counted",
]);

/** The surfaces that a region of the old lines stands for. */
export const surfacesOf: Readonly<Record<RatioRegion, readonly Surface[]>> = {
  bright: ["gloss"],
  matte: ["dry", "matte"],
  "semi-matte": ["satin"],
};

/** A tile without fault speaks for its glaze before others; one without photograph for none. */
function chooseShown(tiles: readonly CatalogueTile[]): CatalogueTile | undefined {
  const pictured = tiles.filter(({ pictures }) => pictures.some(({ role }) => role === "result"));
  const sound = pictured.find(({ faults }) => faults.length === 0);
  return sound ?? pictured[0];
}
