/** A tile as it is published. */

import type { Caution } from "../chemistry/cautions/cautions.ts";
import { type LargeColour, largeColours } from "../colour/large-colours.ts";
import type { MeasuredColour } from "../colour/measure.ts";
import type { FiringFacts } from "../likeness/firing-facts.ts";
import { type MakeUp, makeUpOf } from "../likeness/make-up.ts";
import {
  type Archive,
  type Filed,
  type FiredStep,
  findById,
  type Tile,
} from "../records/archive.ts";
import { type CoatCount, coatsThatCount, countCoats, findLaps } from "../records/coat-stack.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import type { LeachTest } from "../records/leach-test.ts";
import type { LaterLook, Result, TileRecord } from "../records/tile.ts";
import { byWord } from "../terms/by-word.ts";
import {
  type Again,
  type Atmosphere,
  type Effect,
  effects,
  type Fate,
  type Fault,
  faults,
  type HeatSource,
  type Shape,
  type Stage,
  type Surface,
  surfaces,
} from "../terms/choices.ts";
import type { Cone } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";
import { metalsIn } from "../terms/metals.ts";
import { clayUrl, glazeUrl, pairUrl, setUrl, tileUrl } from "./addresses.ts";
import type { Findings, Note } from "./findings.ts";
import {
  type CatalogueStep,
  type FindTileFiring,
  findDecidingFiring,
  type TileFiring,
  withFirings,
} from "./kilns/tile-firings.ts";
import { type Link, linkTo } from "./link.ts";
import type { MakerName } from "./makers.ts";
import { type Minding, mindingOf } from "./minding.ts";
import { colourOf, type Picture, picturesOf } from "./pictures.ts";

/** One glaze directly over another on a tile. */
export interface TilePair {
  readonly over: Link;
  readonly under: Link;
  readonly pair: string;
}

export interface CatalogueTile {
  readonly id: string;
  readonly url: string;
  readonly set: Link | null;
  /** The maker as `shown` allows; never the key. */
  readonly maker: MakerName | null;
  readonly formed: string | null;
  readonly glazed: string | null;
  readonly stage: Stage;
  readonly fate: Fate | null;
  readonly clay: Link | null;
  readonly clayBatch: string | null;
  readonly texture: string;
  readonly shape: Shape;
  readonly angle: number | null;
  /** What was done, the bottom first, with the firings in their places. */
  readonly steps: readonly CatalogueStep[];
  /** All that was done to it, facet by facet: who is like whom is asked of this alone. */
  readonly makeUp: MakeUp;
  /** The glazes of its steps by their ids: what a step's id leads to. */
  readonly glazes: Readonly<Record<string, Link>>;
  /** The glaze that lies on top, where there is one. */
  readonly top: Link | null;
  readonly pairs: readonly TilePair[];
  readonly coatCounts: readonly CoatCount[];
  /** Of the hottest firing that is no bisque. */
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly heatedBy: HeatSource | null;
  readonly results: readonly Result[];
  readonly later: readonly LaterLook[];
  /** What a laboratory found; it lifts no caution. */
  readonly leachTests: readonly LeachTest[];
  /** What the results say, taken together. */
  readonly surface: readonly Surface[];
  readonly effects: readonly Effect[];
  readonly faults: readonly Fault[];
  readonly again: Again | null;
  /** The most millimetres that anybody saw it move; null where nobody measured. */
  readonly run: number | null;
  readonly notes: string;
  readonly formerly: readonly string[];
  /** The photograph of the result first, if there is one. */
  readonly pictures: readonly Picture[];
  readonly colour: MeasuredColour | null;
  /** Each colour that covers much of it, the largest first; empty where none was measured. */
  readonly largeColours: readonly LargeColour[];
  /** The metals in its glazes, where these have chemistry, by their everyday names. */
  readonly metals: readonly string[];
  /** What to mind with each of its glazes, in short. */
  readonly minding: readonly Minding[];
  /** Loud cautions of its glazes in full, and practice notes. */
  readonly cautions: readonly Note[];
}

/** What a tile is made a part of the catalogue with. */
export interface Surroundings {
  readonly archive: Archive;
  readonly findings: Findings;
  /** The makers' names that may be shown, by key. */
  readonly names: ReadonlyMap<string, MakerName>;
  readonly firingOf: FindTileFiring;
  readonly factsOf: (step: FiredStep) => FiringFacts;
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
}

/** One tile, with links to everything it names. */
export function catalogueTile(tile: Tile, surroundings: Surroundings): CatalogueTile {
  const { archive, findings, names, firingOf, factsOf, hazards } = surroundings;
  const steps = withFirings(tile.steps, firingOf);
  const deciding = findDecidingFiring(steps);
  const glazes = glazesOf(tile, archive.glazes);
  const colour = colourOf(tile, findings);
  return {
    id: tile.id,
    url: tileUrl(tile.id),
    set: linkTo(findById(archive.sets, tile.set), setUrl),
    maker: (tile.maker !== null && names.get(tile.maker)) || null,
    stage: tile.stage,
    clay: linkTo(findById(archive.clays, tile.clay), clayUrl),
    ...asWritten(tile),
    steps,
    makeUp: makeUpOf(tile, factsOf),
    glazes,
    top: topGlaze(tile, glazes),
    pairs: pairsOf(tile, glazes),
    coatCounts: countCoats(tile.steps),
    ...decidedBy(deciding),
    ...outcome(tile.record),
    pictures: picturesOf(tile, findings),
    colour,
    largeColours: colour ? largeColours(colour) : [],
    metals: metalsOf(Object.values(glazes), findings),
    minding: mindingOf(Object.values(glazes), hazards, deciding?.atmosphere ?? null),
    cautions: [...loudOf(glazes, hazards), ...(findings.notes.get(tile.file) ?? [])],
  };
}

/** What a glaze on it may never be shown without, told of the glaze by name. */
function loudOf(
  glazes: Readonly<Record<string, Link>>,
  hazards: Surroundings["hazards"],
): readonly Note[] {
  return Object.values(glazes).flatMap(({ id, name }) =>
    (hazards.get(idKey(id)) ?? [])
      .filter(({ isLoud }) => isLoud)
      .map(({ code, message, hint }) => ({
        code,
        severity: "error",
        message: `${name}: ${message}`,
        hint,
      })),
  );
}

function asWritten({ record, notes }: Tile) {
  return {
    formed: record.formed ?? null,
    glazed: record.glazed ?? null,
    fate: record.fate ?? null,
    clayBatch: record.clayBatch ?? null,
    texture: record.texture ?? "smooth",
    shape: record.shape ?? "flat",
    angle: record.angle ?? null,
    formerly: record.formerly ?? [],
    leachTests: record.leachTests ?? [],
    notes,
  };
}

function decidedBy(firing: TileFiring | undefined) {
  return {
    cone: firing?.cone ?? null,
    atmosphere: firing?.atmosphere ?? null,
    heatedBy: firing?.heatedBy ?? null,
  };
}

/** What came out: the last result's surface, every effect and fault ever seen, the farthest run. */
function outcome({ result: results = [], later = [] }: TileRecord) {
  const looks = [...results, ...later];
  return {
    results,
    later,
    surface: inOrder(surfaces, results.at(-1)?.surface ?? []),
    effects: inOrder(
      effects,
      looks.flatMap((look) => look.effects ?? []),
    ),
    faults: inOrder(
      faults,
      looks.flatMap((look) => look.faults ?? []),
    ),
    again: results.findLast((result) => result.again !== undefined)?.again ?? null,
    run: farthest(looks.flatMap(({ run = [] }) => run)),
  };
}

function farthest(runs: readonly number[]): number | null {
  return runs.length === 0 ? null : Math.max(...runs);
}

function glazesOf(
  tile: Tile,
  glazes: ReadonlyMap<string, Filed<GlazeRecord>>,
): Readonly<Record<string, Link>> {
  const ids = tile.steps.flatMap((step) => (step.step === "coat" ? step.glazes : []));
  const links = ids.flatMap((id) => linkTo(findById(glazes, id), glazeUrl) ?? []);
  return byWord(links.map((link) => [link.id, link]));
}

function topGlaze(tile: Tile, glazes: Readonly<Record<string, Link>>): Link | null {
  const id = coatsThatCount(tile.steps).at(-1)?.glazes.at(-1);
  return (id !== undefined && glazes[id]) || null;
}

function pairsOf(tile: Tile, glazes: Readonly<Record<string, Link>>): readonly TilePair[] {
  const pairs = new Map<string, TilePair>();
  for (const lap of findLaps(tile.steps)) {
    const over = glazes[lap.over];
    const under = glazes[lap.under];
    if (over && under) {
      const pair = pairUrl(over.id, under.id);
      pairs.set(pair, { over, under, pair });
    }
  }
  return [...pairs.values()];
}

function inOrder<T extends string>(
  order: readonly T[],
  found: readonly (T | "none")[],
): readonly T[] {
  return order.filter((word) => found.includes(word));
}

function metalsOf(glazes: readonly Link[], { chemistry }: Findings): readonly string[] {
  const held = glazes.flatMap(({ id }) => {
    const found = chemistry.get(idKey(id));
    return found?.ok ? metalsIn(found.chemistry.weightPercent) : [];
  });
  return [...new Set(held)];
}
