/** On a small screen the sentence stands in a sheet that comes from below and tells its count. */
import { element } from "../parts/element.ts";

export interface Sheet {
  readonly nodes: readonly HTMLElement[];
  /** Tells how many tiles would be left. */
  readonly tell: (tiles: number) => void;
}

export function makeSheet(content: HTMLElement): Sheet {
  const open = element("button", { type: "button", class: "open-sheet" }, "Narrow down");
  const close = element("button", { type: "button", class: "show" });
  const inside = element("div", { class: "sheet-inside" });
  const dialog = element(
    "dialog",
    { class: "sheet", "aria-label": "Narrow down" },
    inside,
    element("div", { class: "sheet-foot" }, close),
  );
  const outside = element("div", { class: "sentence-place" }, content);
  open.addEventListener("click", () => {
    inside.append(content);
    dialog.showModal();
  });
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("click", (event) => {
    if (event.target === dialog) dialog.close();
  });
  dialog.addEventListener("close", () => outside.append(content));
  return {
    nodes: [outside, open, dialog],
    tell: (tiles) => {
      close.textContent = tiles === 1 ? "Show 1 tile" : `Show ${tiles} tiles`;
    },
  };
}
