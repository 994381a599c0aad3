/**
 * What the sites of one archive have in common: the site for everyone and those of unlisted sets.
 * Each thing is worked out once, from the whole archive, of what a site shows anyway: a glaze from
 * its own recipe down to raw materials, a material from its record, a firing from its record and its
 * log. So nothing of it tells a site of what it does not show.
 */
import type { Caution } from "../chemistry/cautions/cautions.ts";
import { cautionsOfGlazes } from "../chemistry/cautions/cautions-of-glazes.ts";
import { type FiringFacts, firingFactsOf } from "../likeness/firing-facts.ts";
import type { Archive, FiredStep } from "../records/archive.ts";
import { committerFinder, type FindWrittenBy } from "./committers.ts";
import type { Findings } from "./findings.ts";
import { type FiringView, viewFirings } from "./kilns/heat.ts";
import { batchFinder, type FindBatch } from "./mixing/batches.ts";
import { materialLinkFinder } from "./mixing/material-links.ts";
import { type DescribeMaterial, materialDescriber } from "./mixing/materials.ts";

export interface Common {
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
  /** What is shown of every firing, by `idKey`. */
  readonly views: ReadonlyMap<string, FiringView>;
  /** What is known of the firing a step had. */
  readonly factsOf: (step: FiredStep) => FiringFacts;
  readonly findBatch: FindBatch;
  readonly describeMaterial: DescribeMaterial;
  readonly findWrittenBy: FindWrittenBy;
}

export function findCommon(archive: Archive, findings: Findings): Common {
  return {
    hazards: cautionsOfGlazes(archive),
    views: viewFirings(archive, findings.heats),
    factsOf: firingFactsOf(archive, findings.heats),
    findBatch: batchFinder(archive, materialLinkFinder(archive, findings.builtInMaterials)),
    describeMaterial: materialDescriber(archive),
    findWrittenBy: committerFinder(archive),
  };
}

/** What of the views a site shows: those of its own firings, with what stood in them there. */
export function viewsOf({ firings }: Archive, { views }: Common): ReadonlyMap<string, FiringView> {
  return new Map(
    [...firings].flatMap(([key, firing]) => {
      const view = views.get(key);
      return view ? [[key, { ...view, firing }]] : [];
    }),
  );
}
