/** What a request changes, as another program reads it. */
import type { Changes, GlazeChange, GlazeSide, TileChange } from "../changes/types.ts";
import { writeJson } from "./render-json.ts";

/**
 * Renders the facts of a request: nothing but JSON. Makers are not in it, neither by name nor by code.
 * Files are relative to the archive, those of `outside` to the repository.
 */
export function renderChangesJson(changes: Changes): string {
  const { tiles, glazes, ...rest } = changes;
  return writeJson({
    ...rest,
    tiles: tiles.map(tileFacts),
    glazes: glazes.map(glazeFacts),
  });
}

function tileFacts({ what, tile, source, was, keepsCode, pictures, fields, apart }: TileChange) {
  return {
    ...{ what, id: tile.id, was: was?.source.id ?? null, keepsCode, file: source.file },
    ...{ set: tile.set?.id ?? null, stage: tile.stage, pictures, fields },
    cautions: tile.cautions,
    oneChange: apart.map(({ tile: { id }, difference, uncontrolled, unknown }) => ({
      ...{ tile: id, difference, uncontrolled, unknown },
    })),
  };
}

function glazeFacts({ was, now, ...facts }: GlazeChange) {
  return { ...facts, name: now.record.name, before: was && sideFacts(was), now: sideFacts(now) };
}

function sideFacts({ chemistry, whyNot }: GlazeSide) {
  if (chemistry === null) return { chemistry: null, whyNot };
  const { unity, silicaToAlumina, alkaliShare, expansion } = chemistry;
  return { chemistry: { unity, silicaToAlumina, alkaliShare, expansion }, whyNot };
}
