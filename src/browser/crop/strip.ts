/** All photographs in a row, each with the frames laid over it. */
import type { Frames, ShownTile } from "../../copystand/types.ts";
import { element } from "../parts/element.ts";

export class Strip {
  private buttons: readonly HTMLButtonElement[] = [];

  constructor(
    private readonly list: HTMLElement,
    private readonly chosen: (at: number) => void,
  ) {}

  /** Shows these tiles, and none else. */
  fill(tiles: readonly ShownTile[]): void {
    this.buttons = tiles.map((tile, at) => this.makeButton(tile, at));
    this.list.replaceChildren(...this.buttons.map((button) => element("li", {}, button)));
  }

  /** The same frames over each photograph. */
  lay({ crop, grey }: Frames): void {
    const set = (name: string, [left, top, right, bottom]: readonly number[]) => {
      this.list.style.setProperty(`--${name}-left`, `${left}%`);
      this.list.style.setProperty(`--${name}-top`, `${top}%`);
      this.list.style.setProperty(`--${name}-width`, `${(right ?? 0) - (left ?? 0)}%`);
      this.list.style.setProperty(`--${name}-height`, `${(bottom ?? 0) - (top ?? 0)}%`);
    };
    set("crop", crop);
    if (grey) set("grey", grey);
    this.list.classList.toggle("without-card", grey === null);
  }

  mark(at: number): void {
    for (const [i, button] of this.buttons.entries()) {
      if (i === at) button.setAttribute("aria-current", "true");
      else button.removeAttribute("aria-current");
    }
  }

  private makeButton({ id, from }: ShownTile, at: number): HTMLButtonElement {
    const isOwn = from.crop === "tile" || from.grey === "tile";
    const button = element(
      "button",
      { type: "button" },
      element(
        "span",
        { class: "mini" },
        element("img", { src: `/small/${encodeURIComponent(id)}`, alt: "", loading: "lazy" }),
        element("span", { class: "mini-frame crop" }),
        element("span", { class: "mini-frame grey" }),
      ),
      element("span", { class: "code" }, id),
      ...(isOwn ? [element("span", { class: "own" }, "own frames")] : []),
    );
    button.addEventListener("click", () => this.chosen(at));
    return button;
  }
}
