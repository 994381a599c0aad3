/** Every page of the desk, in the order of its head. */
import { loadPage } from "./load/load-page.tsx";
import type { DeskPage } from "./page.ts";
import { paperPage } from "./paper/paper-page.tsx";
import { photographsPage } from "./photographs/photographs-page.tsx";
import { unloadPage } from "./unload/unload-page.tsx";
import { whoWaitsPage } from "./who-waits/who-waits-page.tsx";

export const deskPages: readonly DeskPage[] = [
  paperPage,
  loadPage,
  unloadPage,
  photographsPage,
  whoWaitsPage,
];
