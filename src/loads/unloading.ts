/** A load as it is taken out of the kiln: which code comes next, and what is still missing of it. */
import { isFiring } from "../checks/steps.ts";
import { type Archive, type Firing, findById, type Tile } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { placeOfResult } from "./result-place.ts";
import { shelvesOf } from "./shelves.ts";

export interface TileOut {
  readonly code: string;
  /** Where it stood; null where nobody wrote it down. */
  readonly shelf: string | null;
  /** Undefined where it has no record that can be read. */
  readonly tile: Tile | undefined;
}

/** Every tile of a load: shelf by shelf as its list says, then those that name the firing themselves. */
export function tilesOut(archive: Archive, firing: Firing): readonly TileOut[] {
  const listed = shelvesOf(firing).flatMap(({ name, codes }) =>
    codes.map((code) => {
      const tile = findById(archive.tiles, code);
      return { code: tile?.id ?? code, shelf: name, tile };
    }),
  );
  const known = new Set(listed.map(({ code }) => idKey(code)));
  const naming = [...archive.tiles.values()]
    .filter((tile) => !known.has(idKey(tile.id)))
    .flatMap((tile) => {
      const step = tile.steps.find((each) => isFiring(each, firing.id));
      return step?.step === "fired" ? [{ code: tile.id, shelf: step.shelf, tile }] : [];
    })
    .sort((a, b) => compareIds(a.code, b.code));
  return [...listed, ...naming];
}

/** What is still missing of a tile after a firing. */
export interface Missing {
  /** A bisque has no result. */
  readonly result: boolean;
  readonly photograph: boolean;
}

/** One that is lost, and one after a bisque, lacks nothing; nor does one without a record, which nobody can write into. */
export function missingOf(tile: Tile | undefined, firing: Firing): Missing {
  const isAsked =
    tile !== undefined && tile.record.fate === undefined && firing.record.kind !== "bisque";
  if (!isAsked) return { result: false, photograph: false };
  const place = placeOfResult(tile, firing.id);
  return {
    result: place.known === undefined,
    photograph: !tile.pictures.some(({ role }) => role === "result"),
  };
}
