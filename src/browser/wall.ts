/** The wall's script: without it every tile is there all the same. */
import type { Facets } from "../publish/facets-file.ts";
import { Finder } from "./wall/finder.ts";

const { tilebookFacets } = globalThis as { readonly tilebookFacets?: Facets };
const finder = document.getElementById("finder");
const found = document.getElementById("found");
const wall = document.getElementById("wall");
const pages = document.querySelector<HTMLElement>("nav.pages");

if (tilebookFacets && finder && found && wall) {
  // A browser whose styles cannot ask whether scripts run shows the finder from here on.
  finder.closest("main")?.classList.add("scripted");
  new Finder(tilebookFacets, { finder, found, wall, pages }).start();
}
