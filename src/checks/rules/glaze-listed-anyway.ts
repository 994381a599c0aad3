import type { Archive } from "../../records/archive.ts";
import { usesOf } from "../../records/uses.ts";
import { idKey } from "../../terms/ids.ts";
import type { ArchiveRule } from "../check.ts";

export const glazeListedAnyway: ArchiveRule = {
  of: "archive",
  name: "glaze-listed-anyway",
  severity: "error",
  explains: "A glaze that is held back is on no tile, and in no jar, that everyone sees.",
  find: (archive) => {
    const heldBack = [...archive.glazes].filter(([, { record }]) => record.listed === false);
    if (heldBack.length === 0) return [];
    const { glazes } = usesOf(listedPart(archive), archive);
    return heldBack
      .filter(([key]) => glazes.has(key))
      .map(([, { file, record }]) => ({
        file,
        path: ["listed"],
        message: `${record.name} is not to be listed, and yet a tile or a jar of a listed set holds it, by itself or in a blend`,
        hint: "Take “listed: no” out, or use the glaze in unlisted sets alone.",
      }));
  },
};

function listedPart({ tiles, sets }: Archive) {
  const listed = [...sets.values()].filter(({ record }) => record.listed !== false);
  const keys = new Set(listed.map(({ id }) => idKey(id)));
  const seen = [...tiles.values()].filter(({ set }) => set === null || keys.has(idKey(set)));
  return { tiles: seen, sets: listed };
}
