/** Glazes, the pairs they make, and the materials they are made of. */
import { tellReasons } from "../chemistry/reasons.ts";
import type { Archive, Filed } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { glazeUrl, materialUrl, pairUrl } from "./addresses.ts";
import type { BuiltInMaterial, Findings } from "./findings.ts";
import { linkTo } from "./tiles.ts";
import type {
  CatalogueGlaze,
  CatalogueMaterial,
  CataloguePair,
  CatalogueTile,
  GlazePair,
  Link,
} from "./types.ts";

/** Every pair of glazes that some tile has, in the order of their names. */
export function listPairs(tiles: readonly CatalogueTile[]): readonly CataloguePair[] {
  const pairs = new Map<string, CataloguePair & { tiles: string[] }>();
  for (const tile of tiles) {
    for (const { over, under, pair } of tile.pairs) {
      const known = pairs.get(pair);
      if (known) known.tiles.push(tile.id);
      else pairs.set(pair, { url: pair, over, under, tiles: [tile.id], reverse: null });
    }
  }
  return [...pairs.values()]
    .map((pair) => {
      const reverse = pairUrl(pair.under.id, pair.over.id);
      return { ...pair, reverse: pairs.has(reverse) ? reverse : null };
    })
    .sort((a, b) => compareIds(a.over.name, b.over.name) || compareIds(a.under.name, b.under.name));
}

/** Every glaze, in the order of their names. */
export function listGlazes(
  archive: Archive,
  findings: Findings,
  tiles: readonly CatalogueTile[],
  pairs: readonly CataloguePair[],
): readonly CatalogueGlaze[] {
  return [...archive.glazes.values()]
    .map((glaze) => catalogueGlaze(glaze, archive, findings, tiles, pairs))
    .sort((a, b) => compareIds(a.name, b.name));
}

function catalogueGlaze(
  glaze: Filed<GlazeRecord>,
  archive: Archive,
  findings: Findings,
  tiles: readonly CatalogueTile[],
  pairs: readonly CataloguePair[],
): CatalogueGlaze {
  const { record } = glaze;
  const on = tiles.filter((tile) => glaze.id in tile.glazes);
  const found = findings.chemistry.get(idKey(glaze.id));
  return {
    id: glaze.id,
    name: record.name,
    url: glazeUrl(glaze.id),
    kind: record.kind,
    record,
    cones: record.cones ?? null,
    notes: glaze.notes,
    tiles: on.map((tile) => tile.id),
    alone: on.filter((tile) => Object.keys(tile.glazes).length === 1).map((tile) => tile.id),
    over: pairs
      .filter((pair) => pair.over.id === glaze.id)
      .map((pair) => toGlazePair(pair.under, pair)),
    under: pairs
      .filter((pair) => pair.under.id === glaze.id)
      .map((pair) => toGlazePair(pair.over, pair)),
    chemistry: found?.ok ? found.chemistry : null,
    whyNoChemistry: found && !found.ok && !record.bought ? tellReasons(found.reasons) : null,
    made: madeOf(record, archive, findings.builtInMaterials),
    cautions: findings.notes.get(glaze.file) ?? [],
  };
}

function toGlazePair(glaze: Link, pair: CataloguePair): GlazePair {
  return { glaze, pair: pair.url, tiles: pair.tiles.length };
}

function madeOf(
  record: GlazeRecord,
  archive: Archive,
  builtIn: readonly BuiltInMaterial[],
): Readonly<Record<string, Link>> {
  const links: Record<string, Link> = {};
  for (const { material } of [...(record.ingredients ?? []), ...(record.additions ?? [])]) {
    const link = materialLink(material, archive, builtIn);
    if (link) links[material] = link;
  }
  for (const { glaze } of record.blend ?? []) {
    const link = linkTo(findById(archive.glazes, glaze), glazeUrl);
    if (link) links[glaze] = link;
  }
  return links;
}

function materialLink(
  id: string,
  archive: Archive,
  builtIn: readonly BuiltInMaterial[],
): Link | undefined {
  const own = linkTo(findById(archive.materials, id), materialUrl);
  if (own) return own;
  const carried = builtIn.find((material) => idKey(material.id) === idKey(id));
  return carried && { id: carried.id, name: carried.name, url: materialUrl(carried.id) };
}

/** The archive's own materials and the built-in ones that some glaze holds, by name. */
export function listMaterials(
  archive: Archive,
  builtIn: readonly BuiltInMaterial[],
  glazes: readonly CatalogueGlaze[],
): readonly CatalogueMaterial[] {
  const holding = glazesByMaterial(glazes);
  const own = [...archive.materials.values()].map((material) => ({
    id: material.id,
    name: material.record.name,
    url: materialUrl(material.id),
    record: material.record,
    builtIn: false,
    notes: material.notes,
    glazes: holding.get(idKey(material.id)) ?? [],
  }));
  const carried = builtIn
    .filter(({ id }) => holding.has(idKey(id)) && !archive.materials.has(idKey(id)))
    .map(({ id, name, formula }) => ({
      id,
      name,
      url: materialUrl(id),
      record: { name, formula },
      builtIn: true,
      notes: "",
      glazes: holding.get(idKey(id)) ?? [],
    }));
  return [...own, ...carried].sort((a, b) => compareIds(a.name, b.name));
}

function glazesByMaterial(glazes: readonly CatalogueGlaze[]): ReadonlyMap<string, Link[]> {
  const holding = new Map<string, Link[]>();
  for (const { id, name, url, record } of glazes) {
    const portions = [...(record.ingredients ?? []), ...(record.additions ?? [])];
    for (const key of new Set(portions.map(({ material }) => idKey(material)))) {
      holding.set(key, [...(holding.get(key) ?? []), { id, name, url }]);
    }
  }
  return holding;
}
