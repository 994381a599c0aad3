import type { FiredStep } from "../../records/archive.ts";
import type { TileRule } from "../check.ts";
import { isFiring, isGlazeFiring } from "../steps.ts";

export const resultAfterNothing: TileRule = {
  of: "tile",
  name: "result-after-nothing",
  severity: "error",
  explains: "A result's “after” names one of the tile's own firings that is no bisque.",
  find: (_, { id, record, steps, firingsUnknown }) => {
    if (firingsUnknown) return [];
    const firings = steps.filter(isGlazeFiring);
    return (record.result ?? []).flatMap(({ after }, i) =>
      after === undefined || firings.some((step) => isFiring(step, after))
        ? []
        : {
            path: ["result", i, "after"],
            message: `“${after}” is not a glaze firing of ${id}`,
            hint: hintFor(firings),
          },
    );
  },
};

function hintFor(firings: readonly FiredStep[]): string {
  const ids = firings.flatMap(({ firing }) => firing ?? []);
  return ids.length > 0
    ? `Choose from its firings: ${ids.join(", ")}.`
    : "Name the firing in its layers first, as “- fired: ” and the firing's id, or put the tile into the firing's load list.";
}
