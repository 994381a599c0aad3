/** The script of the tile form; without it the page says how to write a tile down otherwise. */
import type { FormSite } from "../publish/add-file.ts";
import { startForm } from "./add/app.tsx";

/** Where there is none, as on a page opened from a folder, the form works all the same. */
async function keepForOffline(root: string): Promise<void> {
  // A page that is shown while its archive is worked on loads itself again, and must not find its old self.
  const isWorkedOn = document.querySelector("script[data-shown]") !== null;
  if (isWorkedOn || !("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register(`${root}add-worker.js`, { scope: `${root}add.html` });
  } catch {
    // A browser may refuse to keep anything; it needs a connection then.
  }
}

const place = document.getElementById("add");
const { tilebookForm } = globalThis as { readonly tilebookForm?: FormSite };

if (place && tilebookForm) {
  const root = place.dataset.root ?? "";
  startForm(place, tilebookForm, root);
  void keepForOffline(root);
}
