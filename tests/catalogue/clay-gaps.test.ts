import { expect, it } from "vitest";
import { conesMissingFor, shadesMissingAt } from "../../src/catalogue/clay-gaps.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { idKey } from "../../src/terms/ids.ts";
import { cone, cones } from "../checks/support.ts";

/** Tiles by their clay and cone. */
const fired = [
  ["red", "04", 3],
  ["red", "10", 1],
  ["buff", "6", 2],
  ["buff", "10", 1],
] as const;

const tiles = fired.flatMap(([clay, at, many]) =>
  Array.from({ length: many }, (_, i) => ({ id: `${clay}-${at}-${i}`, clay, cone: cone(at) })),
);

const catalogue = {
  tileById: new Map(tiles.map((tile) => [idKey(tile.id), tile])),
  cones: ["04", "6", "10"].map((name) => ({ cone: cone(name), url: `cones/${name}.html` })),
  clays: [
    { id: "red", shade: { shade: "dark", by: "colour" }, cones: cones("04-10") },
    { id: "buff", shade: { shade: "buff", by: "colour" }, cones: cones("5-7") },
    { id: "bin", shade: null, cones: cones("04-6") },
  ].map((clay) => ({
    ...clay,
    tiles: tiles.filter((tile) => tile.clay === clay.id).map(({ id }) => id),
  })),
} as unknown as Catalogue;

const at = (name: string) =>
  shadesMissingAt(catalogue.cones.find((each) => each.cone === name) as never, catalogue);

it("a cone without a tile on dark clay leads to the cone that has one and is fewest cones away", () => {
  expect(at("6")).toEqual([
    { shade: "dark", nearest: { cone: "10", url: "cones/10.html", tiles: 1 } },
  ]);
  expect(at("10")).toEqual([]);
});

it("nothing is said of a look that no clay of the studio has", () => {
  expect(at("04").map(({ shade }) => shade)).toEqual(["buff"]);
});

it("a clay leads from every cone that it is for and was not fired to, and from no other", () => {
  const [red, buff, bin] = catalogue.clays.map((clay) =>
    conesMissingFor(clay, catalogue).map((gap) => `${gap.cone}: ${gap.nearest.cone}`),
  );
  expect([red, buff, bin]).toEqual([["6: 10"], [], []]);
});
