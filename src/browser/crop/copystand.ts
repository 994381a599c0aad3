/** The page of `tilebook crop`: two frames over photographs, and what they make of them. */
import type { Edges, Frames, ShownTile, StandView } from "../../copystand/types.ts";
import { get, Unanswered } from "../parts/ask.ts";
import { Frame } from "./frame.ts";
import { Measured } from "./measured.ts";
import { Numbers } from "./numbers.ts";
import { Strip } from "./strip.ts";
import { Writing } from "./writing.ts";

function find<E extends HTMLElement>(selector: string): E {
  return document.querySelector(selector) as E;
}

/** Where a card often lies; a frame that is added begins there. */
const likelyCard: Edges = [4, 84, 16, 96];

class CopyStand {
  private frames: Frames;
  private lastCard: Edges;
  private at = 0;
  private readonly stage = find(".stage");
  private readonly picture = find<HTMLImageElement>(".stage img");
  private readonly crop = this.makeFrame("crop", "glaze", 1);
  private readonly grey = this.makeFrame("grey", "grey card", 0.5);
  private readonly measured = new Measured(find(".measured"), tellTrouble);
  private readonly numbers = new Numbers(find(".numbers"), {
    changed: (part, edges) => this.take({ ...this.frames, [part]: edges }),
    toggleCard: () => this.toggleCard(),
  });
  private readonly strip = new Strip(find(".strip ol"), (at) => {
    this.show(at);
    find(".board").scrollIntoView({ block: "nearest" });
  });
  private readonly writing = new Writing(find(".writing"), {
    current: () => ({ tile: this.tile, frames: this.frames }),
    take: () => this.take(this.tile.frames),
    written: (view) => this.look(view),
    failed: tellTrouble,
  });

  constructor(private view: StandView) {
    this.frames = this.tile.frames;
    this.lastCard = this.frames.grey ?? likelyCard;
    this.strip.fill(view.tiles);
    this.writing.choose(view.scope);
    find(".previous").addEventListener("click", () => this.show(this.at - 1));
    find(".next").addEventListener("click", () => this.show(this.at + 1));
    this.show(0);
  }

  private get tile(): ShownTile {
    return this.view.tiles[this.at] as ShownTile;
  }

  private makeFrame(kind: "crop" | "grey", label: string, step: number): Frame {
    const changed = (edges: Edges) => this.take({ ...this.frames, [kind]: edges });
    return new Frame(this.stage, { kind, label, step, changed });
  }

  /** Shows the photograph at a place of the row, which goes round. */
  private show(at: number): void {
    const { length } = this.view.tiles;
    this.at = (at + length) % length;
    const { id } = this.tile;
    this.picture.src = `/large/${encodeURIComponent(id)}`;
    this.picture.alt = `The photograph of ${id}`;
    find(".shown").textContent = `${id}, ${this.at + 1} of ${length}`;
    this.strip.mark(this.at);
    this.writing.show(this.tile, this.view.studioFile);
    this.take(this.frames);
  }

  /** Lays frames over everything and asks what they measure. */
  private take(frames: Frames): void {
    this.frames = frames;
    this.lastCard = frames.grey ?? this.lastCard;
    this.crop.lay(frames.crop);
    this.grey.lay(frames.grey);
    this.numbers.show(frames);
    this.strip.lay(frames);
    this.writing.clear();
    find(".trouble").textContent = "";
    this.measured.ask({ tile: this.tile.id, frames });
  }

  private toggleCard(): void {
    this.take({ ...this.frames, grey: this.frames.grey === null ? this.lastCard : null });
  }

  /** Takes up what the archive says now; the frames in hand stay. */
  private look(view: StandView): void {
    const { id } = this.tile;
    this.view = view;
    this.strip.fill(view.tiles);
    this.show(
      Math.max(
        0,
        view.tiles.findIndex((tile) => tile.id === id),
      ),
    );
  }
}

function tellTrouble(error: unknown): void {
  const words = error instanceof Unanswered ? error.message : `Something failed: ${String(error)}`;
  find(".trouble").textContent = words;
}

get<StandView>("/stand.json").then((view) => {
  new CopyStand(view);
  for (const part of document.querySelectorAll<HTMLElement>(".stand, .strip")) part.hidden = false;
}, tellTrouble);
