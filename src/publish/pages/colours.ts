/** The plate of colours. */
import { ColoursPage, type PlateMark } from "../../../templates/pages/colours-page.tsx";
import { plateSentence } from "../../../templates/words/colour/plate.ts";
import type { ColourPlate, PlateTile } from "../../catalogue/colours/colour-plate.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";

export function colourPages(site: Site): readonly Page[] {
  const path = "colours.html";
  const { plate, trust } = site.catalogue;
  const rows = plate.rows.map(({ names, cells }) => ({
    names,
    cells: cells.map(({ tiles, shown, centre }) => ({
      tiles,
      centre,
      marks: shown.flatMap((colour) => markOf(site, colour)),
    })),
  }));
  return [
    definePage({
      path,
      component: ColoursPage,
      props: () => ({ frame: site.frame(path), plate, rows, trust }),
      search: (props) => ({
        title: "Colours",
        kind: "Page",
        words: `${plateSentence} ${namesOn(props.plate).join(", ")}`,
        picture: null,
      }),
    }),
  ];
}

function namesOn({ rows }: ColourPlate): readonly string[] {
  return rows.flatMap((row) => row.names.map(({ name }) => name));
}

function markOf(site: Site, { id: code, name, hex }: PlateTile): readonly PlateMark[] {
  const tile = site.catalogue.tileById.get(idKey(code));
  if (!tile) return [];
  return [{ id: tile.id, url: tile.url, names: site.names(tile), name, hex }];
}
