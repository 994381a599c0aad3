/** What came of one change: every tile with a result that is one change apart from another. */
import { differenceCiede2000 } from "../colour/difference.ts";
import { type Change, type FacetChange, unknownOfBoth } from "../likeness/change.ts";
import type { Aspect } from "../likeness/make-up.ts";
import { mergeCoats } from "../likeness/merge-coats.ts";
import { neighbourFinder } from "../likeness/neighbours.ts";
import { twoApartFinder } from "../likeness/two-apart.ts";
import type { TileStep } from "../records/archive.ts";
import { rememberFor } from "../terms/remember.ts";
import { firingsOf } from "./kilns/tile-firings.ts";
import type { CatalogueTile } from "./tiles.ts";
import type { Catalogue } from "./types.ts";

/**
 * What differs, in one word; `none` where nothing does that was written down. What was done comes
 * before the kiln and the clay, and another glaze, of which there are always many, last.
 */
export const differences = [
  ...([
    "none",
    "order",
    "coats",
    "way",
    "thickness",
    "dipping",
    "drying",
    "place",
    "layer",
  ] as const),
  ...(["resist", "removal", "firing", "cone", "cooling", "atmosphere", "fire", "bisque"] as const),
  ...(["clay", "texture", "shape", "glaze"] as const),
] as const;
export type Difference = (typeof differences)[number];

/** What nobody held equal: no part of a make-up, but it may matter. */
export const uncontrolled = ["batch", "day", "load", "maker", "set", "shelf"] as const;
export type Uncontrolled = (typeof uncontrolled)[number];

/** Another tile, seen from one that it is at most one change apart from. */
export interface Apart {
  readonly tile: CatalogueTile;
  readonly difference: Difference;
  /** From the tile that was asked about to this one; steps are those of `comparedSteps`. */
  readonly change: Change;
}

/** What else there is to know of two tiles that are compared. */
export interface Beside {
  /** Between the colours of their photographs (CIEDE2000); null where one was not measured. */
  readonly deltaE00: number | null;
  readonly uncontrolled: readonly Uncontrolled[];
  /** What nobody wrote down of either, so that it may have differed. */
  readonly unknown: readonly Aspect[];
}

/**
 * Makes the function that finds what is at most one change apart from a tile, in the order of the
 * catalogue; nothing for a tile without a result.
 */
export const apartFinder = rememberFor(
  ({ tiles }: Catalogue): ((tile: CatalogueTile) => readonly Apart[]) => {
    const recorded = tiles.filter(({ results }) => results.length > 0);
    const find = neighbourFinder(recorded, ({ makeUp }) => makeUp);
    return (tile) =>
      find(tile).map(({ other, change }) => ({
        tile: other,
        change,
        difference: differenceOf(change, tile, other),
      }));
  },
);

/** Another tile, which differs in exactly two facets. */
export interface TwoApart {
  readonly tile: CatalogueTile;
  readonly changes: readonly [FacetChange, FacetChange];
  /** What differs, in a word each. */
  readonly differences: readonly [Difference, Difference];
}

/**
 * Makes the function that finds what differs from a tile in exactly two things, in the order of the
 * catalogue; nothing for a tile without a result. Two other glazes are another coat stack, and no
 * two changes of this one.
 */
export const twoApartOf = rememberFor(
  ({ tiles }: Catalogue): ((tile: CatalogueTile) => readonly TwoApart[]) => {
    const recorded = tiles.filter(({ results }) => results.length > 0);
    const find = twoApartFinder(recorded, ({ makeUp }) => makeUp);
    return (tile) =>
      find(tile)
        .map(({ other, changes }): TwoApart => {
          const [one, two] = changes.map((change) => differenceOf(change, tile, other));
          return { tile: other, changes, differences: [one ?? "none", two ?? "none"] };
        })
        .filter(({ differences: both }) => both.some((difference) => difference !== "glaze"));
  },
);

/** Holds two tiles beside each other. */
export function besideEachOther(tile: CatalogueTile, other: CatalogueTile): Beside {
  return {
    deltaE00:
      tile.colour && other.colour ? differenceCiede2000(tile.colour.lab, other.colour.lab) : null,
    uncontrolled: uncontrolledOf(tile, other),
    unknown: unknownOfBoth(tile.makeUp, other.makeUp),
  };
}

/** What is not the same on all of some tiles beside what they are compared by. */
export interface NotHeldEqual {
  readonly uncontrolled: readonly Uncontrolled[];
  /** What nobody wrote down of any of them, so that it may have differed. */
  readonly unknown: readonly Aspect[];
}

/** What any of them differs in from the first is what not all of them have in common. */
export function notHeldEqual([first, ...others]: readonly CatalogueTile[]): NotHeldEqual {
  const differing = new Set(first ? others.flatMap((tile) => uncontrolledOf(first, tile)) : []);
  const unknown = first ? others.flatMap(({ makeUp }) => unknownOfBoth(first.makeUp, makeUp)) : [];
  return {
    uncontrolled: uncontrolled.filter((each) => differing.has(each)),
    unknown: [...new Set(unknown)],
  };
}

const byAspect: Readonly<Record<Exclude<Aspect, "what">, Difference>> = {
  area: "place",
  atmosphere: "atmosphere",
  bisque: "bisque",
  clay: "clay",
  coats: "coats",
  cone: "cone",
  cooling: "cooling",
  dipping: "dipping",
  dried: "drying",
  fire: "fire",
  shape: "shape",
  texture: "texture",
  thickness: "thickness",
  way: "way",
};

function differenceOf(change: Change, tile: CatalogueTile, other: CatalogueTile): Difference {
  switch (change.kind) {
    case "none":
    case "order":
      return change.kind;
    case "facet":
      return change.aspect === "what"
        ? kindOfStep(stepAt(tile, change.step))
        : byAspect[change.aspect];
    default: {
      const kind = kindOfStep(stepAt(change.kind === "more" ? other : tile, change.step));
      return kind === "glaze" ? "layer" : kind;
    }
  }
}

/** The steps of a tile as make-ups count them: coats on coats of the same are one. */
export const comparedSteps = rememberFor(
  ({ steps }: Pick<CatalogueTile, "steps">): readonly TileStep[] => mergeCoats(steps),
);

/** One of them by its place. */
export function stepAt(
  tile: Pick<CatalogueTile, "steps">,
  place: number | null,
): TileStep | undefined {
  return place === null ? undefined : comparedSteps(tile)[place];
}

function kindOfStep(step: TileStep | undefined): Difference {
  switch (step?.step) {
    case "resist":
      return "resist";
    case "remove":
      return "removal";
    case "fired":
      return "firing";
    default:
      return "glaze";
  }
}

/** What of two tiles differs that is no part of a make-up. A maker who is not shown is not told apart from another. */
function uncontrolledOf(a: CatalogueTile, b: CatalogueTile): readonly Uncontrolled[] {
  const [load, otherLoad] = [loadsOf(a), loadsOf(b)];
  const differs: Readonly<Record<Uncontrolled, boolean>> = {
    batch: a.clayBatch !== b.clayBatch,
    day: a.glazed !== b.glazed,
    load: load.loads !== otherLoad.loads,
    maker: a.maker !== null && b.maker !== null && a.maker.name !== b.maker.name,
    set: a.set?.id !== b.set?.id,
    shelf: load.shelves !== otherLoad.shelves,
  };
  return uncontrolled.filter((each) => differs[each]);
}

/** A tile is held beside many others; its loads are the same each time. */
const loadsOf = rememberFor(({ steps }: CatalogueTile) => {
  const firings = firingsOf(steps).filter(({ kind }) => kind !== "bisque");
  return {
    loads: firings.map(({ page }) => page?.id).join("\n"),
    shelves: firings.map(({ shelf }) => shelf).join("\n"),
  };
});
