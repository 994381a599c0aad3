/** Makes the catalogue of an archive: linked, in its orders, and frozen. */

import { groupAlike } from "../likeness/alike.ts";
import type { Archive } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { tileUrl } from "./addresses.ts";
import { listClays } from "./clays.ts";
import { layPlate } from "./colours/colour-plate.ts";
import { measureTrust } from "./colours/trust.ts";
import { type Common, findCommon, viewsOf } from "./common.ts";
import { type CatalogueCone, listCones } from "./cones.ts";
import type { Findings } from "./findings.ts";
import { freezeAll } from "./freeze.ts";
import { listGlazes } from "./glazes.ts";
import { listControls } from "./kilns/control.ts";
import { listFirings } from "./kilns/firings.ts";
import { listKilns, nameKilns } from "./kilns/kilns.ts";
import { tileFirings } from "./kilns/tile-firings.ts";
import { listMakers, namesThatMayBeShown } from "./makers.ts";
import { listBlends } from "./mixing/blends.ts";
import { listCompanies } from "./mixing/companies.ts";
import { listMaps } from "./mixing/maps.ts";
import { materialLinkFinder } from "./mixing/material-links.ts";
import { describeMaterials } from "./mixing/materials.ts";
import { mixingFinder } from "./mixing/mixing.ts";
import { describeOwn } from "./own.ts";
import { listPairs } from "./pairs.ts";
import { toldByGit } from "./record-facts.ts";
import { listSets } from "./sets.ts";
import { type Alone, describeStudio } from "./studio.ts";
import { type CatalogueTile, catalogueTile } from "./tiles.ts";
import type { Catalogue } from "./types.ts";

/** Makes the catalogue of a site; with `alone` for that of one set. */
export type MakeCatalogue = (shown: Archive, alone?: Alone) => Catalogue;

/**
 * Makes the catalogues of an archive, which share what is the same in all of them.
 *
 * @param archive the whole archive; what of it may be shown on a site is handed in: see `select.ts`
 */
export function catalogueMaker(archive: Archive, findings: Findings): MakeCatalogue {
  const common = findCommon(archive, findings);
  return (shown, alone) => makeFrom(shown, findings, common, alone ?? null);
}

/** The catalogue of an archive that is shown as a whole. */
export function makeCatalogue(archive: Archive, findings: Findings, alone?: Alone): Catalogue {
  return catalogueMaker(archive, findings)(archive, alone);
}

function makeFrom(
  archive: Archive,
  findings: Findings,
  common: Common,
  alone: Alone | null,
): Catalogue {
  const { hazards, factsOf, findBatch } = common;
  const names = namesThatMayBeShown(archive.studio);
  const inOrder = [...archive.tiles.values()].sort((a, b) => compareIds(a.id, b.id));
  const views = viewsOf(archive, common);
  const kilns = nameKilns(views.values());
  const firingOf = tileFirings(archive, views);
  const surroundings = { archive, findings, names, firingOf, factsOf, hazards };
  const tiles = inOrder.map((tile) => catalogueTile(tile, surroundings));
  const sets = listSets(archive, tiles, names);
  const tileById = new Map(tiles.map((tile) => [idKey(tile.id), tile]));
  const pairs = listPairs(archive, findings.chemistry, tiles);
  const clays = listClays(archive, tiles);
  const blends = listBlends(archive, tiles);
  const findLink = materialLinkFinder(archive, findings.builtInMaterials);
  const findMixing = mixingFinder(archive, findings, { hazards, findBatch, clays, blends });
  const trust = measureTrust(tiles);
  const glazes = listGlazes({ archive, findings, tiles, pairs, trust, findLink, findMixing });
  const cones = listCones(tiles);
  return freezeAll({
    studio: describeStudio(archive, alone),
    own: describeOwn(archive, findings.mark, alone?.unlisted ?? false),
    tiles,
    glazes,
    pairs,
    clays,
    firings: listFirings(views, inOrder, kilns),
    kilns: listKilns(views.values(), kilns),
    controls: listControls(sets, tiles, kilns),
    sets,
    makers: listMakers(names, inOrder),
    ...describeMaterials(archive, findings.builtInMaterials, glazes, common.describeMaterial),
    cones,
    plate: layPlate(tiles),
    replicates: listReplicates(tiles),
    ...{ trust, blends },
    ...compareGlazes(cones, glazes, tileById),
    tileById,
    glazeById: new Map(glazes.map((glaze) => [idKey(glaze.id), glaze])),
    ...toldByGit({ archive, findings, common, tiles, findLink }, alone),
    moved: listMoved(tiles),
  });
}

function compareGlazes(
  cones: readonly CatalogueCone[],
  glazes: Catalogue["glazes"],
  tileById: Catalogue["tileById"],
): Pick<Catalogue, "companies" | "maps"> {
  return {
    maps: listMaps(cones, glazes, tileById),
    companies: listCompanies(glazes, tileById),
  };
}

function listMoved(tiles: readonly CatalogueTile[]): Catalogue["moved"] {
  return tiles.flatMap(({ id, url, formerly }) =>
    formerly.map((from) => ({ from, url: tileUrl(from), to: { id, name: id, url } })),
  );
}

/** Tiles with a result, made and fired alike as far as anybody wrote it down. */
function listReplicates(tiles: readonly CatalogueTile[]): Catalogue["replicates"] {
  const recorded = tiles.filter(({ results }) => results.length > 0);
  return groupAlike(recorded, ({ makeUp }) => makeUp, { unwritten: "together" })
    .filter((group) => group.length > 1)
    .map((group) => group.map(({ id }) => id));
}
