/**
 * Records as they are meant: for every kind of record, values at random of every field it has. The
 * fields are those of the schemas: a test says so.
 */
import fc from "fast-check";
import * as choices from "../../src/terms/choices.ts";
import { chartedCones } from "../../src/terms/cones.ts";

/** What somebody means to write: words, numbers as words, lists and maps of them. */
export type Meant = string | readonly Meant[] | { readonly [key: string]: Meant };
export type MeantRecord = { readonly [key: string]: Meant };

const digits = (from: number, to: number) => fc.integer({ min: from, max: to }).map(String);
/** A number of one or two decimals, now and then none. */
const decimal = (from: number, to: number) =>
  fc
    .tuple(fc.integer({ min: from, max: to - 1 }), fc.integer({ min: 0, max: 99 }))
    .map(([whole, part]) =>
      part === 0 ? `${whole}` : `${whole}.${String(part).padStart(2, "0")}`,
    );
const oneOf = (words: readonly string[]) => fc.constantFrom(...words);
/** What texts of own words are made of. */
export const ownWords = [
  "rim",
  "the glaze ran",
  "Rowan",
  "blue-grey",
  "as on TB-014",
  "thin here",
  "n° 7",
  "é",
];
const words = fc
  .array(oneOf(ownWords), { minLength: 1, maxLength: 3 })
  .map((parts) => parts.join(" "));
const id = fc
  .tuple(oneOf(["soot", "chalk", "buff", "tidewrack", "g-10", "whiting"]), digits(1, 40))
  .map(([word, number]) => `${word}-${number}`);
const jar = digits(1, 40);
const code = digits(1, 400).map((number) => `TB-${number}`);
const day = fc
  .tuple(digits(2020, 2029), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map(([y, m, d]) => `${y}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`);
const yesNo = oneOf(["yes", "no"]);
const cone = oneOf(chartedCones).map((name) => name.replace("½", ".5"));
const range = fc.oneof(
  cone,
  fc.tuple(cone, cone).map(([a, b]) => `${a}-${b}`),
);
const some = (of: fc.Arbitrary<Meant>) => fc.array(of, { minLength: 1, maxLength: 3 });
const oneOrSome = (of: fc.Arbitrary<Meant>) => fc.oneof(of, some(of));

type Fields = Readonly<Record<string, fc.Arbitrary<Meant>>>;

/** A map of which some fields must be there and the others may be. */
const map = (required: Fields, optional: Fields = {}): fc.Arbitrary<MeantRecord> =>
  fc.record({ ...required, ...optional } as Record<string, fc.Arbitrary<Meant>>, {
    requiredKeys: Object.keys(required),
  }) as fc.Arbitrary<MeantRecord>;

/** A map whose keys are of its author's own. */
const byKey = (keys: fc.Arbitrary<string>, of: fc.Arbitrary<Meant>): fc.Arbitrary<MeantRecord> =>
  fc.dictionary(keys, of, { minKeys: 1, maxKeys: 3 });

const box = fc
  .tuple(decimal(0, 40), decimal(0, 40), decimal(50, 99), decimal(50, 99))
  .map((edges) => [...edges] as Meant);
const place = { where: oneOrSome(oneOf(choices.areas)), detail: words };
const coating = {
  coats: digits(1, 9),
  cover: oneOf(choices.covers),
  by: oneOf(choices.ways),
  ...place,
  thickness: oneOf(choices.thicknesses),
  seconds: decimal(1, 9),
  gravity: decimal(1, 2),
  dried: oneOf(choices.dryings),
  over: oneOrSome(id),
  "touch-up": yesNo,
};
const step = fc.oneof(
  map({ glaze: fc.oneof(id, jar) }, coating),
  map({ fade: map({ from: id, to: id }, { along: words }) }, coating),
  map({ resist: oneOf(choices.resists) }, place),
  map({ remove: oneOf(choices.removals) }, place),
  map({ fired: fc.oneof(id, oneOf(choices.kindsOfFiring)) }, { shelf: oneOf(choices.shelves) }),
);
const observation = {
  surface: oneOrSome(oneOf(choices.surfaces)),
  effects: oneOrSome(oneOf(choices.effects)),
  faults: oneOrSome(oneOf([...choices.faults, "none"])),
  run: decimal(0, 90),
};
const result = map(
  {},
  { after: id, ...observation, again: oneOf(choices.agains), "next-time": words },
).filter((found) => Object.keys(found).length > 0);
const photo = map({ crop: box }, { alt: words, grey: fc.oneof(box, fc.constant("no")) });
const figure = fc.oneof(
  map({
    element: oneOf(choices.leachElements),
    amount: decimal(0, 9),
    unit: oneOf(choices.leachUnits),
  }),
  map({ element: words, below: decimal(1, 9), unit: words }),
);
const leachTests = some(
  map(
    {
      on: day,
      laboratory: words,
      method: oneOf(choices.leachMethods),
      ware: words,
      fired: words,
      found: some(figure),
    },
    { report: words },
  ),
);
const shared = {
  formed: day,
  glazed: day,
  maker: id,
  clay: id,
  "clay-batch": words,
  texture: oneOf(choices.textures),
  shape: oneOf(choices.shapes),
  angle: digits(0, 180),
  photo,
};
const parts = (key: string) => some(map({ [key]: id, parts: decimal(1, 90) }));
const glazeFields = { name: words, kind: oneOf(choices.kindsOfGlaze) };
const glazeMore = {
  cones: range,
  surface: oneOf(choices.surfaces),
  cover: oneOf(choices.opacities),
  moves: oneOf(choices.movements),
  tone: oneOf(choices.tones),
  label: oneOrSome(oneOf(choices.labelClaims)),
  stocked: yesNo,
  listed: yesNo,
  "weight-per-coat": decimal(1, 3),
  "leach-tests": leachTests,
};
const span = fc.tuple(decimal(10, 90), decimal(300, 800)).map((ends) => [...ends] as Meant);
const address = oneOf(["https://weir-lane.example/tiles", "https://example.org"]);
const rangeOfCodes = fc
  .integer({ min: 1, max: 400 })
  .map((first) => `TB-${first}..TB-${first + 9}`);
const witness = fc.oneof(cone, byKey(digits(1, 9), oneOf(["standing", "bending", "bent", "down"])));

/** By kind of record; every field of each comes up. */
export const meant: Readonly<Record<string, fc.Arbitrary<MeantRecord>>> = {
  tile: map(
    { layers: some(step) },
    {
      ...shared,
      photo: fc.oneof(photo, map({ file: fc.constant("IMG_2045.HEIC") }, { alt: words })),
      result: fc.oneof(result, some(result)),
      later: some(map({ on: day }, observation)),
      "leach-tests": leachTests,
      fate: oneOf(choices.fates),
      "show-notes": yesNo,
      formerly: some(code),
    },
  ),
  set: map(
    { name: words },
    {
      kind: oneOf(choices.kindsOfSet),
      teacher: id,
      begins: day,
      ends: day,
      listed: yesNo,
      link: fc.constant("q7mzk2v9xw4trh6npb3cyd"),
      defaults: map({ clay: id }, shared),
      jars: byKey(jar, id),
      codes: oneOrSome(fc.oneof(code, rangeOfCodes)),
      control: code,
    },
  ),
  firing: map(
    { kind: oneOf(choices.kindsOfFiring) },
    {
      on: day,
      kiln: words,
      "heated-by": oneOf(choices.heatSources),
      atmosphere: oneOf(choices.atmospheres),
      cone,
      witness: byKey(oneOf(choices.shelves), witness),
      tiles: byKey(oneOf(choices.shelves), oneOrSome(fc.oneof(code, rangeOfCodes))),
      schedule: some(
        map({ to: decimal(100, 1300) }, { rate: decimal(-150, 400), hold: digits(0, 90) }),
      ),
      unit: oneOf(["C", "F"]),
      log: fc.constant("g-1020.csv"),
      "log-unit": oneOf(["C", "F"]),
    },
  ),
  glaze: fc.oneof(
    map(
      { ...glazeFields, bought: map({ maker: words }, { range: words, colour: words }) },
      glazeMore,
    ),
    map(
      { ...glazeFields, ingredients: parts("material") },
      { ...glazeMore, additions: parts("material") },
    ),
    map(
      { ...glazeFields, blend: parts("glaze") },
      { ...glazeMore, by: oneOf(["volume", "weight"]) },
    ),
  ),
  clay: map(
    { name: words },
    {
      cones: range,
      colour: words,
      shade: oneOf(choices.shades),
      expansion: fc.oneof(decimal(1, 9), map({ mean: decimal(1, 9) }, { between: span })),
      between: span,
      absorption: decimal(0, 20),
      reclaim: yesNo,
    },
  ),
  material: fc.oneof(
    map(
      { name: words },
      {
        formula: fc.constant("K2O·Al2O3·6SiO2"),
        cautions: oneOrSome(words),
        price: decimal(0, 90),
      },
    ),
    map(
      { name: words, analysis: byKey(oneOf(["SiO2", "Al2O3", "K2O", "loss"]), decimal(0, 99)) },
      { cautions: oneOrSome(words), frit: yesNo, price: decimal(0, 90) },
    ),
  ),
  page: map({ title: words }),
  studio: map(
    { format: fc.constant("1"), studio: words },
    {
      address,
      repository: address,
      licence: words,
      temperature: oneOf(["celsius", "fahrenheit"]),
      "handing-in": fc.oneof(
        words,
        oneOf(choices.waysOfHandingIn),
        map({ by: oneOf(choices.waysOfHandingIn) }, { words }),
      ),
      welcome: words,
      website: fc.constant("https://eelgate.example/"),
      mark: map({ file: fc.constant("mark.svg"), alt: words }),
      accent: fc.constant("#2f7d6b"),
      photo: map({ crop: box }, { grey: fc.oneof(box, fc.constant("no")) }),
      makers: byKey(
        id,
        map(
          { name: words },
          {
            shown: oneOf(choices.namesShown),
            common: some(oneOf(["Rowan", "rim"])),
            "commits-as": some(words),
          },
        ),
      ),
    },
  ),
};
