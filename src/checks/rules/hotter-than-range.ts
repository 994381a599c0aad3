import type { Archive, Tile } from "../../records/archive.ts";
import { commonPractice, type TileRule } from "../check.ts";
import { isDangerous } from "../danger.ts";
import { findTooHot, type Heat, type Subject } from "../heat.ts";
import { type HeatWarning, noteHeats } from "../range-notes.ts";

/** What too much heat does to a glaze and to a clay. */
const warnings = {
  glaze: {
    faults: ["blistering", "colour-lost", "overfired", "pinholing", "running"],
    hint: "Watch for running, and for colours and textures that fire out; stand it on something that catches drips.",
  },
  clay: {
    faults: ["bloating", "dunting", "overfired", "warping"],
    hint: "Watch for slumping, bloating and sticking; stand it on something that may be lost.",
  },
} as const satisfies Record<Subject["kind"], HeatWarning>;

export const hotterThanRange: TileRule = {
  of: "tile",
  name: "hotter-than-range",
  severity: "warning",
  source: commonPractice,
  explains:
    "A firing after a layer went on, bisque or other, was hotter than the range of that glaze or of the clay.",
  find: (archive, tile) => noteHeats(archive, tile, findNoted(archive, tile), warnings),
};

/** What may melt, and a reclaimed clay, are told by checks of their own. */
function findNoted(archive: Archive, tile: Tile): readonly Heat[] {
  return findTooHot(archive, tile).filter(
    (heat) => !isDangerous(heat) && heat.subject.countsAs === null,
  );
}
