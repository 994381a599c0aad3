/** What the page at the copy stand and its server say to each other. */

/** Left, top, right and bottom edge, in per cent of the photograph. */
export type Edges = readonly [left: number, top: number, right: number, bottom: number];

/** Where the glaze lies in a photograph, and where the grey card, if there is one. */
export interface Frames {
  readonly crop: Edges;
  readonly grey: Edges | null;
}

/** For what frames hold: every photograph of the studio, those of a set, or one. */
export type Scope = "studio" | "set" | "tile";

/** A tile whose photograph can be shown. */
export interface ShownTile {
  readonly id: string;
  /** Its file, relative to the archive. */
  readonly file: string;
  /** Null where it lies in no set. */
  readonly set: { readonly id: string; readonly name: string; readonly file: string } | null;
  /** The frames that hold for it now. */
  readonly frames: Frames;
  /** Who says so; null where nobody does. */
  readonly from: { readonly crop: Scope | null; readonly grey: Scope | null };
}

/** All that the page shows. */
export interface StandView {
  readonly studioFile: string;
  readonly tiles: readonly ShownTile[];
  /** For what the frames will most likely be meant. */
  readonly scope: Scope;
}

/** What is asked of the server: these frames, on this tile's photograph. */
export interface FramesOnTile {
  readonly tile: string;
  readonly frames: Frames;
}

export interface WriteRequest extends FramesOnTile {
  readonly scope: Scope;
}

/** What would be measured, in words; or why nothing can be. */
export type MeasuredWords =
  | {
      readonly hex: string;
      /** Its name, and what became of the card. */
      readonly sentence: string;
      readonly spread: string;
    }
  | { readonly fault: string };

export interface WrittenWords {
  readonly written: boolean;
  /** What was written and where, or why nothing was. */
  readonly words: string;
  /** The file, relative to the archive, and its lines; empty where nothing was written. */
  readonly file: string;
  readonly lines: readonly { readonly line: number; readonly text: string }[];
  /** What the page shows from now on. */
  readonly view: StandView;
}
