import { findById } from "../../records/archive.ts";
import { commonPractice, type TileRule } from "../check.ts";
import { glazePath } from "../places.ts";
import { coatsOn, isGlazeFiring } from "../steps.ts";

export const onglazeTooEarly: TileRule = {
  of: "tile",
  name: "onglaze-too-early",
  severity: "warning",
  source: commonPractice,
  explains: "An onglaze goes on after the glaze firing, over glaze that has melted.",
  find: (archive, tile) => {
    const glazed = tile.steps.findIndex((step) => isGlazeFiring(step) && step.kind !== "onglaze");
    const before = glazed < 0 ? tile.steps : tile.steps.slice(0, glazed);
    return coatsOn(before).flatMap((coat) =>
      coat.glazes.flatMap((id) => {
        const glaze = findById(archive.glazes, id)?.record;
        if (glaze?.kind !== "onglaze") return [];
        return {
          path: glazePath(coat, id),
          message: `${glaze.name} is an onglaze, and it went on before any glaze firing`,
          hint: "Put an onglaze over glaze that has been fired, and fire it again to the onglaze's own cone. If the glaze firing is only missing here, write it as a step above.",
        };
      }),
    );
  },
};
