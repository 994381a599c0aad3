/** What each facet says of a tile, and in which order its values stand. */
import { nameWithShade } from "../../templates/words/clay/clay.ts";
import { spoken } from "../../templates/words/english/numbers.ts";
import { stageName } from "../../templates/words/tile/outcome.ts";
import { wayWords } from "../../templates/words/tile/steps.ts";
import type { Link } from "../catalogue/link.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import type { Catalogue } from "../catalogue/types.ts";
import {
  agains,
  atmospheres,
  effects,
  faults,
  heatSources,
  shades,
  shapes,
  stages,
  surfaces,
  ways,
} from "../terms/choices.ts";
import { type Cone, coneSlug } from "../terms/cones.ts";
import { type FacetName, facetNames } from "../terms/facets.ts";
import { compareIds, idSlug } from "../terms/ids.ts";

interface Value {
  readonly key: string;
  readonly label: string;
}

type Order = (a: string, b: string, labels: ReadonlyMap<string, string>) => number;

export interface FacetValue {
  readonly of: (tile: CatalogueTile) => readonly Value[];
  readonly order: Order;
}

const byLabel: Order = (a, b, labels) =>
  compareIds(labels.get(a) ?? a, labels.get(b) ?? b) || compareIds(a, b);

const inOrder =
  (list: readonly string[]): Order =>
  (a, b) =>
    list.indexOf(a) - list.indexOf(b);

function choices(
  list: readonly string[],
  of: (tile: CatalogueTile) => readonly (string | null)[],
  word: (choice: string) => string = spoken,
): FacetValue {
  return {
    of: (tile) => of(tile).flatMap((key) => (key === null ? [] : [{ key, label: word(key) }])),
    order: inOrder(list),
  };
}

function links(of: (tile: CatalogueTile) => readonly (Link | null)[]): FacetValue {
  return {
    of: (tile) =>
      of(tile).flatMap((link) => (link ? [{ key: idSlug(link.id), label: link.name }] : [])),
    order: byLabel,
  };
}

/** The facets in which the tiles of a site are not all the same: by the others nothing can be found. */
export function facetsThatDiffer(catalogue: Catalogue): readonly FacetName[] {
  const values = facetsOfTiles(catalogue);
  return facetNames.filter((name) => {
    const keys = new Set<string>();
    return catalogue.tiles.some((tile) => {
      for (const { key } of values[name].of(tile)) keys.add(key);
      return keys.size > 1;
    });
  });
}

export function facetsOfTiles({
  cones,
  clays,
}: Catalogue): Readonly<Record<FacetName, FacetValue>> {
  const clayOf = new Map(clays.map((clay) => [clay.id, clay]));
  const ofClay = ({ clay }: CatalogueTile) => clay && (clayOf.get(clay.id) ?? null);
  return {
    cone: {
      of: ({ cone }) => (cone ? [coneValue(cone)] : []),
      order: inOrder(cones.map(({ cone }) => coneSlug(cone))),
    },
    surface: choices(surfaces, (tile) => tile.surface),
    effect: choices(effects, (tile) => tile.effects),
    fault: choices(faults, (tile) => tile.faults),
    top: links((tile) => [tile.top]),
    over: links((tile) => tile.pairs.map(({ under }) => under)),
    glaze: links((tile) => Object.values(tile.glazes)),
    shade: choices(
      shades,
      (tile) => [ofClay(tile)?.shade?.shade ?? null],
      (shade) => `${shade} clay`,
    ),
    clay: links((tile) => {
      const clay = ofClay(tile);
      return [clay && { ...clay, name: nameWithShade(clay) }];
    }),
    set: links((tile) => [tile.set]),
    colour: {
      of: (tile) => tile.largeColours.flatMap(namesOf),
      order: byLabel,
    },
    ...ofMaking,
  };
}

function namesOf({ families }: CatalogueTile["largeColours"][number]): readonly Value[] {
  return families.map((name) => ({ key: name, label: name }));
}

function coneValue(cone: Cone): Value {
  return { key: coneSlug(cone), label: cone };
}

const ofMaking = {
  way: choices(ways, waysOf, (way) => wayWords(way as (typeof ways)[number])),
  texture: {
    of: ({ texture }: CatalogueTile) => [{ key: idSlug(texture), label: spoken(texture) }],
    order: byLabel,
  },
  shape: choices(shapes, (tile) => [tile.shape]),
  atmosphere: choices(atmospheres, (tile) => [tile.atmosphere]),
  heat: choices(heatSources, (tile) => [tile.heatedBy]),
  again: choices(agains, (tile) => [tile.again]),
  maker: {
    of: ({ maker }: CatalogueTile) =>
      maker ? [{ key: idSlug(maker.name), label: maker.name }] : [],
    order: byLabel,
  },
  stage: choices(
    stages,
    (tile) => [tile.stage],
    (stage) => stageName(stage as (typeof stages)[number]),
  ),
};

function waysOf({ steps }: CatalogueTile): readonly (string | null)[] {
  return steps.flatMap((step) => (step.step === "coat" ? [step.by] : []));
}
