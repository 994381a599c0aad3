/** The script of the tile form; without it the page says how to write a tile down otherwise. */
import type { FormSite } from "../publish/add-file.ts";
import { startForm } from "./add/app.tsx";

const place = document.getElementById("add");
const { tilebookForm } = globalThis as { readonly tilebookForm?: FormSite };

if (place && tilebookForm) startForm(place, tilebookForm, place.dataset.root ?? "");
