/** The wall's script: without it every tile is there all the same. */
import type { Facets } from "../publish/facets-file.ts";
import { Finder } from "./wall/finder.ts";

const { tilebookFacets } = globalThis as { readonly tilebookFacets?: Facets };
const finder = document.getElementById("finder");
const found = document.getElementById("found");
const wall = document.getElementById("wall");
const waysIn = document.getElementById("ways-in");
const pages = document.querySelector<HTMLElement>("nav.pages");

if (tilebookFacets && finder && found && wall) {
  new Finder(tilebookFacets, { finder, found, wall, waysIn, pages }).start();
}
