import type { Archive, Tile } from "../../records/archive.ts";
import { findIdFault, idSlug } from "../../terms/ids.ts";
import type { ArchiveRule } from "../check.ts";

/** One code that a tile was published under before, at its place in `formerly`. */
interface FormerCode {
  readonly code: string;
  readonly tile: Tile;
  readonly index: number;
}

export const formerCodeTaken: ArchiveRule = {
  of: "archive",
  name: "former-code-taken",
  severity: "error",
  explains:
    "A code that a tile was published under before leads to that tile alone: no tile has it now, and “formerly” names it once.",
  find: (archive) => {
    const tiles = new Map([...archive.tiles.values()].map((tile) => [idSlug(tile.id), tile]));
    const first = new Map<string, FormerCode>();
    return formerCodes(archive).flatMap((former) => {
      const slug = idSlug(former.code);
      const message = findFault(former, tiles.get(slug), first.get(slug));
      if (!first.has(slug)) first.set(slug, former);
      if (message === undefined) return [];
      return {
        file: former.tile.file,
        path: ["formerly", former.index],
        message,
        hint: "Take it out, or write the code that was on this tile's old label: that address leads on to one tile only.",
      };
    });
  },
};

function formerCodes(archive: Archive): readonly FormerCode[] {
  return [...archive.tiles.values()].flatMap((tile) =>
    (tile.record.formerly ?? []).map((code, index) => ({ code, tile, index })),
  );
}

function findFault(former: FormerCode, owner?: Tile, before?: FormerCode): string | undefined {
  const { code, tile } = former;
  const fault = findIdFault(code);
  if (fault !== undefined) return `“${code}” cannot have been a tile's code: ${fault}`;
  if (owner === tile) return `“${code}” is this tile's code now, and “formerly” is for older ones`;
  if (owner) return `“${code}” is the code of another tile, ${owner.file}`;
  if (before?.tile === tile) return `“${code}” is here twice`;
  return before && `“${code}” is also a former code of ${before.tile.file}`;
}
