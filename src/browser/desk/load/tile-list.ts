/** The tiles that wait, as buttons: ticked ones are in the load. */
import type { TileToLoad } from "../../../desk/load/types.ts";
import type { Caution } from "../../../loads/caution.ts";
import { idKey } from "../../../terms/ids.ts";
import { element } from "../../parts/element.ts";
import { cautionItems } from "./cautions.ts";

export interface TileActs {
  readonly shelfOf: (code: string) => string | undefined;
  readonly cautionsOf: (code: string) => readonly Caution[];
  readonly toggle: (code: string) => void;
}

export class TileList {
  private readonly rows = new Map<
    string,
    { button: HTMLButtonElement; shelf: Element; told: Element }
  >();

  constructor(
    private readonly place: HTMLElement,
    private readonly acts: TileActs,
  ) {
    place.addEventListener("keydown", (event) => this.walk(event));
  }

  /** Shows these tiles, set by set. */
  fill(tiles: readonly TileToLoad[]): void {
    this.rows.clear();
    const sets = new Map<string, TileToLoad[]>();
    for (const tile of tiles) {
      const set = tile.set ?? "In no set";
      sets.set(set, [...(sets.get(set) ?? []), tile]);
    }
    this.place.replaceChildren(
      ...[...sets].flatMap(([set, some]) => [
        element("h3", {}, set),
        element("ul", {}, ...some.map((tile) => this.row(tile))),
      ]),
    );
    this.show();
  }

  /** Shows which are in, where, and what is to be minded about them. */
  show(): void {
    for (const [code, { button, shelf, told }] of this.rows) {
      const on = this.acts.shelfOf(code);
      const cautions = on === undefined ? [] : this.acts.cautionsOf(code);
      button.setAttribute("aria-pressed", String(on !== undefined));
      shelf.textContent = on ?? "";
      told.replaceChildren(...cautionItems(cautions));
    }
  }

  private row({ code, words, listedIn }: TileToLoad): HTMLLIElement {
    const shelf = element("span", { class: "on-shelf" });
    const also = listedIn === null ? "" : `, on the list of ${listedIn}`;
    const button = element(
      "button",
      { type: "button", class: "tile-to-load" },
      element("span", { class: "code" }, code),
      element("span", { class: "made" }, `${words}${also}`),
      shelf,
    );
    button.addEventListener("click", () => this.acts.toggle(code));
    const told = element("ul", { class: "minded" });
    this.rows.set(code, { button, shelf, told });
    return element("li", { "data-code": idKey(code) }, button, told);
  }

  /** Arrow keys go from tile to tile; the space bar ticks, as on any button. */
  private walk(event: KeyboardEvent): void {
    const way = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (way === undefined) return;
    const buttons = [...this.place.querySelectorAll("button")];
    const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
    const next = buttons[at + way];
    if (at < 0 || !next) return;
    event.preventDefault();
    next.focus();
  }
}
