/** On a small screen the sentence stands in a sheet that comes from below and tells its count. */
import { element } from "../parts/element.ts";

export interface Sheet {
  /** Tells how many tiles would be left. */
  readonly tell: (tiles: number) => void;
}

/** @param open the button that brings the sheet up */
export function makeSheet(content: HTMLElement, open: HTMLElement): Sheet {
  const outside = content.parentElement;
  const close = element("button", { type: "button", class: "show" });
  const inside = element("div", { class: "sheet-inside" });
  const dialog = element(
    "dialog",
    { class: "sheet", "aria-label": "Narrow down" },
    inside,
    element("div", { class: "sheet-foot" }, close),
  );
  open.after(dialog);
  open.addEventListener("click", () => {
    inside.append(content);
    dialog.showModal();
  });
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("click", (event) => {
    if (event.target === dialog) dialog.close();
  });
  dialog.addEventListener("close", () => outside?.append(content));
  return {
    tell: (tiles) => {
      close.textContent = tiles === 1 ? "Show 1 tile" : `Show ${tiles} tiles`;
    },
  };
}
