/** What other rooms found out about an archive, handed to the catalogue as plain data. */

import type { GlazeChemistryResult } from "../chemistry/glazes.ts";
import type { CarriedMaterial } from "../chemistry/minerals/mineral.ts";
import type { MeasuredColour } from "../colour/measure.ts";
import type { FiringHeat } from "../firing/of-record.ts";
import type { RecordVersion } from "./history/entries.ts";
import type { WrittenGlaze } from "./history/recipe-changes.ts";
import type { WrittenTile } from "./history/tile-changes.ts";

export interface PictureFile {
  readonly url: string;
  readonly format: "webp" | "jpeg";
  readonly width: number;
  readonly height: number;
}

/** A practice note or a caution, as it stands on a page. */
export interface Note {
  readonly code: string;
  readonly severity: "error" | "warning";
  readonly message: string;
  readonly hint: string;
}

/** A photograph made ready for the site. */
export interface PreparedPicture {
  readonly width: number;
  readonly height: number;
  readonly placeholder: string;
  readonly files: readonly PictureFile[];
  /** Of a photograph of a result; others are not measured. */
  readonly colour: MeasuredColour | null;
}

/** The studio's mark made ready for the site. */
export interface PreparedMark {
  readonly format: "svg" | "png";
  readonly width: number;
  readonly height: number;
}

/** What git knows of a record. */
export interface RecordHistory {
  /** Its file, from the top of the repository; null where the last commit does not have it. */
  readonly path: string | null;
  /** Whether it lies there as it was committed, was changed since, or was never committed. */
  readonly state: "as-committed" | "changed" | "new";
  /** The day on which it was first committed; null where nobody knows. */
  readonly first: string | null;
  /** The day on which it was last committed, or a photograph or a log that belongs to it. */
  readonly last: string | null;
  /** The names under which somebody committed it, as git has them; for nobody's eyes but the catalogue's. */
  readonly authors: readonly string[];
  /** What it held, the oldest first: its newest versions where there are many; none where a day is not known. */
  readonly versions: readonly RecordVersion[];
  /** When photographs of a tile came and were changed. */
  readonly photographs: readonly { readonly day: string; readonly change: "added" | "changed" }[];
}

/** What records held in their versions, by git's ids; null for what cannot be read. */
export interface WrittenVersions {
  readonly tiles: ReadonlyMap<string, WrittenTile | null>;
  readonly glazes: ReadonlyMap<string, WrittenGlaze | null>;
}

export interface Findings {
  /** By the picture's file, relative to the archive. */
  readonly pictures: ReadonlyMap<string, PreparedPicture>;
  /** By `idKey` of the glaze: its chemistry, or why there is none. */
  readonly chemistry: ReadonlyMap<string, GlazeChemistryResult>;
  /** By `idKey` of the firing: what it amounts to. */
  readonly heats: ReadonlyMap<string, FiringHeat>;
  /** Practice notes and cautions by the record's file. */
  readonly notes: ReadonlyMap<string, readonly Note[]>;
  /** Left out where the studio has none. */
  readonly mark?: PreparedMark | undefined;
  /** The raw materials that need no record. */
  readonly builtInMaterials: readonly CarriedMaterial[];
  /** By the record's file; left out where nobody asked git. */
  readonly history?: ReadonlyMap<string, RecordHistory> | undefined;
  /** Left out where nobody asked git. */
  readonly written?: WrittenVersions | undefined;
}
