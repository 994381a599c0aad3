/** What other rooms found out about an archive, handed to the catalogue as plain data. */

import type { GlazeChemistryResult } from "../chemistry/glazes.ts";
import type { CarriedMaterial } from "../chemistry/minerals/mineral.ts";
import type { MeasuredColour } from "../colour/measure.ts";
import type { FiringHeat } from "../firing/of-record.ts";

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
}
