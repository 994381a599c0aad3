/** What the page of unloading shows of a load. */
import { outcomeOf } from "../../loads/outcome.ts";
import { placeOfResult } from "../../loads/result-place.ts";
import { missingOf, type TileOut, tilesOut } from "../../loads/unloading.ts";
import type { Firing } from "../../records/archive.ts";
import { tileWords } from "../load/view.ts";
import type { DeskArchive } from "../types.ts";
import { sumOf } from "../work.ts";
import type { TileOutView, UnloadView } from "./types.ts";

export function viewUnload(desk: DeskArchive, firing: Firing): UnloadView {
  return {
    firing: firing.id,
    file: firing.file,
    seen: sumOf(desk.texts.get(firing.file) ?? ""),
    on: firing.record.on ?? null,
    isBisque: firing.record.kind === "bisque",
    tiles: tilesOut(desk.archive, firing).map((out) => viewTile(desk, firing, out)),
  };
}

export function viewTile(
  { archive, texts }: DeskArchive,
  firing: Firing,
  { code, shelf, tile }: TileOut,
): TileOutView {
  const missing = missingOf(tile, firing);
  if (!tile)
    return {
      ...{ code, shelf, missing, words: "It has no record that can be read.", file: "", seen: "" },
      ...{ outcome: outcomeOf(undefined, undefined), unclear: [] },
    };
  const { known, unclear } = placeOfResult(tile, firing.id);
  const isOther = unclear.length > 0;
  return {
    ...{ code, shelf, missing, words: tileWords(archive, tile), file: tile.file },
    seen: sumOf(texts.get(tile.file) ?? ""),
    outcome: outcomeOf(isOther ? undefined : known, tile.record.fate),
    unclear,
  };
}
