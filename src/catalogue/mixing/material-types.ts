/** What the catalogue holds of raw materials. */
import type { Analysis } from "../../chemistry/analysis.ts";
import type { AnalysedMaterial } from "../../chemistry/materials.ts";
import type { CarriedMaterial } from "../../chemistry/minerals/mineral.ts";
import type { MaterialRecord } from "../../records/material.ts";
import type { Link } from "../link.ts";
import type { Caution } from "./mixing-types.ts";

export type { CarriedMaterial };

/** What is known of a raw material by its formula or analysis. */
export interface MaterialMakeUp {
  /** What it comes to in the fire; null where nobody wrote it down, and why. */
  readonly analysis: Analysis | null;
  /** What the analysis rests on. */
  readonly basis: AnalysedMaterial["basis"] | null;
  readonly whyNoAnalysis: string | null;
  /** What was done with its figures, sentences without their full stops. */
  readonly remarks: readonly string[];
  /** What is to be minded with it in the bag and in the kiln. */
  readonly hazards: readonly Caution[];
}

/** What somebody wrote of a raw material and everyone may read. */
export interface MaterialFacts {
  readonly formula: string | null;
  /** Weight per cent of what its sheet names, as it was written. */
  readonly stated: NonNullable<MaterialRecord["analysis"]> | null;
  /** What its label and safety sheet warn of, in the studio's words. */
  readonly warnings: readonly string[];
  /** What a kilogram costs, in the studio's own currency. */
  readonly price: number | null;
}

export interface CatalogueMaterial extends Link, MaterialFacts, MaterialMakeUp {
  /** What Tilebook carries of it, where the studio has no record of its own. */
  readonly carried: CarriedMaterial | null;
  readonly notes: string;
  /** Glazes that hold it. */
  readonly glazes: readonly Link[];
}

/** A material that needs no record. */
export interface CarriedLine extends MaterialMakeUp {
  readonly material: CarriedMaterial;
  /** The archive's own record, which is used in its place. */
  readonly instead: Link | null;
}
