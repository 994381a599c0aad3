/**
 * What a site may show: chosen before the catalogue is made, so that nothing later has to think
 * of it. An unlisted set is absent from everyone else's evidence and has a site of its own; what it
 * alone uses goes with it.
 */
import { findMaterialIdOf } from "../chemistry/from-records.ts";
import { type Archive, type Filed, findById, type Tile } from "../records/archive.ts";
import type { SetRecord } from "../records/set.ts";
import { materialsIn, type Uses, usesOf, withBlended } from "../records/uses.ts";
import { byWord } from "../terms/by-word.ts";
import { idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";

/** Some of the sets of an archive, and their tiles. */
interface Part {
  readonly tiles: readonly Tile[];
  readonly sets: readonly Filed<SetRecord>[];
}

/**
 * The archive without the sets that are reached only by their link, and without the glazes, clays,
 * materials, firings and makers that nothing but such sets uses. What nobody uses at all stays.
 */
export function withoutUnlistedSets(archive: Archive): Archive {
  const listed = partOf(archive, (set) => set?.record.listed !== false);
  const hidden = partOf(archive, (set) => set?.record.listed === false);
  const shown = usesOf(listed, archive);
  const unseen = usesOf(hidden, archive);
  const isShown = (kind: "clays" | "firings") => (key: string) =>
    shown[kind].has(key) || !unseen[kind].has(key);
  const glazes = glazesShown(archive, shown.glazes, unseen.glazes);
  const idOf = materialIdsOf(archive.materials);
  const materials = materialsIn(glazes, archive, idOf);
  const others = materialsIn(
    [...archive.glazes.keys()].filter((key) => !glazes.has(key)),
    archive,
    idOf,
  );
  return narrow(archive, listed, {
    glazes: pick(archive.glazes, glazes),
    clays: only(archive.clays, isShown("clays")),
    firings: only(archive.firings, isShown("firings")),
    materials: only(archive.materials, (key) => materials.has(key) || !others.has(key)),
    makers: shown.makers,
  });
}

/**
 * The archive with one set alone: its tiles, what they are made of and were fired in, and what it has ready
 * for tiles to come: the glazes in its jars, its clay.
 */
export function onlySet(archive: Archive, id: string): Archive {
  const set = findById(archive.sets, id);
  const part = {
    tiles: tilesOfSets(archive).get(idKey(id)) ?? [],
    sets: set ? [set] : [],
  };
  const { glazes, clays, makers } = usesOf(part, archive);
  const { firings } = usesOf({ tiles: part.tiles, sets: [] }, archive);
  const idOf = materialIdsOf(archive.materials);
  const materials = materialsIn(glazes, archive, idOf);
  return narrow(archive, part, {
    glazes: pick(archive.glazes, glazes),
    clays: pick(archive.clays, clays),
    firings: pick(archive.firings, firings),
    materials: pick(archive.materials, materials),
    makers,
  });
}

/** A recipe may call a material by its trade name, and a record of its id stands for it all the same. */
const materialIdsOf = rememberFor((materials: Archive["materials"]) => {
  const findId = findMaterialIdOf({ materials });
  return (word: string) => findId(word) ?? word;
});

/** The tiles of every set there is, by the set's key: each unlisted set asks. */
const tilesOfSets = rememberFor(({ sets, tiles }: Archive) =>
  indexBy(tiles.values(), ({ set }) => (set !== null && findById(sets, set) ? [idKey(set)] : [])),
);

/** The sets with `listed: no`, in the order of the archive. */
export function unlistedSets(archive: Archive): readonly Filed<SetRecord>[] {
  return [...archive.sets.values()].filter((set) => set.record.listed === false);
}

/** @param keep told the set of each tile; undefined for tiles that are in none */
function partOf(archive: Archive, keep: (set: Filed<SetRecord> | undefined) => boolean): Part {
  return {
    tiles: [...archive.tiles.values()].filter(({ set }) => keep(findById(archive.sets, set))),
    sets: [...archive.sets.values()].filter(keep),
  };
}

/**
 * The glazes that listed tiles and sets use or whose records say `listed: yes`, with all that is
 * blended into them; and those that nobody uses, unless they hold one that is hidden.
 */
function glazesShown(
  archive: Archive,
  shown: Uses["glazes"],
  unseen: Uses["glazes"],
): ReadonlySet<string> {
  const openly = [...archive.glazes].filter(([, { record }]) => record.listed === true);
  const used = withBlended([...shown, ...openly.map(([key]) => key)], archive);
  const isHeldBack = (key: string) =>
    unseen.has(key) || archive.glazes.get(key)?.record.listed === false;
  const unused = [...archive.glazes].filter(([key, { record }]) => {
    const parts = [...withBlended([key], archive)];
    return record.listed !== false && parts.every((part) => used.has(part) || !isHeldBack(part));
  });
  return new Set([...used, ...unused.map(([key]) => key)]);
}

/** What goes with a part; makers by their keys. */
interface Choice extends Pick<Archive, "clays" | "firings" | "glazes" | "materials"> {
  readonly makers: Uses["makers"];
}

function narrow(archive: Archive, part: Part, choice: Choice): Archive {
  const tiles = new Map(part.tiles.map((tile) => [idKey(tile.id), tile]));
  const makers = makersByKey(archive.studio);
  const { glazes, clays, materials } = choice;
  return {
    studio: { ...archive.studio, makers: byWord([...pick(makers, choice.makers)]) },
    tiles,
    sets: new Map(part.sets.map((set) => [idKey(set.id), set])),
    glazes,
    clays,
    materials,
    pages: archive.pages,
    pageKeys: archive.pageKeys,
    firings: new Map(
      [...choice.firings].map(([key, firing]) => [
        key,
        { ...firing, load: firing.load.filter(({ tile }) => findById(tiles, tile)) },
      ]),
    ),
  };
}

const makersByKey = rememberFor(
  ({ makers = {} }: Archive["studio"]) => new Map(Object.entries(makers)),
);

/** Those with some of the keys, in the order of the records, of which the others are not looked at. */
function pick<T>(
  records: ReadonlyMap<string, T>,
  keys: ReadonlySet<string>,
): ReadonlyMap<string, T> {
  const places = placesIn(records);
  const placeOf = (key: string) => places.get(key) ?? 0;
  const found = [...keys].filter((key) => records.has(key));
  found.sort((a, b) => placeOf(a) - placeOf(b));
  return new Map(found.map((key) => [key, records.get(key) as T]));
}

const placesIn = rememberFor(
  (records: ReadonlyMap<string, unknown>) => new Map([...records.keys()].map((key, i) => [key, i])),
);

function only<T>(
  records: ReadonlyMap<string, T>,
  keep: (key: string) => boolean,
): ReadonlyMap<string, T> {
  return new Map([...records].filter(([key]) => keep(key)));
}
