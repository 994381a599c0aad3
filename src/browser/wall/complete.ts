/**
 * Completes the cards of tiles that the page did not come with: a card's drawing and its outcome
 * stand on the page of the wall that has the tile, which is loaded when the card comes into sight.
 * Opened from a folder nothing can be loaded, and the card stays as it is.
 */

/** How far below the window a card is when what it lacks is asked for. */
const margin = "400px";

/** Marks a card as one to be completed, and gives it back. */
export type Complete = (item: HTMLElement, tile: number, code: string) => HTMLElement;

/**
 * @param root the way from this page to the root of the site
 */
export function makeCompleter(root: string): Complete {
  const waiting = new Map<Element, { readonly tile: number; readonly code: string }>();
  const pages = new Map<string, Promise<ReadonlyMap<string, Element>>>();
  const cardsOf = (url: string) => {
    const cards = pages.get(url) ?? loadCards(root + url);
    pages.set(url, cards);
    return cards;
  };
  const complete = async (item: Element) => {
    const wanted = waiting.get(item);
    waiting.delete(item);
    if (!wanted) return;
    const card = (await cardsOf(pageOf(wanted.tile))).get(wanted.code);
    if (card) takeOver(item, card);
  };
  const sight = new IntersectionObserver(
    (entries) => {
      for (const { isIntersecting, target } of entries) {
        if (!isIntersecting) continue;
        sight.unobserve(target);
        void complete(target);
      }
    },
    { rootMargin: margin },
  );
  return (item, tile, code) => {
    if (location.protocol === "file:") return item;
    waiting.set(item, { tile, code });
    sight.observe(item);
    return item;
  };
}

/** The page of the wall that a tile is on, as the first of them says how it is cut. */
function pageOf(tile: number): string {
  const { first = "0", later = "1" } = document.getElementById("wall")?.dataset ?? {};
  if (tile < Number(first)) return "index.html";
  return `wall-${Math.floor((tile - Number(first)) / Number(later)) + 2}.html`;
}

/** The cards of a page by their codes; none where it cannot be loaded. */
async function loadCards(address: string): Promise<ReadonlyMap<string, Element>> {
  try {
    const response = await fetch(address);
    const page = new DOMParser().parseFromString(await response.text(), "text/html");
    const cards = [...page.querySelectorAll("#wall > li")];
    return new Map(cards.map((card) => [card.querySelector(".code")?.textContent ?? "", card]));
  } catch {
    return new Map();
  }
}

/** Takes over what a card has and the other lacks, in its place. */
function takeOver(item: Element, card: Element): void {
  const link = item.querySelector("a");
  const layers = card.querySelector(".layers");
  if (layers) item.querySelector(".code")?.after(layers);
  const names = card.querySelector(".names");
  item.querySelector(".came")?.remove();
  let next = names?.nextElementSibling;
  while (link && next) {
    const part = next;
    next = part.nextElementSibling;
    link.append(part);
  }
}
