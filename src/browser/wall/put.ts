/** Puts tiles on the wall in the order that was asked for, and says which one it is. */
import type { Facets } from "../../publish/facets-file.ts";
import type { Sort } from "../../terms/sorts.ts";
import { type Asked, type Colours, captionTiles, putNearestFirst, tellApart } from "./near.ts";
import { captionOrder, makeOrders, type Ordered, type OwnSort, tellOrder } from "./order.ts";
import { tellNear, tellTrust } from "./result.ts";
import type { Captions } from "./tiles.ts";

/** Tiles in an order. */
export interface Put {
  readonly tiles: Uint32Array;
  readonly captions: Captions;
  /** What follows the count: the order in words. */
  readonly told: readonly (Node | string)[];
  /** Which differences between colours mean nothing, where a colour was asked for. */
  readonly trust: readonly Node[];
}

/** @param unmeasured how many more tiles would be there, had their colour been measured */
export type PutInOrder = (
  tiles: Uint32Array,
  sort: Sort,
  asked: Asked | undefined,
  unmeasured: number,
) => Put;

/** @param root the way from this page to the root of the site */
export function makePutter(facets: Facets, colours: Colours, root: string): PutInOrder {
  const order = makeOrders(facets);
  return (tiles, sort, asked, unmeasured) => {
    if (sort !== "near") {
      const put = putInOwn(order(tiles, sort), sort, facets);
      if (!asked) return sort === "code" ? { ...put, told: [] } : put;
      const beside = tellNear(besideCode, asked, facets, unmeasured, root);
      return {
        ...put,
        captions: apartBesides(put, asked, colours),
        told: [...put.told, ...beside],
      };
    }
    if (!asked) throw new Error("no colour was asked for");
    const inOrder = putNearestFirst(tiles, asked, colours);
    const captions = captionTiles(inOrder, asked, facets.trust.difference);
    return {
      tiles: inOrder.tiles,
      captions,
      told: tellNear(", nearest first to ", asked, facets, unmeasured, root),
      trust: [tellTrust(asked, facets, captions.same)],
    };
  };
}

const besideCode = " Below each code, how far its colour is from ";

function putInOwn(ordered: Ordered, sort: OwnSort, facets: Facets): Put {
  const captions = captionOrder(ordered, sort, facets);
  return { tiles: ordered.tiles, captions, told: [tellOrder(ordered, sort)], trust: [] };
}

/** The captions of an order, each with how far the tile is from the colour asked for. */
function apartBesides({ tiles, captions }: Put, asked: Asked, colours: Colours): Captions {
  const apartAt = (place: number) => tellApart(asked, tiles[place] ?? 0, colours);
  return {
    at: (place) => [captions.at(place), apartAt(place)].filter(Boolean).join(", "),
    lines: captions.lines,
  };
}
