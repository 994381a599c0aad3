import { coatsThatCount } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import type { Finding, TileRule } from "../check.ts";
import { stepPath } from "../places.ts";

export const overNotBeneath: TileRule = {
  of: "tile",
  name: "over-not-beneath",
  severity: "error",
  explains: "What a layer is said to be over was put on before it and is still there.",
  find: (_, { steps }) =>
    steps.flatMap((step, index): Finding[] => {
      if (step.step !== "coat") return [];
      const beneath = coatsThatCount(steps.slice(0, index)).flatMap((coat) => coat.glazes);
      const keys = beneath.map(idKey);
      return step.over.flatMap((id, i) =>
        keys.includes(idKey(id))
          ? []
          : {
              path: stepPath(step, "over", i),
              message: `This layer is said to be over “${id}”, which is not among the layers beneath it`,
              hint:
                beneath.length > 0
                  ? `Beneath it are: ${[...new Set(beneath)].join(", ")}. Name one of these, or put the layers into the order in which they went on.`
                  : "There is nothing beneath it yet: take “over” out, or put the layers into the order in which they went on.",
            },
      );
    }),
};
