/** The tiles that a request adds or changes. */
import { apartFinder, besideEachOther } from "../catalogue/apart.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import { findById, type Tile } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { fieldChanges, isSame } from "./fields.ts";
import type { Side } from "./side.ts";
import type { FileChange, PictureChange, TileApart, TileChange } from "./types.ts";
import type { Version } from "./version.ts";

export interface TilesOfRequest {
  readonly tiles: readonly TileChange[];
  /** Codes of tiles that are otherwise although nothing of their own was changed. */
  readonly besides: readonly string[];
  /** Old codes that lead on to new ones: these tiles are not gone. */
  readonly movedOn: ReadonlySet<string>;
}

/**
 * @param side the archive before
 * @param files those of the archive, relative to it
 */
export function tilesOfRequest(
  side: Side,
  after: Version,
  files: readonly FileChange[],
): TilesOfRequest {
  const { version: before } = side;
  const known = new Set(side.files.map(({ file }) => file));
  const byFile = new Map(files.map((change) => [change.file, change]));
  const tiles: TileChange[] = [];
  const besides: string[] = [];
  for (const source of [...after.archive.tiles.values()].sort((a, b) => compareIds(a.id, b.id))) {
    const earlier = findEarlier(source, before, after, byFile);
    const isTouched = [source.file, ...source.pictures.map(({ file }) => file)].some((file) =>
      byFile.has(file),
    );
    const lostPicture = earlier?.source.pictures.some(({ file }) => byFile.has(file)) ?? false;
    if (!earlier || isTouched || lostPicture)
      tiles.push(tileChange(source, earlier, { before, after, byFile, known }));
    else if (!isSame(earlier.source, source)) besides.push(source.id);
  }
  return { tiles, besides, movedOn: new Set(tiles.flatMap(oldCode)) };
}

function oldCode({ was, source }: TileChange): readonly string[] {
  return was && idKey(was.source.id) !== idKey(source.id) ? [idKey(was.source.id)] : [];
}

interface Earlier {
  readonly source: Tile;
  readonly keepsCode: boolean;
}

/** The same code before; or the code that it says it had, or whose file became its own, where that is no tile's now. */
function findEarlier(
  tile: Tile,
  before: Version | null,
  after: Version,
  byFile: ReadonlyMap<string, FileChange>,
): Earlier | undefined {
  if (!before) return undefined;
  const { tiles } = before.archive;
  const same = findById(tiles, tile.id);
  if (same) return { source: same, keepsCode: true };
  const gone = (code: string) => !findById(after.archive.tiles, code) && findById(tiles, code);
  for (const code of tile.record.formerly ?? []) {
    const source = gone(code);
    if (source) return { source, keepsCode: true };
  }
  const from = byFile.get(tile.file)?.from ?? null;
  const moved = from === null ? undefined : [...tiles.values()].find(({ file }) => file === from);
  return moved && gone(moved.id) ? { source: moved, keepsCode: false } : undefined;
}

interface Request {
  readonly before: Version | null;
  readonly after: Version;
  readonly byFile: ReadonlyMap<string, FileChange>;
  /** Every record's file before. */
  readonly known: ReadonlySet<string>;
}

function tileChange(source: Tile, earlier: Earlier | undefined, request: Request): TileChange {
  const { before, after, byFile, known } = request;
  const tile = after.inCatalogue(source);
  const was = before && earlier ? { ...earlier, tile: before.inCatalogue(earlier.source) } : null;
  return {
    what: was || known.has(source.file) ? "changed" : "added",
    tile,
    source,
    was,
    keepsCode: earlier?.keepsCode ?? true,
    pictures: picturesOf(source, byFile),
    fields: fieldChanges("tile", was?.source, source),
    apart: apartOf(tile, after, source),
  };
}

/** HEIC and TIFF are shown by few browsers. */
const shown = /\.(?:jpe?g|png|webp|avif)$/iu;

/** The picture of the result first, if there is one. */
function picturesOf(
  { pictures }: Tile,
  byFile: ReadonlyMap<string, FileChange>,
): readonly PictureChange[] {
  const results = pictures.filter(({ role }) => role === "result");
  const others = pictures.filter(({ role }) => role !== "result");
  return [...results, ...others].map(({ file, role }) => ({
    ...{ file, role, isShown: shown.test(file) },
    what: byFile.get(file)?.what ?? null,
  }));
}

function apartOf(tile: CatalogueTile, after: Version, source: Tile): readonly TileApart[] {
  return apartFinder(after.catalogueOf(source))(tile).map((apart) => {
    const { uncontrolled, unknown } = besideEachOther(tile, apart.tile);
    return { ...apart, uncontrolled, unknown };
  });
}
