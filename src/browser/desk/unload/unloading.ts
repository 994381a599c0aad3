/** Goes from tile to tile, and has what came of each written down at once. */

import type { Written } from "../../../desk/types.ts";
import type {
  OutcomeRequest,
  OutcomeWritten,
  TileOutView,
  UnloadView,
} from "../../../desk/unload/types.ts";
import type { Outcome } from "../../../loads/outcome.ts";
import { post, postPicture, Unanswered } from "../../parts/ask.ts";
import { must } from "../../parts/element.ts";
import { Choices } from "./choices.ts";
import { askFiring, showTile } from "./tile-head.ts";

export class Unloading {
  private readonly tiles: TileOutView[];
  private at = 0;
  private said: string | undefined;
  private last: number | undefined;
  private isBusy = false;
  private readonly choices: Choices;

  constructor(
    private readonly form: HTMLFormElement,
    private readonly lit: HTMLFormElement,
    private readonly view: UnloadView,
  ) {
    this.tiles = [...view.tiles];
    this.choices = new Choices(form, () => this.tell(""));
    this.find(".of-result").hidden = view.isBisque;
    this.hear();
    if (view.on === null) this.askDay();
    else this.begin();
  }

  private find<E extends HTMLElement>(selector: string): E {
    return must(this.form.querySelector<E>(selector));
  }

  private field(name: string): HTMLInputElement {
    return this.find<HTMLInputElement>(`input[name="${name}"]`);
  }

  private askDay(): void {
    this.lit.hidden = false;
    this.lit.addEventListener("submit", (event) => {
      event.preventDefault();
      const on = must(this.lit.querySelector<HTMLInputElement>("input")).value;
      const { firing, seen } = this.view;
      this.during(async () => {
        const written = await post<Written>("/desk/unload/lit", { firing, seen, on });
        // The day changes what every tile of the load lacks: the page reads it anew.
        if (written.written) location.reload();
        else this.setProgress(written.words);
      });
    });
    this.setProgress("Nothing is written of a load before its day is known.");
  }

  private begin(): void {
    this.form.hidden = this.tiles.length === 0;
    if (this.tiles.length > 0) this.show(this.nextLacking(0) ?? 0);
    else this.setProgress("No tile is on the list of this firing.");
  }

  private hear(): void {
    this.form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.write();
    });
    this.find(".skip-tile").addEventListener("click", () => this.show(this.at + 1));
    this.find(".back").addEventListener("click", () => this.show(this.at - 1));
    this.field("photograph").addEventListener("change", () => this.photograph());
    this.find(".undo").addEventListener("click", () => this.undo());
    document.addEventListener("keydown", (event) => this.key(event));
  }

  /** A key on its own, unless somebody types a word; Enter writes from anywhere but a button. */
  private key(event: KeyboardEvent): void {
    const { target, key, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey || this.form.hidden) return;
    const isField = target instanceof HTMLInputElement;
    if (isField && key === "Escape") target.blur();
    if (isField || (target instanceof HTMLButtonElement && (key === "Enter" || key === " ")))
      return;
    if (this.act(key)) event.preventDefault();
  }

  private act(key: string): boolean {
    if (this.choices.key(key)) return true;
    if (key === "p" && !this.find(".take-photograph").hidden) {
      this.field("photograph").click();
      return true;
    }
    if (key === "r" || key === "t") {
      this.field(key === "r" ? "run" : "nextTime").focus();
      return true;
    }
    if (key === "Enter") {
      this.write();
      return true;
    }
    const way = this.form.querySelector<HTMLButtonElement>(
      `.unload-ways [data-key="${CSS.escape(key)}"]`,
    );
    way?.click();
    return way !== null;
  }

  private get tile(): TileOutView {
    return must(this.tiles[this.at]);
  }

  /** The place of the first tile from here on, round the whole load, that lacks its result. */
  private nextLacking(from: number): number | undefined {
    const order = this.tiles.map((_, i) => (from + i) % this.tiles.length);
    return order.find((at) => this.tiles[at]?.missing.result);
  }

  private show(at: number): void {
    this.at = (at + this.tiles.length) % this.tiles.length;
    this.said = undefined;
    const { tile } = this;
    showTile(this.form, tile, `${this.at + 1} of ${this.tiles.length}`);
    askFiring(this.form, tile, (id) => {
      this.said = id;
    });
    this.choices.show(tile.outcome);
    this.find(".take-photograph").hidden = !tile.missing.photograph;
    this.field("photograph").value = "";
    this.field("run").value = tile.outcome.run ?? "";
    this.field("nextTime").value = tile.outcome.nextTime ?? "";
    (document.activeElement as HTMLElement | null)?.blur();
    this.find(".trouble").textContent = "";
    this.find<HTMLButtonElement>('[type="submit"]').disabled = tile.file === "";
    this.setProgress(progressWords(this.tiles));
  }

  private get outcome(): Outcome {
    const text = (name: string) => this.field(name).value.trim() || null;
    return { ...this.choices.chosen, run: text("run"), nextTime: text("nextTime") };
  }

  private write(): void {
    const { at, tile, outcome, said } = this;
    if (tile.file === "") return;
    this.during(async () => {
      const { firing } = this.view;
      const asked: OutcomeRequest = { firing, code: tile.code, seen: tile.seen, said, outcome };
      const written = await post<OutcomeWritten>("/desk/unload/outcome", asked);
      if (written.tile) this.tiles[at] = written.tile;
      if (!written.written && !isEqual(outcome, tile.outcome)) return this.trouble(written.words);
      if (written.written) this.last = at;
      this.find<HTMLButtonElement>(".undo").disabled = this.last === undefined;
      this.show(this.nextLacking(at + 1) ?? at + 1);
      this.tell(`${tile.code}: ${written.words}`);
    });
  }

  /** It is written at once, whatever is chosen besides; what was chosen stays. */
  private photograph(): void {
    const { at, tile } = this;
    const [file] = this.field("photograph").files ?? [];
    if (!file) return;
    this.tell("Looking at the photograph…");
    this.during(async () => {
      const address = `/desk/unload/photograph/${encodeURIComponent(tile.code)}`;
      const written = await postPicture<Written>(address, file);
      this.field("photograph").value = "";
      this.tell(`${tile.code}: ${written.words}`);
      if (!written.written) return;
      this.tiles[at] = { ...tile, missing: { ...tile.missing, photograph: false } };
      this.find(".take-photograph").hidden = true;
      this.setProgress(progressWords(this.tiles));
    });
  }

  private undo(): void {
    const at = this.last;
    const tile = at === undefined ? undefined : this.tiles[at];
    if (at === undefined || !tile) return;
    this.during(async () => {
      const asked = { firing: this.view.firing, code: tile.code };
      const back = await post<OutcomeWritten>("/desk/unload/undo", asked);
      this.last = undefined;
      this.find<HTMLButtonElement>(".undo").disabled = true;
      if (back.tile) this.tiles[at] = back.tile;
      this.show(at);
      this.tell(`${tile.code}: ${back.words}`);
    });
  }

  /** One thing at a time: a second tap while the first is on its way counts for nothing. */
  private during(work: () => Promise<void>): void {
    if (this.isBusy) return;
    this.isBusy = true;
    work()
      .catch((error: unknown) =>
        this.trouble(
          error instanceof Unanswered ? error.message : `Something failed: ${String(error)}`,
        ),
      )
      .finally(() => {
        this.isBusy = false;
      });
  }

  private tell(words: string): void {
    this.find(".told").textContent = words;
  }

  private trouble(words: string): void {
    this.find(".trouble").textContent = words;
  }

  private setProgress(words: string): void {
    must(document.querySelector(".progress")).textContent = words;
  }
}

function isEqual(a: Outcome, b: Outcome): boolean {
  const sorted = ({ surface, effects, faults, ...rest }: Outcome) =>
    JSON.stringify([
      [...surface].sort(),
      [...effects].sort(),
      [...faults].sort(),
      rest.run,
      rest.again,
      rest.nextTime,
      rest.fate,
    ]);
  return sorted(a) === sorted(b);
}

/** `7 of 12 are written down. 3 have no photograph yet, and the build stops without: EV-1, EV-2 and EV-3.` */
function progressWords(tiles: readonly TileOutView[]): string {
  const done = tiles.filter(({ missing, file }) => file !== "" && !missing.result).length;
  const bare = tiles.filter(({ missing }) => !missing.result && missing.photograph);
  const told = `${done} of ${tiles.length} ${done === 1 ? "is" : "are"} written down.`;
  if (bare.length === 0) return told;
  const some = bare.slice(0, 4).map(({ code }) => code);
  const more = bare.length > some.length ? ` and ${bare.length - some.length} more` : "";
  return `${told} Without a photograph, which the build asks for: ${some.join(", ")}${more}.`;
}
