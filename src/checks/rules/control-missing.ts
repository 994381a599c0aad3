import { findById } from "../../records/archive.ts";
import type { SetRule } from "../check.ts";

export const controlMissing: SetRule = {
  of: "set",
  name: "control-missing",
  severity: "warning",
  explains: "The control tile of a set, whose twin goes into every load, is in the archive.",
  find: (archive, { record: { control } }) =>
    control === undefined || findById(archive.tiles, control)
      ? []
      : [
          {
            path: ["control"],
            message: `The control tile ${control} is not in the archive`,
            hint: "Write a record for it, or name the tile whose twin goes into every load.",
          },
        ],
};
