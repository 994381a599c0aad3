/** The wall in an order: by how far it ran, by date. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { captionOrder, makeOrders, tellOrder } from "../../../src/browser/wall/order.ts";

const days = ["1 May 2026", "2 May 2026"];

const facetsOf = (ran: readonly (number | null)[], glazed: readonly (number | null)[] = []) => ({
  codes: ran.map((_, i) => `T-${i}`),
  ran,
  glazed,
  days,
});

const runs = fc.array(fc.option(fc.integer({ min: 0, max: 4 })), { maxLength: 20 });

property.prop([runs, fc.array(fc.boolean(), { minLength: 20, maxLength: 20 })])(
  "tiles go by how far they ran, equals by code, and those of which nobody knows come last",
  (ran, chosen) => {
    const tiles = Uint32Array.from([...ran.keys()].filter((tile) => chosen[tile]));
    const ordered = makeOrders(facetsOf(ran))(tiles, "run");
    const expected = [...tiles].sort((a, b) => (ran[b] ?? -1) - (ran[a] ?? -1) || a - b);
    expect([...ordered.tiles]).toEqual(expected);
    expect(ordered.known).toBe(expected.filter((tile) => ran[tile] !== null).length);
  },
);

const ordered = (tiles: readonly number[], known: number) => ({
  tiles: Uint32Array.from(tiles),
  known,
});

describe("the wall", () => {
  test("has a line before tiles that did not run, and before those of which nobody knows", () => {
    const facets = facetsOf([12, 0, null]);
    const { lines } = captionOrder(ordered([0, 1, 2], 2), "run", facets);
    expect([...lines]).toEqual([
      [1, "Did not run"],
      [2, "No run recorded"],
    ]);
    expect(captionOrder(ordered([0], 1), "run", facets).lines.size).toBe(0);
  });

  test("says of each the day it was glazed", () => {
    const facets = facetsOf([null, null, null], [0, null, 1]);
    const { tiles, known } = makeOrders(facets)(Uint32Array.of(0, 1, 2), "date");
    const { at, lines } = captionOrder({ tiles, known }, "date", facets);
    expect([0, 1, 2].map(at)).toEqual(["2 May 2026", "1 May 2026", ""]);
    expect([...lines]).toEqual([[2, "No date recorded"]]);
  });

  test("says its order, and how many tiles come last for want of it", () => {
    expect(tellOrder(ordered([0, 1], 2), "run")).toBe(", the longest run first.");
    expect(tellOrder(ordered([0, 1], 1), "run")).toBe(
      ", the longest run first. 1 tile has no run recorded; it comes last.",
    );
    expect(tellOrder(ordered([0, 1], 0), "date")).toBe(
      ", the newest first. 2 tiles have no date recorded; they come last.",
    );
    expect(tellOrder(ordered([0], 1), "code")).toBe(", by code.");
  });
});
