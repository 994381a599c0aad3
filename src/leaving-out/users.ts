/** Who names a record: of what is sound the fields count, of what is faulty all that is written. */
import type { RecordFile } from "../reader/found-files.ts";
import { findById } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { findCodesInText } from "./codes-in-text.ts";
import { groundsOfGlaze, groundsOfTile } from "./grounds.ts";
import type { WholeArchive } from "./left-out.ts";
import { keyOf } from "./owners.ts";

/** The files of tiles, glazes and sets that name a record, by that one's kind and key. */
export function usersOf(whole: WholeArchive): ReadonlyMap<string, readonly RecordFile[]> {
  const byKind = keysByKind(whole.files);
  const users = new Map<string, RecordFile[]>();
  for (const [key, user] of whole.files.flatMap((file) => usesOf(file, whole, byKind))) {
    const earlier = users.get(key);
    if (earlier) earlier.push(user);
    else users.set(key, [user]);
  }
  return users;
}

type Use = readonly [used: string, user: RecordFile];

function usesOf(file: RecordFile, whole: WholeArchive, byKind: ReadonlyMap<string, Keys>): Use[] {
  if (file.kind === "clay" || file.kind === "material") return [];
  if (file.kind !== "firing") return namedBy(file, whole, byKind).map((used): Use => [used, file]);
  const tiles = byKind.get("tile") ?? none;
  const loaded = findCodesInText(whole.texts.get(file.file) ?? "", tiles);
  return [...loaded].flatMap((code) => {
    const tile = tiles.get(code);
    return tile ? [[keyOf(file), tile] as const] : [];
  });
}

type Keys = ReadonlyMap<string, RecordFile>;
const none: Keys = new Map();

function keysByKind(files: readonly RecordFile[]): ReadonlyMap<string, Keys> {
  const byKind = new Map<string, Map<string, RecordFile>>();
  for (const file of files) {
    const keys = byKind.get(file.kind) ?? new Map<string, RecordFile>();
    byKind.set(file.kind, keys.set(idKey(file.id), file));
  }
  return byKind;
}

function namedBy(
  { kind, id, file }: RecordFile,
  { archive, texts }: WholeArchive,
  byKind: ReadonlyMap<string, Keys>,
): readonly string[] {
  const tile = kind === "tile" ? findById(archive.tiles, id) : undefined;
  if (tile?.file === file) return groundsOfTile(tile, new Map()).map(keyOf);
  const glaze = kind === "glaze" ? findById(archive.glazes, id) : undefined;
  if (glaze?.file === file) return groundsOfGlaze(glaze).map(keyOf);
  const text = texts.get(file) ?? "";
  return ["glaze", "clay", "firing", "material"].flatMap((named) =>
    [...findCodesInText(text, byKind.get(named) ?? none)].map((key) => `${named} ${key}`),
  );
}
