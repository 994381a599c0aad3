import { idKey } from "../../terms/ids.ts";
import type { TileRule } from "../check.ts";

export const resultOfWhichFiring: TileRule = {
  of: "tile",
  name: "result-of-which-firing",
  severity: "error",
  explains: "Where a tile has several results, each says which firing it came after.",
  find: (_, { id, record: { result: results = [] } }) =>
    results.flatMap(({ after }, i) => {
      const same = (other: { after?: string | undefined }) =>
        other.after !== undefined && idKey(other.after) === idKey(after ?? "");
      if (results.length < 2 || (after !== undefined && results.findIndex(same) === i)) return [];
      return {
        path: after === undefined ? ["result", i] : ["result", i, "after"],
        message:
          after === undefined
            ? `${id} has ${results.length} results, and this one does not say which firing it came after`
            : `${id} has more than one result after ${after}`,
        hint:
          after === undefined
            ? "Add “after:” with the id of the glaze firing that it describes."
            : "Keep one result for each glaze firing; what was seen on another day goes into “later”.",
      };
    }),
};
