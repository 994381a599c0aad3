/** What the page of photographs, its script and the server say to each other. */
import type { PictureRole } from "../../records/archive.ts";

export interface PhotographView {
  readonly id: string;
  /** The file's name, as the camera gave it. */
  readonly name: string;
  /** The code that is proposed; null where there is none. */
  readonly code: string | null;
  /** By what it is proposed, or why there is none. */
  readonly words: string;
}

export interface SheetView {
  /** The load or set whose order is used; null for none. */
  readonly of: string | null;
  /** Bytes of the largest file that is taken. */
  readonly largest: number;
  /** Photographs on one sheet. */
  readonly most: number;
}

export interface WriteRequest {
  readonly id: string;
  readonly code: string;
  readonly role: PictureRole;
  /** Degrees, to the right. */
  readonly turning: 0 | 90 | 180 | 270;
}

/** What came of a photograph that was handed over. */
export interface Handed {
  readonly kept: boolean;
  /** Why it was not kept. */
  readonly words: string;
}
