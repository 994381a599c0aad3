/** The tile in hand: its code, where it stood, what is on it, what is still missing. */
import type { TileOutView } from "../../../desk/unload/types.ts";
import { element, must } from "../../parts/element.ts";

export function showTile(form: HTMLElement, tile: TileOutView, place: string): void {
  const set = (selector: string, words: string) => {
    must(form.querySelector(selector)).textContent = words;
  };
  set(".tile-out .code", tile.code);
  set(
    ".where",
    [place, tile.shelf === null ? "shelf not written down" : `shelf: ${tile.shelf}`].join(", "),
  );
  set(".made", tile.words);
  set(".lacks", lackWords(tile));
}

function lackWords({ missing, file, outcome }: TileOutView): string {
  if (file === "") return "Write its record first; or skip it.";
  if (outcome.fate !== null) return "Its record says that it did not come back whole.";
  if (missing.result)
    return missing.photograph ? "No result and no photograph yet." : "No result yet.";
  return missing.photograph
    ? "Its result is written down; no photograph yet."
    : "Its result is written down.";
}

/** Asks of which firing a result is that names none. */
export function askFiring(
  form: HTMLElement,
  { unclear }: TileOutView,
  said: (id: string) => void,
): void {
  const place = must(form.querySelector<HTMLElement>(".unclear"));
  place.hidden = unclear.length === 0;
  const buttons = unclear.map((id) => {
    const button = element("button", { type: "button", "aria-pressed": "false" }, id);
    button.addEventListener("click", () => {
      for (const other of buttons) other.setAttribute("aria-pressed", String(other === button));
      said(id);
    });
    return button;
  });
  must(place.querySelector(".choices")).replaceChildren(...buttons);
}
