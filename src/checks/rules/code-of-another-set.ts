import { firstToReserve } from "../../records/reserved-codes.ts";
import { idKey } from "../../terms/ids.ts";
import type { ArchiveRule } from "../check.ts";

export const codeOfAnotherSet: ArchiveRule = {
  of: "archive",
  name: "code-of-another-set",
  severity: "warning",
  explains: "A code that a set has reserved is on a tile of that set.",
  find: (archive) => {
    const owners = firstToReserve(archive);
    return [...archive.tiles.values()].flatMap((tile) => {
      const owner = owners.get(idKey(tile.id));
      if (!owner || (tile.set !== null && idKey(tile.set) === idKey(owner.id))) return [];
      return {
        file: tile.file,
        path: [],
        message: `The code ${tile.id} is reserved for the set ${owner.id}, and this tile is not in it`,
        hint: "Move the tile into that set's folder, or make the set's “codes” end before it.",
      };
    });
  },
};
