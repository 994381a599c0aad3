/** Asks for what the frames hold, has them written down, and tells what was written. */
import type {
  Frames,
  Scope,
  ShownTile,
  StandView,
  WriteRequest,
  WrittenWords,
} from "../../copystand/types.ts";
import { post } from "../parts/ask.ts";

export interface WritingActs {
  readonly current: () => { readonly tile: ShownTile; readonly frames: Frames };
  /** Takes the frames that hold for the shown tile. */
  readonly take: () => void;
  readonly written: (view: StandView) => void;
  readonly failed: (error: unknown) => void;
}

export class Writing {
  constructor(
    private readonly form: HTMLFormElement,
    private readonly acts: WritingActs,
  ) {
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.write().catch(acts.failed);
    });
    form.querySelector(".take")?.addEventListener("click", () => acts.take());
  }

  choose(scope: Scope): void {
    const input = this.form.querySelector<HTMLInputElement>(`input[value="${scope}"]`);
    if (input) input.checked = true;
  }

  /** Tells for what the frames may be written down, and what holds for the tile now. */
  show(tile: ShownTile, studioFile: string): void {
    this.label("studio", `the whole studio (${studioFile})`);
    this.label("set", tile.set ? `the set ${tile.set.name} (${tile.set.file})` : "its set");
    this.label("tile", `${tile.id} alone (${tile.file})`);
    const set = this.form.querySelector<HTMLInputElement>('input[value="set"]');
    const choice = this.form.querySelector<HTMLElement>("label.set");
    if (set && choice) {
      choice.hidden = tile.set === null;
      if (tile.set === null && set.checked) this.choose("tile");
    }
    const holds = this.form.querySelector(".holds");
    if (holds) holds.textContent = tellHolding(tile);
  }

  /** Forgets what was told of the last writing. */
  clear(): void {
    this.tell("", []);
  }

  private label(scope: Scope, words: string): void {
    const label = this.form.querySelector(`label.${scope} span`);
    if (label) label.textContent = words;
  }

  private async write(): Promise<void> {
    const scope = new FormData(this.form).get("scope") as Scope;
    const { tile, frames } = this.acts.current();
    const request: WriteRequest = { scope, tile: tile.id, frames };
    const told = await post<WrittenWords>("/write", request);
    this.acts.written(told.view);
    this.tell(told.words, told.lines);
  }

  private tell(words: string, lines: WrittenWords["lines"]): void {
    const [told, shown] = [this.form.querySelector(".told p"), this.form.querySelector("pre")];
    if (told) told.textContent = words;
    if (!shown) return;
    shown.hidden = lines.length === 0;
    shown.textContent = lines.map(({ line, text }) => `${line}  ${text}`).join("\n");
  }
}

/** `What holds for EV-104 now: for the glaze what its set says; for the grey card nothing.` */
function tellHolding({ id, from, frames, set }: ShownTile): string {
  const says = {
    studio: "what the studio says",
    set: `what the set ${set?.name ?? ""} says`,
    tile: "what its own record says",
  };
  const glaze = from.crop ? says[from.crop] : "the middle half of the picture";
  const card = from.grey ? says[from.grey] : "nothing";
  const none = from.grey && frames.grey === null ? ", that there is none" : "";
  return `What holds for ${id} now: for the glaze ${glaze}; for the grey card ${card}${none}.`;
}
