/** The script of what is set side by side; without it the page says what to do instead. */
import type { BesideIndex } from "../publish/beside-file.ts";
import { BesidePage } from "./beside/page.ts";

const place = document.getElementById("beside");

if (place) new BesidePage(place, JSON.parse(place.dataset.index ?? "{}") as BesideIndex).start();
