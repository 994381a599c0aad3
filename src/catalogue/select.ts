/**
 * What a site may show: chosen before the catalogue is made, so that nothing later has to think
 * of it. An unlisted set is absent from everyone else's evidence and has a site of its own.
 */
import { type Archive, type Firing, findById, type Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";

/** The archive without the sets that are reached only by their link. */
export function withoutUnlistedSets(archive: Archive): Archive {
  const sets = new Map([...archive.sets].filter(([, set]) => set.record.listed !== false));
  return withTiles({ ...archive, sets }, (tile) => tile.set === null || sets.has(idKey(tile.set)));
}

/** The archive with one set alone: its tiles, and what they are made of and were fired in. */
export function onlySet(archive: Archive, id: string): Archive {
  const sets = new Map([...archive.sets].filter(([key]) => key === idKey(id)));
  const part = withTiles(
    { ...archive, sets },
    (tile) => tile.set !== null && sets.has(idKey(tile.set)),
  );
  const tiles = [...part.tiles.values()];
  const used = glazesUsed(tiles, archive);
  return {
    ...part,
    glazes: new Map([...part.glazes].filter(([key]) => used.has(key))),
    clays: new Map(
      [...part.clays].filter(([key]) => tiles.some(({ clay }) => clay && idKey(clay) === key)),
    ),
    firings: new Map(
      [...part.firings].filter(([, firing]) => tiles.some((tile) => isIn(tile, firing))),
    ),
  };
}

/** Ids of the sets with `listed: no`, in the order of the archive. */
export function unlistedSets(archive: Archive): readonly string[] {
  return [...archive.sets.values()]
    .filter((set) => set.record.listed === false)
    .map((set) => set.id);
}

function withTiles(archive: Archive, keep: (tile: Tile) => boolean): Archive {
  const tiles = new Map([...archive.tiles].filter(([, tile]) => keep(tile)));
  const firings = new Map(
    [...archive.firings].map(([key, firing]) => [
      key,
      { ...firing, load: firing.load.filter(({ tile }) => findById(tiles, tile)) },
    ]),
  );
  return { ...archive, tiles, firings };
}

/** The keys of the glazes on some tiles, and of those that are blended into them. */
function glazesUsed(tiles: readonly Tile[], archive: Archive): ReadonlySet<string> {
  const used = new Set<string>();
  const add = (id: string) => {
    const key = idKey(id);
    if (used.has(key)) return;
    used.add(key);
    for (const { glaze } of archive.glazes.get(key)?.record.blend ?? []) add(glaze);
  };
  for (const { steps } of tiles) {
    for (const step of steps) if (step.step === "coat") step.glazes.forEach(add);
  }
  return used;
}

function isIn(tile: Tile, firing: Firing): boolean {
  return tile.steps.some(
    (step) =>
      step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(firing.id),
  );
}
