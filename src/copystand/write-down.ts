/** Writes frames down where they shall hold, and tells what was written. */
import { type FieldToWrite, type RecordToWrite, writeFields } from "../archive/write-fields.ts";
import { findById, type Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { framesOf, listPhotographed, type Opened, whoSays } from "./stand.ts";
import type { Edges, Frames, Scope, WriteRequest, WrittenWords } from "./types.ts";
import { tellKeepers, tellRefusal, tellWritten } from "./words.ts";

export type WrittenDown = Omit<WrittenWords, "view">;

/**
 * Writes what differs from what holds there already, into one record of the archive.
 *
 * @param dir the archive's folder
 * @param tile the tile whose photograph is shown; it tells which set is meant
 * @throws MachineError where the disk or a permission fails
 */
export function writeDown(
  dir: string,
  opened: Opened,
  tile: Tile,
  { scope, frames }: Pick<WriteRequest, "scope" | "frames">,
): WrittenDown {
  const home = findHome(opened, tile, scope);
  if (!home) return nothing("", "This tile lies in no set.");
  const changes = listChanges(home.before, frames);
  const { file } = home.record;
  if (changes.length === 0) return nothing(file, `${file} says so already: nothing was written.`);
  const fields = changes.map(({ part, value }): FieldToWrite => {
    return { path: [...home.under, "photo", part], value };
  });
  const result = writeFields(dir, home.record, fields);
  if (!result.ok) return nothing(file, tellRefusal(result.because, file, fields));
  const parts = changes.map(({ part }) => part);
  const keepers = findKeepers(opened, tile, scope, parts);
  const words = [tellWritten(file, parts), ...tellKeepers(keepers)].join(" ");
  return { written: true, words, file, lines: result.lines };
}

function nothing(file: string, words: string): WrittenDown {
  return { written: false, words, file, lines: [] };
}

/** The record that frames are written into, and those that hold there before. */
interface Home {
  readonly record: RecordToWrite;
  readonly under: readonly string[];
  readonly before: Frames;
}

function findHome({ archive, texts, studioFile }: Opened, tile: Tile, scope: Scope) {
  const set = findById(archive.sets, tile.set);
  const studio = archive.studio.photo;
  const home = (kind: Scope, file: string | undefined, under: string[], before: Frames): Home => ({
    record: { file: file ?? "", kind, asRead: texts.get(file ?? "") ?? "" },
    under,
    before,
  });
  if (scope === "studio") return home("studio", studioFile, [], framesOf(studio));
  if (scope === "tile") return home("tile", tile.file, [], framesOf(tile.record.photo));
  const shared = framesOf({ ...studio, ...set?.record.defaults?.photo });
  return set ? home("set", set.file, ["defaults"], shared) : undefined;
}

interface Change {
  readonly part: "crop" | "grey";
  readonly value: readonly string[] | "no";
}

function listChanges(before: Frames, { crop, grey }: Frames): readonly Change[] {
  const changes: Change[] = [];
  if (!isSame(before.crop, crop)) changes.push({ part: "crop", value: crop.map(String) });
  if (!isSame(before.grey, grey)) changes.push({ part: "grey", value: grey?.map(String) ?? "no" });
  return changes;
}

function isSame(one: Edges | null, other: Edges | null): boolean {
  if (one === null || other === null) return one === other;
  return one.every((edge, at) => edge === other[at]);
}

const nearest: readonly Scope[] = ["studio", "set", "tile"];

/** Photographs that the new frames do not reach, since somebody nearer says otherwise. */
function findKeepers(
  opened: Opened,
  { set }: Tile,
  scope: Scope,
  parts: readonly ("crop" | "grey")[],
): readonly string[] {
  if (scope === "tile") return [];
  const isMeant = (tile: Tile) =>
    scope === "studio" || (tile.set !== null && set !== null && idKey(tile.set) === idKey(set));
  return listPhotographed(opened.archive)
    .filter(isMeant)
    .filter((tile) =>
      parts.some((part) => {
        const says = whoSays(opened, tile, part);
        return says !== null && nearest.indexOf(says) > nearest.indexOf(scope);
      }),
    )
    .map(({ id }) => id);
}
