/**
 * The files with what is set side by side, tiles in some and glazes in others: of each all that is
 * compared, in words, a few dozen to a file.
 */
import type { Aspect } from "../likeness/make-up.ts";

/** A tile or a glaze. */
export interface Subject {
  readonly id: string;
  readonly url: string;
  readonly name: string;
  readonly picture: SubjectPicture | null;
  /** What there is in place of a photograph. */
  readonly stage: string;
  /** What was done, the bottom first, coats of one kind together; none for a glaze. */
  readonly steps: readonly SubjectStep[];
  readonly tables: readonly SubjectTable[];
  readonly colour: {
    readonly hex: string;
    readonly lab: readonly [L: number, a: number, b: number];
    readonly name: string;
  } | null;
  /** The firings that have a curve, in their order. */
  readonly curves: readonly SubjectCurve[];
  /** The glazes on a tile, by their ids. */
  readonly glazes: readonly string[];
}

export interface SubjectPicture {
  readonly small: string;
  readonly large: string;
  readonly alt: string;
}

export interface SubjectStep {
  readonly words: string;
  /** What is compared of it; null where nobody wrote it down. */
  readonly facets: readonly (readonly [aspect: Aspect, value: string | null])[];
}

/**
 * Lines that are compared by their labels. Where one is missing: of facts nobody wrote it down; of parts
 * there is nothing of it; notes are not compared at all.
 */
export interface SubjectTable {
  readonly title: string;
  readonly kind: "facts" | "notes" | "parts";
  readonly lines: readonly (readonly [label: string, words: string])[];
}

export interface SubjectCurve {
  readonly firing: string;
  readonly url: string;
  /** Minutes and degrees Celsius in turn; minus one minute before a point that nobody timed. */
  readonly points: readonly (readonly [minutes: number, celsius: number, untimed?: 1])[];
}

/** How far the colours of tiles that were made alike differ here, in CIEDE2000; null where none were. */
export interface BesideIndex {
  readonly scatter: number | null;
  /** How many files there are of each. */
  readonly tiles: number;
  readonly glazes: number;
}
