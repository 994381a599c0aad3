/** What the page of a load, its script and the server say to each other. */
import type { Caution } from "../../loads/caution.ts";
import type { Shelf } from "../../loads/shelves.ts";
import type { KindOfFiring } from "../../terms/choices.ts";
import type { Written } from "../types.ts";

/** A tile that waits for a firing. */
export interface TileToLoad {
  readonly code: string;
  readonly set: string | null;
  /** `Soot over Liner, on Buff stoneware` */
  readonly words: string;
  /** The kinds of firing that it may go into. */
  readonly kinds: readonly KindOfFiring[];
  /** The firing to come whose list it is on. */
  readonly listedIn: string | null;
}

/** What was written down the last time a kiln had a firing of a kind. */
export interface Habit {
  readonly kind: KindOfFiring;
  /** Empty for the last one of the kind in any kiln. */
  readonly kiln: string;
  /** `cone 6, oxidation, electric: as in g-251102 on 2 November 2025` */
  readonly words: string;
  /** The kiln it was in. */
  readonly ofKiln: string;
  readonly cone: string;
  readonly atmosphere: string;
  readonly heatedBy: string;
  readonly shelves: readonly string[];
}

/** Fields of a firing that is to be begun, as they were typed; what is empty is left out. */
export interface NewFiring {
  readonly id: string;
  readonly on: string;
  readonly kind: string;
  readonly kiln: string;
  readonly heatedBy: string;
  readonly atmosphere: string;
  readonly cone: string;
}

/** The firing whose list this is: one that has a record, as it was shown, or one to be begun. */
export type LoadedFiring =
  | { readonly known: { readonly id: string; readonly seen: string } }
  | { readonly begun: NewFiring };

export interface LoadView {
  readonly tiles: readonly TileToLoad[];
  /** So many wait besides, whose codes can be typed. */
  readonly more: number;
  readonly habits: readonly Habit[];
  /** An id for each kind, for today. */
  readonly ids: Readonly<Record<string, string>>;
  /** Null where a firing is to be begun. */
  readonly firing: {
    readonly id: string;
    readonly seen: string;
    readonly kind: KindOfFiring;
    readonly shelves: readonly Shelf[];
  } | null;
}

/** What the script posts: to be tried, or to be written. */
export interface LoadRequest {
  readonly firing: LoadedFiring;
  readonly shelves: readonly Shelf[];
  /** Whoever asks says that the kiln has been fired like this already. */
  readonly isHistory: boolean;
}

export interface TriedWords {
  readonly tiles: readonly { readonly code: string; readonly cautions: readonly Caution[] }[];
  readonly load: readonly Caution[];
  /** `1 of 12 tiles must stay out. 3 more to look at.` */
  readonly sum: string;
  /** Whether the list could be written as it is. */
  readonly mayBeWritten: boolean;
  /** Whether it could once somebody says that it has been fired like this. */
  readonly mayBeHistory: boolean;
}

export interface LoadWritten extends Written {
  /** Where the load's page is from now on; empty where nothing was written. */
  readonly address: string;
}
