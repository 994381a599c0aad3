/** Every page of the desk, in the order of its head. */
import type { DeskPage } from "./page.ts";

export const deskPages: readonly DeskPage[] = [];
