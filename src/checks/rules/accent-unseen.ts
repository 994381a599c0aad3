import {
  contrastOfMarks,
  contrastOnPapers,
  isSeenOnBoth,
  nearestSeen,
} from "../../colour/contrast.ts";
import type { ArchiveRule } from "../check.ts";

export const accentUnseen: ArchiveRule = {
  of: "archive",
  name: "accent-unseen",
  severity: "error",
  explains: "The studio's accent is seen on the light pages and on the dark ones.",
  find: ({ studio: { accent } }) => {
    if (accent === undefined || isSeenOnBoth(accent)) return [];
    const { light, dark } = contrastOnPapers(accent);
    const [paper, ratio] = light < dark ? ["light", light] : ["dark", dark];
    return [
      {
        file: "studio.yaml",
        path: ["accent"],
        message: `The accent ${accent} is hard to see on the ${paper} pages: its contrast there is ${toTenths(ratio)} to 1, and lines need ${contrastOfMarks} to 1`,
        hint: `Take one nearer the middle between light and dark: “accent: "${nearestSeen(accent)}"” is the nearest shade that is seen on both.`,
      },
    ];
  },
};

/** Cut and not rounded: 2.96 is not yet 3. */
function toTenths(ratio: number): string {
  return (Math.floor(ratio * 10) / 10).toFixed(1);
}
