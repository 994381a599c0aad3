/** The words under which a page is found. */
import { spoken } from "../../../templates/words/english/numbers.ts";
import { stepWords } from "../../../templates/words/tile/steps.ts";
import type { GlazeTold } from "../../catalogue/glazes.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { metalsIn } from "../../terms/metals.ts";
import { presentOxides, toUnicodeSubscripts } from "../../terms/oxides.ts";

/** @param names its glazes, top coat first */
export function wordsOfTile(tile: CatalogueTile, names: string): string {
  const nameOf = (id: string) => tile.glazes[id]?.name ?? id;
  const words = [
    tile.id,
    ...tile.formerly,
    names,
    tile.clay?.name,
    tile.set?.name,
    tile.maker?.name,
    tile.texture,
    tile.shape,
    tile.cone && `cone ${tile.cone}`,
    tile.atmosphere,
    ...tile.surface,
    ...[...tile.effects, ...tile.faults].map(spoken),
    ...tile.steps.map((step) => stepWords(step, nameOf)),
    ...tile.largeColours.flatMap(({ families, words: narrower }) => [...families, ...narrower]),
    ...tile.metals,
    tile.notes,
  ];
  return words.filter(Boolean).join(". ");
}

/** Oxides stand both ways, as they are typed and as they are set: K2O and K₂O. */
export function wordsOfGlaze(glaze: GlazeTold): string {
  const oxides = glaze.chemistry ? presentOxides(glaze.chemistry.weightPercent) : [];
  const { bought } = glaze;
  const words = [
    glaze.id,
    glaze.kind,
    glaze.surface,
    bought?.maker,
    bought?.range,
    bought?.colour,
    ...Object.values(glaze.made).map(({ name }) => name),
    ...(glaze.chemistry ? metalsIn(glaze.chemistry.weightPercent) : []),
    ...oxides.flatMap(([oxide]) => [oxide, toUnicodeSubscripts(oxide)]),
    glaze.notes,
  ];
  return words.filter(Boolean).join(". ");
}
