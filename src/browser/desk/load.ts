/** The page on which a kiln is loaded. */
import type { LoadView } from "../../desk/load/types.ts";
import { must } from "../parts/element.ts";
import { Loading } from "./load/loading.ts";

const form = must(document.querySelector<HTMLFormElement>("form.load"));
new Loading(form, JSON.parse(form.dataset.view ?? "") as LoadView);
form.hidden = false;
