/**
 * The tiles that were last seen on the wall, in their order, so that a reader who opened one can
 * go on to its neighbours among those that were found. Kept for as long as the browser's tab.
 */
const key = "tilebook-walk";

/** How many tiles on either side are remembered. */
const reach = 200;

/** Remembers the tiles around the one that is opened: their addresses relative to the root. */
export function rememberWalk(urls: readonly string[], opened: string): void {
  const place = urls.indexOf(opened);
  const near = urls.slice(Math.max(0, place - reach), place + reach + 1);
  try {
    sessionStorage.setItem(key, JSON.stringify(near));
  } catch {
    // A browser that keeps nothing leaves the neighbours that the page was made with.
  }
}

/** The neighbours of a tile among those last seen; undefined where it was not among them. */
export function findNeighbours(
  url: string,
): { readonly before: string | undefined; readonly after: string | undefined } | undefined {
  const urls = recallWalk();
  const place = urls.indexOf(url);
  return place < 0 ? undefined : { before: urls[place - 1], after: urls[place + 1] };
}

function recallWalk(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? "[]");
    return Array.isArray(kept) ? kept.filter((url) => typeof url === "string") : [];
  } catch {
    return [];
  }
}
