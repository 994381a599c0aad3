/** Opens photographs large, in place; without a script their links lead to the pictures. */
import { addPrintButtons } from "./parts/print-buttons.ts";
import { findNeighbours } from "./parts/walk.ts";
import { openMark, type Photograph, type Steps, Viewer } from "./photograph/viewer.ts";

const links = [...document.querySelectorAll<HTMLAnchorElement>("a.enlarge")];
const neighbours = document.querySelector<HTMLElement>(".neighbours");

/** The neighbours among the tiles last seen on the wall, else those that the page was made with. */
function findSteps(): Steps {
  const { root = "", url = "" } = neighbours?.dataset ?? {};
  const seen = findNeighbours(url);
  if (seen) return { before: under(root, seen.before), after: under(root, seen.after) };
  const address = (rel: string) =>
    neighbours?.querySelector(`[rel=${rel}]`)?.getAttribute("href") ?? undefined;
  return { before: address("prev"), after: address("next") };
}

function under(root: string, url: string | undefined): string | undefined {
  return url === undefined ? undefined : root + url;
}

function photographOf(link: HTMLAnchorElement): Photograph {
  const title = document.querySelector("h1")?.textContent ?? "";
  const code = document.querySelector(".plate-number")?.textContent ?? "";
  return {
    file: link.href,
    alt: link.querySelector("img")?.alt ?? "",
    caption: `${code} ${title}`.trim(),
  };
}

const [first] = links;
if (first) {
  const viewer = new Viewer(findSteps());
  for (const link of links) {
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      viewer.open(photographOf(link));
    });
  }
  if (location.hash === openMark) viewer.open(photographOf(first));
}

addPrintButtons();
