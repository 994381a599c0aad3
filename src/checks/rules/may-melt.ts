import type { Finding, TileRule } from "../check.ts";
import { findDangersToCome } from "../danger.ts";
import type { Heat } from "../heat.ts";
import { outsideInWords } from "../heat-words.ts";
import { firedPlace } from "../places.ts";

export const mayMelt: TileRule = {
  of: "tile",
  name: "may-melt",
  severity: "error",
  explains:
    "A tile without result or fate whose clay or glaze would be fired 60 °C or more over its range may melt onto the shelf.",
  find: (archive, tile) =>
    findDangersToCome(archive, tile).map(
      (heat): Finding => ({
        ...firedPlace(tile, heat.step, heat.firing),
        message: `${tile.id} may melt onto the shelf: its ${outsideInWords(heat)}`,
        hint: hintFor(heat),
      }),
    ),
};

function hintFor({ firing, subject }: Heat): string {
  const reclaimed =
    subject.countsAs === null
      ? ""
      : " If nothing low-firing can be in the clay, take “reclaim” out of its record and write its cones.";
  return `Keep it out of firing ${firing.id}; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend ${subject.file} or ${firing.file}.${reclaimed}`;
}
