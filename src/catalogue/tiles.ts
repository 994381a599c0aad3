/** A tile as it is published. */
import type { Caution } from "../chemistry/cautions/cautions.ts";
import type { FiringFacts } from "../likeness/firing-facts.ts";
import { makeUpOf } from "../likeness/make-up.ts";
import {
  type Archive,
  type Filed,
  type FiredStep,
  findById,
  type Tile,
} from "../records/archive.ts";
import { coatsThatCount, countCoats, findLaps } from "../records/coat-stack.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import type { TileRecord } from "../records/tile.ts";
import { byWord } from "../terms/by-word.ts";
import { effects, faults, surfaces } from "../terms/choices.ts";
import { idKey } from "../terms/ids.ts";
import { clayUrl, glazeUrl, pairUrl, setUrl, tileUrl } from "./addresses.ts";
import { describeTile } from "./describe.ts";
import type { Findings } from "./findings.ts";
import { type FiringViews, findDecidingFiring, withFirings } from "./kilns/firings.ts";
import { mindingOf } from "./minding.ts";
import type {
  CatalogueTile,
  Link,
  MakerName,
  Note,
  Picture,
  TileFiring,
  TilePair,
} from "./types.ts";

/** What a tile is made a part of the catalogue with. */
export interface Surroundings {
  readonly archive: Archive;
  readonly findings: Findings;
  /** The makers' names that may be shown, by key. */
  readonly names: ReadonlyMap<string, MakerName>;
  readonly views: FiringViews;
  readonly factsOf: (step: FiredStep) => FiringFacts;
  /** The cautions of every glaze, by `idKey`. */
  readonly hazards: ReadonlyMap<string, readonly Caution[]>;
}

/** One tile, with links to everything it names. */
export function catalogueTile(tile: Tile, surroundings: Surroundings): CatalogueTile {
  const { archive, findings, names, views, factsOf, hazards } = surroundings;
  const steps = withFirings(tile.steps, archive, views);
  const deciding = findDecidingFiring(steps);
  const glazes = glazesOf(tile, archive.glazes);
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
    pictures: picturesOf(tile, archive, findings),
    colour: colourOf(tile, findings),
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

/** What came out: the last result's surface, and every effect and fault ever seen. */
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
  };
}

/** A link to a record that has a name; null where there is no such record. */
export function linkTo(
  filed: Filed<{ readonly name: string }> | undefined,
  url: (id: string) => string,
): Link | null {
  return filed ? { id: filed.id, name: filed.record.name, url: url(filed.id) } : null;
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

const roleOrder = ["result", "detail", "back", "before"] as const;

function picturesOf(tile: Tile, archive: Archive, findings: Findings): readonly Picture[] {
  const described = describeTile(tile, archive);
  return tile.pictures
    .flatMap(({ role, file }) => {
      const prepared = findings.pictures.get(file);
      if (!prepared) return [];
      const { width, height, placeholder, files } = prepared;
      const alt =
        role === "result"
          ? (tile.record.photo?.alt ?? described)
          : `${roleWords[role]} ${described}`;
      return [{ role, alt, width, height, placeholder, files }];
    })
    .sort((a, b) => roleOrder.indexOf(a.role) - roleOrder.indexOf(b.role));
}

const roleWords = {
  result: "",
  before: "Before the firing:",
  detail: "A detail:",
  back: "The back:",
} as const;

function colourOf(tile: Tile, findings: Findings): CatalogueTile["colour"] {
  const result = tile.pictures.find((picture) => picture.role === "result");
  return (result && findings.pictures.get(result.file)?.colour) ?? null;
}
