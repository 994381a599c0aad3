/** Glazes, with everything that is known of each. */

import type { GlazeChemistry } from "../chemistry/glazes.ts";
import { tellReasons } from "../chemistry/why-no-chemistry.ts";
import { type Archive, type Filed, findById } from "../records/archive.ts";
import type { BlendPart, GlazeRecord, Ingredient } from "../records/glaze.ts";
import type { LeachTest } from "../records/leach-test.ts";
import { byWord } from "../terms/by-word.ts";
import type {
  KindOfGlaze,
  LabelClaim,
  Movement,
  Opacity,
  Surface,
  Tone,
} from "../terms/choices.ts";
import type { ConeRange } from "../terms/cones.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { glazeUrl } from "./addresses.ts";
import { type GlazeColours, glazeColours } from "./colours/glaze-colours.ts";
import type { ColourTrust } from "./colours/trust.ts";
import type { Findings, Note } from "./findings.ts";
import { type Link, linkTo } from "./link.ts";
import type { FindMaterialLink } from "./mixing/material-links.ts";
import type { FindMixing, GlazeMixing } from "./mixing/mixing.ts";
import type { CataloguePair } from "./pairs.ts";
import type { CatalogueTile } from "./tiles.ts";

/** What somebody wrote of a glaze and everyone may read. */
export interface GlazeFacts {
  readonly kind: KindOfGlaze;
  readonly cones: ConeRange | null;
  readonly surface: Surface | null;
  readonly cover: Opacity | null;
  readonly moves: Movement | null;
  readonly tone: Tone | null;
  /** What its label claims, for this glaze alone. */
  readonly label: readonly LabelClaim[];
  readonly stocked: boolean;
  readonly bought: GlazeRecord["bought"] | null;
  readonly ingredients: readonly Ingredient[] | null;
  readonly additions: readonly Ingredient[];
  readonly blend: readonly BlendPart[] | null;
  /** How a blend was measured. */
  readonly by: "volume" | "weight";
  readonly leachTests: readonly LeachTest[];
}

export interface CatalogueGlaze extends Link, GlazeFacts, GlazeMixing, GlazeColours {
  readonly notes: string;
  /** Every tile it is on, by id. */
  readonly tiles: readonly string[];
  /** Every tile on which it is the only glaze. */
  readonly alone: readonly string[];
  /** Glazes it lay over, and glazes that lay over it: the pairs' pages. */
  readonly over: readonly GlazePair[];
  readonly under: readonly GlazePair[];
  /** For a mixed glaze whose materials are known. */
  readonly chemistry: GlazeChemistry | null;
  /** Why a mixed glaze has none; null for a bought one, of which nobody expects it. */
  readonly whyNoChemistry: string | null;
  /** Links of the materials or glazes that it is made of. */
  readonly made: Readonly<Record<string, Link>>;
  readonly cautions: readonly Note[];
}

/** A glaze without the lists that grow with the archive. */
export type GlazeTold = Omit<CatalogueGlaze, "alone" | "over" | "tiles" | "under">;

/** From a glaze's page to a pair's. */
export interface GlazePair {
  readonly glaze: Link;
  readonly pair: string;
  readonly tiles: number;
}

/** What glazes are linked with. */
export interface GlazeSurroundings {
  readonly archive: Archive;
  readonly findings: Findings;
  readonly tiles: readonly CatalogueTile[];
  readonly pairs: readonly CataloguePair[];
  readonly trust: ColourTrust | null;
  readonly findLink: FindMaterialLink;
  readonly findMixing: FindMixing;
}

/** Every glaze, in the order of their names. */
export function listGlazes(surroundings: GlazeSurroundings): readonly CatalogueGlaze[] {
  const found = {
    on: indexBy(surroundings.tiles, ({ glazes }) => Object.keys(glazes)),
    over: indexBy(surroundings.pairs, ({ over }) => [over.id]),
    under: indexBy(surroundings.pairs, ({ under }) => [under.id]),
  };
  return [...surroundings.archive.glazes.values()]
    .map((glaze) => catalogueGlaze(glaze, surroundings, found))
    .sort((a, b) => compareIds(a.name, b.name));
}

/** Tiles and pairs by the ids of the glazes that they have. */
interface ByGlaze {
  readonly on: ReadonlyMap<string, readonly CatalogueTile[]>;
  readonly over: ReadonlyMap<string, readonly CataloguePair[]>;
  readonly under: ReadonlyMap<string, readonly CataloguePair[]>;
}

function catalogueGlaze(
  glaze: Filed<GlazeRecord>,
  { archive, findings, trust, findLink, findMixing }: GlazeSurroundings,
  by: ByGlaze,
): CatalogueGlaze {
  const { record } = glaze;
  const on = by.on.get(glaze.id) ?? [];
  const alone = on.filter((tile) => Object.keys(tile.glazes).length === 1);
  const found = findings.chemistry.get(idKey(glaze.id));
  return {
    id: glaze.id,
    name: record.name,
    url: glazeUrl(glaze.id),
    ...factsOf(record),
    notes: glaze.notes,
    tiles: on.map((tile) => tile.id),
    alone: alone.map((tile) => tile.id),
    over: (by.over.get(glaze.id) ?? []).map((pair) => toGlazePair(pair.under, pair)),
    under: (by.under.get(glaze.id) ?? []).map((pair) => toGlazePair(pair.over, pair)),
    chemistry: found?.ok ? found.chemistry : null,
    whyNoChemistry: found && !found.ok && !record.bought ? tellReasons(found.reasons) : null,
    made: madeOf(record, archive, findLink),
    cautions: findings.notes.get(glaze.file) ?? [],
    ...findMixing(glaze.id, alone),
    ...glazeColours(alone, trust),
  };
}

function factsOf(record: GlazeRecord): GlazeFacts {
  return {
    kind: record.kind,
    cones: record.cones ?? null,
    surface: record.surface ?? null,
    cover: record.cover ?? null,
    moves: record.moves ?? null,
    tone: record.tone ?? null,
    label: record.label ?? [],
    stocked: record.stocked ?? true,
    bought: record.bought ?? null,
    ingredients: record.ingredients ?? null,
    additions: record.additions ?? [],
    blend: record.blend ?? null,
    by: record.by ?? "weight",
    leachTests: record.leachTests ?? [],
  };
}

function toGlazePair(glaze: Link, pair: CataloguePair): GlazePair {
  return { glaze, pair: pair.url, tiles: pair.tiles.length };
}

function madeOf(
  record: GlazeRecord,
  archive: Archive,
  findMaterialLink: FindMaterialLink,
): Readonly<Record<string, Link>> {
  const materials = [...(record.ingredients ?? []), ...(record.additions ?? [])].map(
    ({ material }) => [material, findMaterialLink(material)] as const,
  );
  const glazes = (record.blend ?? []).map(
    ({ glaze }) => [glaze, linkTo(findById(archive.glazes, glaze), glazeUrl)] as const,
  );
  return byWord([...materials, ...glazes].flatMap(([id, link]) => (link ? [[id, link]] : [])));
}
