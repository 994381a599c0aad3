import { findById } from "../../records/archive.ts";
import { firstToReserve } from "../../records/reserved-codes.ts";
import { idKey } from "../../terms/ids.ts";
import type { SetRule } from "../check.ts";

/** A code that no set reserves either is unknown, which is an error and told as such. */
export const controlMissing: SetRule = {
  of: "set",
  name: "control-missing",
  severity: "warning",
  explains: "The control tile of a set, whose twin goes into every load, is in the archive.",
  find: (archive, { record: { control } }) => {
    if (control === undefined || findById(archive.tiles, control)) return [];
    if (!firstToReserve(archive).has(idKey(control))) return [];
    return [
      {
        path: ["control"],
        message: `The control tile ${control} is not in the archive`,
        hint: "Write a record for it, or name the tile whose twin goes into every load.",
      },
    ];
  },
};
