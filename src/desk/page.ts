/** A page of the desk: what it shows, and what its script may ask for. */
import type { VNode } from "preact";
import type { DeskArchive } from "./types.ts";
import type { DeskWork } from "./work.ts";

export interface DeskPage {
  /** Its address: `paper` is at `/desk/paper`, and for the set `evening` at `/desk/paper/evening`. */
  readonly name: string;
  /** In the desk's head, a word or two. */
  readonly title: string;
  /** What it is for, in a sentence on the desk's first page. */
  readonly purpose: string;
  /** The name of its script in `src/browser/desk/`; none where it is left out. */
  readonly script?: string;
  /**
   * Its main part. It is made anew whenever it is asked for.
   *
   * @param of what stands behind its name in the address; undefined where nothing does
   * @returns undefined where there is no such thing
   */
  readonly render: (archive: DeskArchive, of: string | undefined) => VNode | undefined;
  /** What becomes of a picture that its script posts to `/desk/paper/NAME/OF`. */
  readonly pictures?: Readonly<
    Record<string, (of: string, bytes: Uint8Array, work: DeskWork) => Promise<unknown>>
  >;
  /**
   * Pictures of its own, WebP, at `/desk/paper/NAME/OF`, by that name; undefined where there is no such
   * one. They are shown wherever the page is, and nowhere else.
   */
  readonly shows?: Readonly<Record<string, (of: string, work: DeskWork) => Uint8Array | undefined>>;
  /** What it answers to what its script posts to `/desk/paper/NAME`, by that name. */
  readonly actions?: Readonly<Record<string, (body: unknown, work: DeskWork) => Promise<unknown>>>;
}
