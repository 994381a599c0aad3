/**
 * What a site may show: chosen before the catalogue is made, so that nothing later has to think
 * of it. An unlisted set is absent from everyone else's evidence and has a site of its own; what it
 * alone uses goes with it.
 */
import { type Archive, type Filed, findById, type Tile } from "../records/archive.ts";
import type { SetRecord } from "../records/set.ts";
import { materialsIn, type Uses, usesOf, withBlended } from "../records/uses.ts";
import { byWord } from "../terms/by-word.ts";
import { idKey } from "../terms/ids.ts";

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
  const materials = materialsIn(glazes, archive);
  const others = materialsIn(
    [...archive.glazes.keys()].filter((key) => !glazes.has(key)),
    archive,
  );
  return narrow(archive, listed, {
    glazes: (key) => glazes.has(key),
    clays: isShown("clays"),
    firings: isShown("firings"),
    materials: (key) => materials.has(key) || !others.has(key),
    makers: shown.makers,
  });
}

/** The archive with one set alone: its tiles, and what they are made of and were fired in. */
export function onlySet(archive: Archive, id: string): Archive {
  const part = partOf(archive, (set) => set !== undefined && idKey(set.id) === idKey(id));
  const { glazes, clays, firings } = usesOf({ tiles: part.tiles, sets: [] }, archive);
  const { makers } = usesOf(part, archive);
  const materials = materialsIn(glazes, archive);
  return narrow(archive, part, {
    glazes: (key) => glazes.has(key),
    clays: (key) => clays.has(key),
    firings: (key) => firings.has(key),
    materials: (key) => materials.has(key),
    makers,
  });
}

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

interface Choice {
  readonly glazes: (key: string) => boolean;
  readonly clays: (key: string) => boolean;
  readonly firings: (key: string) => boolean;
  readonly materials: (key: string) => boolean;
  readonly makers: Uses["makers"];
}

function narrow(archive: Archive, part: Part, choice: Choice): Archive {
  const tiles = new Map(part.tiles.map((tile) => [idKey(tile.id), tile]));
  const makers = Object.entries(archive.studio.makers ?? {}).filter(([key]) =>
    choice.makers.has(key),
  );
  return {
    studio: { ...archive.studio, makers: byWord(makers) },
    tiles,
    sets: new Map(part.sets.map((set) => [idKey(set.id), set])),
    glazes: only(archive.glazes, choice.glazes),
    clays: only(archive.clays, choice.clays),
    materials: only(archive.materials, choice.materials),
    firings: new Map(
      [...only(archive.firings, choice.firings)].map(([key, firing]) => [
        key,
        { ...firing, load: firing.load.filter(({ tile }) => findById(tiles, tile)) },
      ]),
    ),
  };
}

function only<T>(
  records: ReadonlyMap<string, T>,
  keep: (key: string) => boolean,
): ReadonlyMap<string, T> {
  return new Map([...records].filter(([key]) => keep(key)));
}
