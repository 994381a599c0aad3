/** What a book is made of: leaves, each of which is printed on one sheet. */
import type { Note } from "../../src/catalogue/findings.ts";
import type { Picture } from "../../src/catalogue/pictures.ts";
import type { LayerView } from "../drawing/layer-view.ts";
import type { TileEntry } from "../parts/entry.ts";

/** A piece of a leaf that is not broken over two. */
export type Block =
  | { readonly what: "step"; readonly nth: number; readonly words: string }
  | { readonly what: "fact"; readonly name: string; readonly words: string }
  /** Markdown, as somebody wrote it. */
  | { readonly what: "said"; readonly words: string; readonly by: string | null }
  | { readonly what: "caution"; readonly note: Note }
  | { readonly what: "line"; readonly line: ContentsLine };

export interface ContentsLine {
  readonly code: string;
  readonly names: string;
  /** The number that is printed on its leaf. */
  readonly page: number;
  /** The address of that leaf. */
  readonly url: string;
}

export type LeafHead =
  | { readonly what: "cover"; readonly title: string; readonly tiles: readonly TileEntry[] }
  | {
      readonly what: "tile";
      readonly code: string;
      readonly url: string;
      readonly names: string;
      readonly sentence: string;
      readonly picture: Picture | null;
      readonly view: LayerView;
      /** Where the colours of the drawing are from. */
      readonly key: string;
      /** What was done, in words; empty where that is too much to be beside a photograph. */
      readonly steps: readonly string[];
    }
  /** What did not fit on the leaf before, or a list. */
  | { readonly what: "title"; readonly title: string };

export interface Leaf {
  /** From 1, over all parts of the book. */
  readonly number: number;
  readonly head: LeafHead;
  readonly blocks: readonly Block[];
}
