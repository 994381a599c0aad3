/** Make-ups of tiles that were made up at random, or by hand. */
import { fc } from "@fast-check/vitest";
import { firingFactsOf } from "../../src/likeness/firing-facts.ts";
import { type MakeUp, makeUpOf } from "../../src/likeness/make-up.ts";
import type { Tile, TileStep } from "../../src/records/archive.ts";
import type { FiringRecord } from "../../src/records/firing.ts";
import { archive, coat, cone, fired, firing, removed, resist, tile } from "../checks/support.ts";

const schedule = [{ to: 1215, rate: 60 }] as unknown as FiringRecord["schedule"];
const slow = [
  { to: 1200, rate: 60 },
  { to: 900, rate: -50 },
] as unknown as FiringRecord["schedule"];

export const firings = [
  firing("b-1", { kind: "bisque", cone: cone("06") }),
  firing("g-1", { cone: cone("6"), atmosphere: "oxidation", heatedBy: "electric", schedule }),
  firing("g-2", { cone: cone("6"), atmosphere: "oxidation", heatedBy: "gas", schedule }),
  firing("g-slow", {
    cone: cone("6"),
    atmosphere: "oxidation",
    heatedBy: "electric",
    schedule: slow,
  }),
  firing("g-red", { cone: cone("6"), atmosphere: "reduction", heatedBy: "gas", schedule }),
  firing("g-salt", { cone: cone("6"), atmosphere: "oxidation", heatedBy: "salt", schedule }),
  firing("g-unwritten", { cone: cone("6") }),
  firing("g-unwritten-too", { cone: cone("6") }),
  firing("g-cones", {
    cone: cone("6"),
    atmosphere: "oxidation",
    heatedBy: "electric",
    schedule,
    witness: { top: { read: "cone", cone: cone("5") }, bottom: { read: "cone", cone: cone("6") } },
  }),
];

const factsOf = firingFactsOf(archive({ firings }), new Map());

export const makeUp = (one: Tile): MakeUp => makeUpOf(one, factsOf);

/** A tile of buff clay with these steps. */
export function made(steps: readonly TileStep[], about: Parameters<typeof tile>[2] = {}): Tile {
  return tile("T-1", steps, { clay: "buff", ...about });
}

const anyCoat = fc
  .record({
    glaze: fc.constantFrom("soot", "chalk"),
    coats: fc.constantFrom(1, 2, null),
    by: fc.constantFrom("brush" as const, "dip" as const, null),
    where: fc.constantFrom(["all"] as const, ["top"] as const),
    dried: fc.constantFrom("touch-dry" as const, "wet-on-wet" as const),
    seconds: fc.constantFrom(3, null),
  })
  .map(({ glaze, ...more }) => coat(glaze, more));

const anyStep: fc.Arbitrary<TileStep> = fc.oneof(
  { weight: 4, arbitrary: anyCoat },
  fc.constantFrom(fired("b-1", "bisque"), fired(null, "bisque"), resist("wax"), removed("wipe")),
  fc
    .record({
      load: fc.constantFrom(...firings.slice(1).map(({ id }) => id), null),
      shelf: fc.constantFrom("top", "bottom", null),
    })
    .map(({ load, shelf }) => ({ ...fired(load), shelf })),
);

/** Few choices, so that like tiles are met as often as unlike ones. */
export const anyTile = fc
  .record({
    steps: fc.array(anyStep, { minLength: 1, maxLength: 3 }),
    clay: fc.constantFrom("buff", undefined),
    texture: fc.constantFrom("smooth", "combed", undefined),
  })
  .map(({ steps, clay, texture }) =>
    tile("T-1", steps, { ...(clay && { clay }), ...(texture && { texture }) }),
  );

/** What may be done to the steps of a tile to make another that is not far from it. */
const anyEdit: fc.Arbitrary<(steps: readonly TileStep[]) => readonly TileStep[]> = fc.oneof(
  fc
    .tuple(fc.nat(4), fc.constantFrom("brush" as const, "dip" as const))
    .map(([i, by]) => (steps: readonly TileStep[]) => {
      const step = steps[i];
      return step?.step === "coat" ? steps.with(i, { ...step, by }) : steps;
    }),
  fc.nat(4).map((i) => (steps: readonly TileStep[]) => steps.toSpliced(i, 1)),
  fc.tuple(fc.nat(4), anyStep).map(
    ([i, step]) =>
      (steps: readonly TileStep[]) =>
        steps.toSpliced(i, 0, step),
  ),
  fc.tuple(fc.nat(4), anyStep).map(
    ([i, step]) =>
      (steps: readonly TileStep[]) =>
        steps.toSpliced(i, 1, step),
  ),
  fc.tuple(fc.nat(4), fc.nat(4)).map(([i, j]) => (steps: readonly TileStep[]) => {
    const [a, b] = [steps[i], steps[j]];
    return a && b ? steps.with(i, b).with(j, a) : steps;
  }),
  fc.tuple(fc.nat(4), fc.nat(4)).map(([i, j]) => (steps: readonly TileStep[]) => {
    const moved = steps[i];
    return moved ? steps.toSpliced(i, 1).toSpliced(j, 0, moved) : steps;
  }),
);

/** A tile of up to five steps, and others that were made from it by an edit or two of its steps. */
export const anyFamily = fc
  .record({
    first: fc.array(anyStep, { minLength: 2, maxLength: 5 }),
    others: fc.array(
      fc.record({
        edits: fc.array(anyEdit, { maxLength: 2 }),
        texture: fc.constantFrom("smooth", "smooth", "combed"),
      }),
      { maxLength: 8 },
    ),
  })
  .map(({ first, others }) => [
    made(first),
    ...others.map(({ edits, texture }) =>
      made(
        edits.reduce<readonly TileStep[]>((steps, edit) => edit(steps), first),
        { texture },
      ),
    ),
  ]);
