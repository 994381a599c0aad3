/** Glazes, and the pairs they make. */
import { tellReasons } from "../chemistry/why-no-chemistry.ts";
import type { Archive, Filed } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { byWord } from "../terms/by-word.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { glazeUrl, pairUrl } from "./addresses.ts";
import { glazeColours } from "./colours/glaze-colours.ts";
import type { Findings } from "./findings.ts";
import type { FindMaterialLink } from "./mixing/materials.ts";
import type { FindMixing } from "./mixing/mixing.ts";
import { findOverlap, type LappingGlaze } from "./mixing/overlaps.ts";
import { linkTo } from "./tiles.ts";
import type {
  CatalogueGlaze,
  CataloguePair,
  CatalogueTile,
  ColourTrust,
  GlazeFacts,
  GlazePair,
  Link,
} from "./types.ts";

interface FoundPair extends Omit<CataloguePair, "overlap" | "tiles"> {
  readonly tiles: CatalogueTile[];
}

/** Every pair of glazes that some tile has, in the order of their names. */
export function listPairs(
  archive: Archive,
  chemistry: Findings["chemistry"],
  tiles: readonly CatalogueTile[],
): readonly CataloguePair[] {
  const pairs = new Map<string, FoundPair>();
  for (const tile of tiles) {
    for (const { over, under, pair } of tile.pairs) {
      const known = pairs.get(pair);
      if (known) known.tiles.push(tile);
      else pairs.set(pair, { url: pair, over, under, tiles: [tile], reverse: null });
    }
  }
  return [...pairs.values()]
    .map((pair) => {
      const reverse = pairUrl(pair.under.id, pair.over.id);
      const over = findLapping(archive, chemistry, pair.over.id);
      const under = findLapping(archive, chemistry, pair.under.id);
      return {
        ...pair,
        tiles: pair.tiles.map((tile) => tile.id),
        reverse: pairs.has(reverse) ? reverse : null,
        overlap: over && under ? findOverlap(over, under, pair.tiles) : null,
      };
    })
    .sort((a, b) => compareIds(a.over.name, b.over.name) || compareIds(a.under.name, b.under.name));
}

/** A glaze that melts and whose materials are known; slips and washes make no melt with it. */
function findLapping(
  archive: Archive,
  chemistry: Findings["chemistry"],
  id: string,
): LappingGlaze | undefined {
  const record = findById(archive.glazes, id)?.record;
  const found = chemistry.get(idKey(id));
  if (record?.kind !== "glaze" || !found?.ok) return undefined;
  return { id, chemistry: found.chemistry, weightPerCoat: record.weightPerCoat };
}

/** What glazes are linked with. */
export interface GlazeSurroundings {
  readonly archive: Archive;
  readonly findings: Findings;
  readonly tiles: readonly CatalogueTile[];
  readonly pairs: readonly CataloguePair[];
  readonly trust: ColourTrust | null;
  readonly findLink: FindMaterialLink;
  readonly findMixing: FindMixing;
}

/** Every glaze, in the order of their names. */
export function listGlazes(surroundings: GlazeSurroundings): readonly CatalogueGlaze[] {
  const found = {
    on: indexBy(surroundings.tiles, ({ glazes }) => Object.keys(glazes)),
    over: indexBy(surroundings.pairs, ({ over }) => [over.id]),
    under: indexBy(surroundings.pairs, ({ under }) => [under.id]),
  };
  return [...surroundings.archive.glazes.values()]
    .map((glaze) => catalogueGlaze(glaze, surroundings, found))
    .sort((a, b) => compareIds(a.name, b.name));
}

/** Tiles and pairs by the ids of the glazes that they have. */
interface ByGlaze {
  readonly on: ReadonlyMap<string, readonly CatalogueTile[]>;
  readonly over: ReadonlyMap<string, readonly CataloguePair[]>;
  readonly under: ReadonlyMap<string, readonly CataloguePair[]>;
}

function catalogueGlaze(
  glaze: Filed<GlazeRecord>,
  { archive, findings, trust, findLink, findMixing }: GlazeSurroundings,
  by: ByGlaze,
): CatalogueGlaze {
  const { record } = glaze;
  const on = by.on.get(glaze.id) ?? [];
  const alone = on.filter((tile) => Object.keys(tile.glazes).length === 1);
  const found = findings.chemistry.get(idKey(glaze.id));
  return {
    id: glaze.id,
    name: record.name,
    url: glazeUrl(glaze.id),
    ...factsOf(record),
    notes: glaze.notes,
    tiles: on.map((tile) => tile.id),
    alone: alone.map((tile) => tile.id),
    over: (by.over.get(glaze.id) ?? []).map((pair) => toGlazePair(pair.under, pair)),
    under: (by.under.get(glaze.id) ?? []).map((pair) => toGlazePair(pair.over, pair)),
    chemistry: found?.ok ? found.chemistry : null,
    whyNoChemistry: found && !found.ok && !record.bought ? tellReasons(found.reasons) : null,
    made: madeOf(record, archive, findLink),
    cautions: findings.notes.get(glaze.file) ?? [],
    ...findMixing(glaze.id, alone),
    ...glazeColours(alone, trust),
  };
}

function factsOf(record: GlazeRecord): GlazeFacts {
  return {
    kind: record.kind,
    cones: record.cones ?? null,
    surface: record.surface ?? null,
    cover: record.cover ?? null,
    moves: record.moves ?? null,
    tone: record.tone ?? null,
    label: record.label ?? [],
    stocked: record.stocked ?? true,
    bought: record.bought ?? null,
    ingredients: record.ingredients ?? null,
    additions: record.additions ?? [],
    blend: record.blend ?? null,
    by: record.by ?? "weight",
    leachTests: record.leachTests ?? [],
  };
}

function toGlazePair(glaze: Link, pair: CataloguePair): GlazePair {
  return { glaze, pair: pair.url, tiles: pair.tiles.length };
}

function madeOf(
  record: GlazeRecord,
  archive: Archive,
  findMaterialLink: FindMaterialLink,
): Readonly<Record<string, Link>> {
  const materials = [...(record.ingredients ?? []), ...(record.additions ?? [])].map(
    ({ material }) => [material, findMaterialLink(material)] as const,
  );
  const glazes = (record.blend ?? []).map(
    ({ glaze }) => [glaze, linkTo(findById(archive.glazes, glaze), glazeUrl)] as const,
  );
  return byWord([...materials, ...glazes].flatMap(([id, link]) => (link ? [[id, link]] : [])));
}
