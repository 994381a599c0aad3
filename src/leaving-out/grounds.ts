/** What a sound record rests on: where one of these is left out, it would say something untrue. */
import { findCarriedMaterial } from "../chemistry/minerals/minerals.ts";
import type { Archive, Filed, Tile, TileStep } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { idSlug } from "../terms/ids.ts";
import type { Ground } from "./left-out.ts";

/**
 * A tile rests on its set, whose defaults it has; on its clay, on every glaze that its layers name,
 * and on its firings, those of the load lists too. An old code of its own must be no other tile's,
 * or a label in somebody's hand would lead astray.
 */
export function groundsOfTile(tile: Tile, tileOfSlug: ReadonlyMap<string, string>): Ground[] {
  const formerly = (tile.record.formerly ?? []).flatMap((code, i): Ground[] => {
    const id = tileOfSlug.get(idSlug(code));
    return id === undefined || id === tile.id ? [] : [{ kind: "tile", id, path: ["formerly", i] }];
  });
  return [
    ...(tile.set === null ? [] : [{ kind: "set", id: tile.set, path: [] } as const]),
    ...(tile.clay === null ? [] : [{ kind: "clay", id: tile.clay, path: ["clay"] } as const]),
    ...tile.steps.flatMap(groundsOfStep),
    ...formerly,
  ];
}

function groundsOfStep(step: TileStep): Ground[] {
  const path = ["layers", ...(step.at === null ? [] : [step.at])];
  if (step.step === "coat")
    return [...step.glazes, ...step.over].map((id) => ({ kind: "glaze", id, path }));
  if (step.step !== "fired" || step.firing === null) return [];
  return [{ kind: "firing", id: step.firing, path }];
}

/** A glaze rests on what is in it: a material of the same name that the engine carries is another. */
export function groundsOfGlaze({ record }: Filed<GlazeRecord>): Ground[] {
  const weighed = (["ingredients", "additions"] as const).flatMap((field) =>
    (record[field] ?? []).flatMap(({ material }, i) =>
      // A trade name may lead to a record under another id.
      [material, findCarriedMaterial(material)?.id ?? material].map(
        (id): Ground => ({ kind: "material", id, path: [field, i] }),
      ),
    ),
  );
  const blended = (record.blend ?? []).map(
    ({ glaze }, i): Ground => ({ kind: "glaze", id: glaze, path: ["blend", i] }),
  );
  return [...weighed, ...blended];
}

/** Reclaimed clay counts as the lowest-firing clay of the studio, so it rests on every other. */
export function groundsOfReclaim(clayIds: readonly string[]): Ground[] {
  return clayIds.map((id) => ({ kind: "clay", id, path: ["reclaim"] }));
}

/** The archive without some records, whose tiles are taken off the load lists. */
export function withoutRecords(archive: Archive, isOut: (kindAndKey: string) => boolean): Archive {
  const keep = <T>(kind: string, records: ReadonlyMap<string, T>) =>
    new Map([...records].filter(([key]) => !isOut(`${kind} ${key}`)));
  const tiles = keep("tile", archive.tiles);
  const kept = new Set([...tiles.values()].map(({ id }) => id));
  const firings = [...keep("firing", archive.firings)].map(([key, firing]) => {
    return [key, { ...firing, load: firing.load.filter(({ tile }) => kept.has(tile)) }] as const;
  });
  return {
    studio: archive.studio,
    sets: keep("set", archive.sets),
    tiles,
    firings: new Map(firings),
    glazes: keep("glaze", archive.glazes),
    clays: keep("clay", archive.clays),
    materials: keep("material", archive.materials),
    pages: keep("page", archive.pages),
    pageKeys: archive.pageKeys,
  };
}
