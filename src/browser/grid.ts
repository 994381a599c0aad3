/** The grid's script: without it the pairs are there as a list. */
import type { GridIndex } from "../publish/grid-file.ts";
import { GridPage } from "./grid/page.ts";

const { tilebookGrid } = globalThis as { readonly tilebookGrid?: GridIndex };
const place = document.getElementById("grid");

if (tilebookGrid && place) {
  // A browser whose styles cannot ask whether scripts run shows the grid from here on.
  place.classList.add("drawn");
  new GridPage(place, tilebookGrid).start();
}
