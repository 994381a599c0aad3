/** An archive before or after a request, and the catalogue that each of its tiles is shown in. */
import type { Findings } from "../catalogue/findings.ts";
import { catalogueMaker } from "../catalogue/make.ts";
import { onlySet, withoutUnlistedSets } from "../catalogue/select.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Catalogue } from "../catalogue/types.ts";
import type { Caution } from "../chemistry/cautions/cautions.ts";
import { cautionsOfGlazes } from "../chemistry/cautions/cautions-of-glazes.ts";
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";

export interface Version {
  /** Without what is faulty. */
  readonly archive: Archive;
  readonly findings: Findings;
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
  /** The catalogue that shows a tile: an unlisted set has one of its own, and is in no other. */
  readonly catalogueOf: (tile: Tile) => Catalogue;
  readonly inCatalogue: (tile: Tile) => CatalogueTile;
}

export function makeVersion(archive: Archive, findings: Findings): Version {
  const make = catalogueMaker(archive, findings);
  const made = new Map<string, Catalogue>();
  const catalogueOf = (tile: Tile) => {
    const set = findById(archive.sets, tile.set);
    const hidden = set?.record.listed === false ? set.id : "";
    const part = () => (hidden === "" ? withoutUnlistedSets(archive) : onlySet(archive, hidden));
    const catalogue = made.get(hidden) ?? make(part());
    made.set(hidden, catalogue);
    return catalogue;
  };
  const inCatalogue = (tile: Tile) => {
    const found = catalogueOf(tile).tileById.get(idKey(tile.id));
    if (!found) throw new Error(`No catalogue has the tile ${tile.id}`);
    return found;
  };
  return { archive, findings, hazards: cautionsOfGlazes(archive), catalogueOf, inCatalogue };
}
