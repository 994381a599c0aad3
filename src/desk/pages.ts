/** Every page of the desk, in the order of its head. */
import { loadPage } from "./load/load-page.tsx";
import type { DeskPage } from "./page.ts";

export const deskPages: readonly DeskPage[] = [loadPage];
