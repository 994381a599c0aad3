import type { ResistStep, TileStep } from "../../records/archive.ts";
import { meets } from "../../records/coat-stack.ts";
import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { stepPath } from "../places.ts";

export const resistNotPeeled: TileRule = {
  of: "tile",
  name: "resist-not-peeled",
  severity: "warning",
  source: commonPractice,
  explains: "Latex, paper and tape are peeled off before the next firing; wax burns away.",
  find: (_, { steps }) =>
    steps.flatMap((step, i): Finding[] => {
      if (step.step !== "resist" || step.resist === "wax" || isPeeled(step, steps.slice(i + 1)))
        return [];
      return [
        {
          path: stepPath(step, "resist"),
          message: `Nothing says that the ${step.resist} was peeled off before the next firing`,
          hint: "Peel it before the tile goes into the kiln: in the fire it smokes and lifts the glaze over it. If it was peeled, add “- remove: peel” where that was done.",
        },
      ];
    }),
};

/** Whether it came off, there or everywhere, before the next firing. */
function isPeeled(resist: ResistStep, later: readonly TileStep[]): boolean {
  const firing = later.findIndex((step) => step.step === "fired");
  const before = firing < 0 ? later : later.slice(0, firing);
  return before.some(
    (step) =>
      step.step === "remove" &&
      (step.remove === "all" ||
        (step.remove === "peel" &&
          step.where.some((area) => resist.where.some((other) => meets(area, other))))),
  );
}
