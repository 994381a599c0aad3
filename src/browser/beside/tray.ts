/** On every page: buttons that set a tile or a glaze beside others, and what has been so set. */
import { element } from "../parts/element.ts";
import {
  type Chosen,
  formatChoice,
  isChosen,
  type Kind,
  kinds,
  most,
  nothingChosen,
  recall,
  remember,
  toggle,
} from "./choice.ts";

export class Tray {
  private chosen: Chosen;
  private readonly node = element("aside", { class: "tray", "aria-label": "Set side by side" });
  private readonly told = element("span", { role: "status", class: "quiet" });

  constructor(private readonly root: string) {
    this.chosen = recall(root);
  }

  start(): void {
    document.body.append(this.node);
    this.addToTilePage();
    document.addEventListener("click", (event) => this.click(event));
    document.addEventListener("pointerover", ({ target }) => {
      const card = target instanceof Element ? target.closest(".wall > li") : null;
      if (card) this.addButton(card);
    });
    // Whoever comes back by the browser's own button sees what was chosen meanwhile.
    addEventListener("pageshow", () => this.take(recall(this.root)));
    this.take(this.chosen);
  }

  private take(chosen: Chosen): void {
    this.chosen = chosen;
    remember(this.root, chosen);
    const some = kinds.filter((kind) => chosen[kind].length > 0);
    document.body.classList.toggle("with-tray", some.length > 0);
    this.node.replaceChildren(...some.map((kind) => this.lineOf(kind)), this.told);
    if (some.length > 0 && matchMedia("(hover: none)").matches)
      for (const card of document.querySelectorAll(".wall > li")) this.addButton(card);
    for (const button of document.querySelectorAll<HTMLElement>("[data-beside]"))
      this.label(button);
  }

  private lineOf(kind: Kind): HTMLElement {
    const ids = this.chosen[kind];
    const href = `${this.root}beside.html${formatChoice(kind, ids)}`;
    const way =
      ids.length > 1
        ? element("a", { href }, `Look at ${ids.length} ${kind} side by side`)
        : element("span", {}, `Set another ${kind === "tiles" ? "tile" : "glaze"} beside it`);
    const clear = element("button", { type: "button", class: "plain" }, "clear");
    clear.addEventListener("click", () => {
      this.told.textContent = "";
      this.take({ ...this.chosen, [kind]: nothingChosen[kind] });
    });
    return element(
      "p",
      {},
      element("span", { class: "code" }, ids.join(" ")),
      " ",
      way,
      " ",
      clear,
    );
  }

  private click(event: MouseEvent): void {
    const { target } = event;
    const button = target instanceof Element ? target.closest<HTMLElement>("[data-beside]") : null;
    const [kind, id] = partsOf(button);
    if (!kind) return;
    event.preventDefault();
    const next = toggle(this.chosen, kind, id);
    this.told.textContent =
      next === this.chosen ? `No more than ${most} are set side by side: clear some first.` : "";
    this.take(next);
  }

  /** Beside its code, on a line that is there already, so that nothing moves. */
  private addToTilePage(): void {
    // A firing's page has a plate with a code too: only a tile's is called so.
    const plate = document.getElementById("code");
    const code = plate?.textContent.trim() ?? "";
    if (!plate || code === "") return;
    const button = element("button", { type: "button", class: "plain beside-button" });
    button.dataset.beside = `tiles ${code}`;
    plate.before(button);
    this.leadToThoseApart(code);
  }

  /** Beside the heading and not in it, so that nobody hears it as a part of its name. */
  private leadToThoseApart(code: string): void {
    const heading = document.getElementById("one-change");
    const apart = heading?.closest("section")?.querySelectorAll(".codes .code:last-child") ?? [];
    const ids = [...apart].slice(0, most - 1).map(({ textContent }) => textContent ?? "");
    if (ids.length === 0) return;
    const href = `${this.root}beside.html${formatChoice("tiles", [code, ...ids])}`;
    heading?.after(element("a", { href }, "side by side"));
  }

  private addButton(card: Element): void {
    const code = card.querySelector(".code")?.textContent ?? "";
    if (code === "" || card.querySelector("[data-beside]")) return;
    const button = element("button", { type: "button", class: "set-beside" });
    button.dataset.beside = `tiles ${code}`;
    this.label(button);
    card.append(button);
  }

  private label(button: HTMLElement): void {
    const [kind, id] = partsOf(button);
    const isIn = kind !== undefined && isChosen(this.chosen, kind, id);
    const words = isIn ? "set beside: take away" : "set beside";
    button.textContent = words;
    button.setAttribute("aria-label", `${words} ${id}`);
  }
}

function partsOf(button: HTMLElement | null): readonly [Kind | undefined, string] {
  const [kind = "", ...id] = (button?.dataset.beside ?? "").split(" ");
  return [kinds.find((each) => each === kind), id.join(" ")];
}
