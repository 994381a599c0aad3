/** Puts tiles on shelves, asks what that means, and has the list written. */
import type { LoadRequest, LoadView, LoadWritten, TriedWords } from "../../../desk/load/types.ts";
import type { Caution } from "../../../loads/caution.ts";
import { idKey } from "../../../terms/ids.ts";
import { post, Unanswered } from "../../parts/ask.ts";
import { element, must } from "../../parts/element.ts";
import { Begin } from "./begin.ts";
import { cautionItems } from "./cautions.ts";
import { Draft, typedCodes } from "./draft.ts";
import { ShelfChoice } from "./shelf-choice.ts";
import { TileList } from "./tile-list.ts";

/** So long nothing more is ticked before it is asked what it means, in milliseconds. */
const restMs = 120;

/** What was written before this page was loaded again. */
const justWritten = "tilebook-load-written";

export class Loading {
  private readonly draft: Draft;
  private readonly begin: Begin | null;
  private readonly shelves: ShelfChoice;
  private readonly tiles: TileList;
  private cautions: ReadonlyMap<string, readonly Caution[]> = new Map();
  private kindShown = "";
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private asking = new AbortController();

  constructor(
    private readonly form: HTMLFormElement,
    private readonly view: LoadView,
  ) {
    this.draft = new Draft(view.firing?.shelves ?? []);
    this.begin = view.firing ? null : new Begin(this.find(".begin"), view, () => this.changed());
    this.shelves = new ShelfChoice(this.find(".shelf-choice"), this.find(".own-shelf"), (name) => {
      this.draft.addShelf(name);
      this.showShelves(name);
    });
    this.tiles = new TileList(this.find(".to-load"), {
      shelfOf: (code) => this.draft.shelfOf(code),
      cautionsOf: (code) => this.cautions.get(idKey(code)) ?? [],
      toggle: (code) => this.toggle(code),
    });
    this.hearForm();
    this.changed();
    this.tellWritten(sessionStorage.getItem(justWritten) ?? "");
    sessionStorage.removeItem(justWritten);
  }

  private find<E extends HTMLElement>(selector: string): E {
    return must(this.form.querySelector<E>(selector));
  }

  private hearForm(): void {
    const code = this.find<HTMLInputElement>('[name="code"]');
    const putOn = () => {
      for (const each of typedCodes(code.value)) this.draft.put(each, this.shelves.current);
      code.value = "";
      this.changed();
    };
    this.find(".by-code button").addEventListener("click", putOn);
    code.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      putOn();
    });
    this.find('[name="history"]').addEventListener("change", () => this.changed());
    this.form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.write().catch((error: unknown) => this.tellTrouble(error));
    });
  }

  private toggle(code: string): void {
    if (this.draft.shelfOf(code) === undefined) this.draft.put(code, this.shelves.current);
    else this.draft.take(code);
    this.changed();
  }

  /** Shows what is on the page now, and asks what it means once nothing more is ticked. */
  private changed(): void {
    this.showShelves(this.shelves.current);
    this.showWaiting();
    this.showLoaded();
    this.tellWritten("");
    this.find<HTMLButtonElement>('[type="submit"]').disabled = true;
    clearTimeout(this.waiting);
    this.asking.abort();
    this.waiting = setTimeout(() => {
      this.asking = new AbortController();
      this.ask(this.asking.signal).catch((error: unknown) => this.tellTrouble(error));
    }, restMs);
  }

  private showShelves(current: string): void {
    const usual = JSON.parse(this.find(".shelf-choice").dataset.usual ?? "[]") as string[];
    const last = this.begin?.shelves ?? [];
    const known = this.draft.shelves.map(({ name }) => name);
    const names = new Set([...known, ...(known.length > 0 && last.length === 0 ? [] : last)]);
    this.shelves.fill([...new Set([...(names.size > 0 ? names : usual), ...usual])], current);
  }

  private get kind(): string {
    return this.view.firing?.kind ?? this.begin?.kind ?? "";
  }

  private showWaiting(): void {
    if (this.kind !== this.kindShown) {
      this.kindShown = this.kind;
      this.tiles.fill(
        this.view.tiles.filter(({ kinds }) => kinds.some((kind) => kind === this.kind)),
      );
      const none = this.find(".to-load").childElementCount === 0;
      if (none)
        this.find(".to-load").append(element("p", { class: "empty" }, "No tile waits for it."));
      if (this.view.more > 0)
        this.find(".to-load").append(
          element("p", {}, `${this.view.more} more tiles wait: put them on by their codes.`),
        );
    }
    this.tiles.show();
  }

  /** What stands on each shelf, each code with a way off it; those that do not wait have their cautions here. */
  private showLoaded(): void {
    const shown = new Set(
      this.view.tiles
        .filter(({ kinds }) => kinds.some((kind) => kind === this.kind))
        .map(({ code }) => idKey(code)),
    );
    const shelves = this.draft.shelves.filter(({ codes }) => codes.length > 0);
    const lists = shelves.flatMap(({ name, codes }) => [
      element("h3", {}, `${name}: ${codes.length === 1 ? "one tile" : `${codes.length} tiles`}`),
      element("ul", {}, ...codes.map((code) => this.loadedCode(code, shown.has(idKey(code))))),
    ]);
    this.find(".loaded").replaceChildren(...lists);
  }

  private loadedCode(code: string, isShown: boolean): HTMLLIElement {
    const off = element(
      "button",
      { type: "button", class: "plain", "aria-label": `Take ${code} off` },
      "take off",
    );
    off.addEventListener("click", () => {
      this.draft.take(code);
      this.changed();
    });
    const cautions = isShown ? [] : (this.cautions.get(idKey(code)) ?? []);
    const told =
      cautions.length > 0 ? [element("ul", { class: "minded" }, ...cautionItems(cautions))] : [];
    return element("li", {}, element("span", { class: "code" }, code), off, ...told);
  }

  private request(): LoadRequest {
    const { firing } = this.view;
    return {
      firing: firing
        ? { known: { id: firing.id, seen: firing.seen } }
        : { begun: must(this.begin).firing },
      shelves: this.draft.shelves.filter(({ codes }) => codes.length > 0),
      isHistory: this.find<HTMLInputElement>('[name="history"]').checked,
    };
  }

  private async ask(signal: AbortSignal): Promise<void> {
    const request = this.request();
    const tried = await post<TriedWords>("/desk/load/try", request, signal);
    if (signal.aborted) return;
    this.cautions = new Map(tried.tiles.map(({ code, cautions }) => [idKey(code), cautions]));
    this.tiles.show();
    this.showLoaded();
    this.find(".sum").textContent = tried.sum;
    this.find(".of-load").replaceChildren(...cautionItems(tried.load));
    this.find(".history").hidden = !tried.mayBeHistory;
    this.find(".trouble").textContent = "";
    this.find<HTMLButtonElement>('[type="submit"]').disabled = !tried.mayBeWritten;
  }

  private async write(): Promise<void> {
    const written = await post<LoadWritten>("/desk/load/write", this.request());
    this.tellWritten(written.words);
    if (!written.written) return;
    this.find<HTMLButtonElement>('[type="submit"]').disabled = true;
    // What is written is what the page goes on with: its own address reads it anew.
    sessionStorage.setItem(justWritten, written.words);
    location.assign(written.address);
  }

  private tellWritten(words: string): void {
    this.find(".told p").textContent = words;
  }

  private tellTrouble(error: unknown): void {
    if (error instanceof DOMException && error.name === "AbortError") return;
    this.find(".trouble").textContent =
      error instanceof Unanswered ? error.message : `Something failed: ${String(error)}`;
  }
}
