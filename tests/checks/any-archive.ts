/** Archives at random, in which names are few, so that rules find something to say. */
import fc from "fast-check";
import type { Area, Cover } from "../../src/terms/choices.ts";
import {
  areas,
  dryings,
  fates,
  kindsOfFiring,
  kindsOfGlaze,
  movements,
  opacities,
  removals,
  resists,
  shapes,
  tones,
} from "../../src/terms/choices.ts";
import { chartedCones, compareCones } from "../../src/terms/cones.ts";
import {
  archive,
  clay,
  coat,
  fired,
  firing,
  glaze,
  loaded,
  material,
  removed,
  resist,
  result,
  set,
  tile,
} from "./support.ts";

const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });
const id = fc.constantFrom("a", "b", "C", "nowhere");
const day = fc.constantFrom("2026-01-01", "2026-02-28", "2026-10-14", "2026-12-31");
const anyCone = fc.constantFrom(...chartedCones);
const range = fc.tuple(anyCone, anyCone).map((ends) => {
  const [from, to] = ends.toSorted(compareCones);
  return { from: from ?? ends[0], to: to ?? ends[1] };
});
const where = fc
  .uniqueArray(fc.constantFrom(...areas), { minLength: 1, maxLength: 3 })
  .map((some) => some as [Area, ...Area[]]);

const step = fc.oneof(
  fc
    .record({
      glaze: fc.oneof(id, fc.tuple(id, id)),
      coats: fc.option(fc.integer({ min: 1, max: 4 })),
      cover: fc.option(fc.constantFrom<Cover>("sparse", "dense")),
      where,
      dried: fc.constantFrom(...dryings),
      over: fc.array(id, { maxLength: 2 }),
      touchUp: fc.boolean(),
    })
    .map(({ glaze: glazes, ...more }) => coat(glazes, more)),
  fc.tuple(fc.constantFrom(...resists), where).map(([what, at]) => resist(what, at)),
  fc.tuple(fc.constantFrom(...removals), where).map(([what, at]) => removed(what, at)),
  fc.tuple(fc.option(id), fc.constantFrom(...kindsOfFiring)).map(([of, kind]) => fired(of, kind)),
);
const load = fc
  .tuple(id, fc.option(fc.constant("top")), fc.constantFrom(...kindsOfFiring))
  .map(([of, shelf, kind]) => loaded(of, shelf, kind));

const about = fc.record(
  {
    formed: day,
    glazed: day,
    clay: id,
    shape: fc.constantFrom(...shapes),
    angle: fc.integer({ min: 0, max: 180 }),
    result: fc.array(maybe(id).map(result), { minLength: 1, maxLength: 3 }),
    later: fc.array(
      day.map((on) => ({ on }) as never),
      { minLength: 1, maxLength: 2 },
    ),
    fate: fc.constantFrom(...fates),
    formerly: fc.array(fc.oneof(id, fc.string({ minLength: 1 })), { minLength: 1, maxLength: 3 }),
  },
  { requiredKeys: [] },
);

const anyTile = fc
  .tuple(
    id,
    fc.array(step, { maxLength: 6 }),
    fc.array(load, { maxLength: 2 }),
    about,
    fc.option(id),
  )
  .map(([code, steps, loads, more, of]) => tile(code, [...steps, ...loads], more, { set: of }));

const anyGlaze = fc
  .tuple(
    id,
    fc.record(
      {
        kind: fc.constantFrom(...kindsOfGlaze),
        cones: range,
        cover: fc.constantFrom(...opacities),
        moves: fc.constantFrom(...movements),
        tone: fc.constantFrom(...tones),
        blend: fc.array(
          id.map((part) => ({ glaze: part, parts: 1 })),
          { minLength: 1, maxLength: 2 },
        ),
      },
      { requiredKeys: [] },
    ),
  )
  .map(([name, more]) => glaze(name, more));

const anyClay = fc
  .tuple(id, fc.record({ cones: range, reclaim: fc.boolean() }, { requiredKeys: [] }))
  .map(([name, more]) => clay(name, more));

const anySchedule = fc.array(
  fc.record({
    to: fc.integer({ min: -20, max: 4000 }),
    rate: maybe(fc.integer({ min: -500, max: 500 })),
    hold: maybe(fc.nat(600)),
  }),
  { minLength: 1, maxLength: 3 },
);

const anyLog = fc
  .array(fc.tuple(fc.nat(2000), fc.nat(2400)), { maxLength: 12 })
  .chain((rows) =>
    fc
      .constantFrom("minutes,°C", "time,temp", "clock,°F", "", "seconds;°C")
      .map((labels) => [labels, ...rows.map((row) => row.join(","))].join("\n")),
  )
  .map((text) => ({ file: "tiles/firings/log.csv", text }));

const anyFiring = fc
  .tuple(
    id,
    fc.record(
      {
        on: day,
        kind: fc.constantFrom(...kindsOfFiring),
        cone: anyCone,
        witness: fc.oneof(
          anyCone.map((cone) => ({ top: { read: "cone" as const, cone } })),
          anyCone.map((cone) => ({
            top: { read: "bends" as const, bends: new Map([[cone, "bending" as const]]) },
          })),
        ),
        tiles: fc.array(id, { minLength: 1 }).map((codes) => ({ top: [codes] })),
        schedule: anySchedule,
        unit: fc.constantFrom("C", "F"),
        "log-unit": fc.constantFrom("C", "F"),
      },
      { requiredKeys: [] },
    ),
    fc.option(anyLog),
  )
  .map(([name, more, log]) => ({ ...firing(name, more), log }));

const anySet = fc
  .tuple(
    id,
    fc.record(
      { begins: day, ends: day, codes: fc.array(fc.array(id, { minLength: 1 })), control: id },
      { requiredKeys: [] },
    ),
  )
  .map(([name, more]) => set(name, more));

export const anyArchive = fc
  .record({
    tiles: fc.array(anyTile, { maxLength: 4 }),
    glazes: fc.array(anyGlaze, { maxLength: 4 }),
    clays: fc.array(anyClay, { maxLength: 3 }),
    firings: fc.array(anyFiring, { maxLength: 4 }),
    sets: fc.array(anySet, { maxLength: 3 }),
    materials: fc.array(
      id.map((name) => material(name)),
      { maxLength: 1 },
    ),
  })
  .map(archive);
