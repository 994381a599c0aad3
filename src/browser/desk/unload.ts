/** The page on which a kiln is unloaded. */
import type { UnloadView } from "../../desk/unload/types.ts";
import { must } from "../parts/element.ts";
import { Unloading } from "./unload/unloading.ts";

const form = document.querySelector<HTMLFormElement>("form.unload-form");
// The list of firings to choose from has none.
if (form) {
  const view = JSON.parse(form.dataset.view ?? "") as UnloadView;
  new Unloading(form, must(document.querySelector<HTMLFormElement>("form.lit")), view);
}
