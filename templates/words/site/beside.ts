/** What the page of what is set side by side says before anything is. */

/** How many files hold what is compared, and how far like tiles differ. */
export interface BesideScale {
  readonly scatter: number | null;
  readonly tiles: number;
  readonly glazes: number;
}

export const besideLede =
  "Up to four tiles, or four glazes: what was done to each, step by step, and what came of it. What differs is marked.";

export const besideWithoutScripts =
  "This page needs scripts, and they are switched off. Open two tiles in two windows instead: each tile's page has what was done to it, and shows the tiles that are one change apart from it.";
