import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Findings, RecordHistory } from "../../../src/catalogue/findings.ts";
import type { RecordVersion } from "../../../src/catalogue/history/entries.ts";
import {
  isSameRecipe,
  type RecipeNames,
  recipeChanges,
} from "../../../src/catalogue/history/recipe-changes.ts";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import type { GlazeRecord } from "../../../src/records/glaze.ts";
import {
  recipeChangeWords,
  recipeHistory,
  recipeSinceNote,
  recipeSinceWords,
} from "../../../templates/words/glaze/history.ts";
import { archive, coat, fired, firing, glaze, set, tile } from "../../checks/support.ts";

type Parts = readonly (readonly [string, number])[];

const recipe = (ingredients: Parts, additions: Parts = []): GlazeRecord => ({
  name: "Tidewrack",
  kind: "glaze",
  ingredients: ingredients.map(([material, parts]) => ({ material, parts })),
  ...(additions.length > 0 && {
    additions: additions.map(([material, parts]) => ({ material, parts })),
  }),
});

const names: RecipeNames = {
  material: (written) => {
    const id = written === "flint" ? "silica" : written;
    return id.startsWith("hidden") ? null : { id, name: id.toUpperCase() };
  },
  glaze: (written) => ({ id: written, name: written.toUpperCase() }),
};

describe("what changed in a recipe", () => {
  const told = (a: GlazeRecord, b: GlazeRecord) =>
    recipeChanges(a, b, names).map(recipeChangeWords);

  test("is told by its parts, before and after", () => {
    const before = recipe(
      [
        ["whiting", 20],
        ["silica", 30],
        ["hidden-one", 5],
      ],
      [["rutile", 2]],
    );
    const after = recipe(
      [
        ["whiting", 18],
        ["talc", 1],
        ["hidden-one", 6],
      ],
      [["rutile", 4]],
    );
    expect(told(before, after)).toEqual([
      "WHITING, 20 → 18 parts; taken out: SILICA, 30 parts; something that is not shown here, 5 → 6 parts; RUTILE as an addition, 2 → 4 parts; added: TALC, 1 part",
    ]);
  });

  test("is told of a blend, and of how it is measured", () => {
    const blend = (parts: number, by?: "volume"): GlazeRecord => ({
      ...{ name: "Foam", kind: "glaze" },
      blend: [
        { glaze: "chalk", parts: 50 },
        { glaze: "soot", parts },
      ],
      ...(by && { by }),
    });
    expect(told(blend(50), blend(40, "volume"))).toEqual([
      "SOOT, 50 → 40 parts",
      "measured by volume now",
    ]);
  });

  test("is nothing where a material is called by its other name", () => {
    expect(told(recipe([["flint", 30]]), recipe([["silica", 30]]))).toEqual([]);
  });

  test("makes another glaze only where the shares are others", () => {
    const parts = fc.array(
      fc.tuple(fc.constantFrom("whiting", "silica", "talc"), fc.integer({ min: 1, max: 90 })),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 2, max: 9 }), (ingredients, additions, times) => {
        const one = recipe(ingredients, additions);
        const more = recipe(
          ingredients.map(([id, n]) => [id, n * times] as const),
          additions,
        );
        expect(isSameRecipe(one, more, names)).toBe(true);
        const other = recipe([...ingredients, ["kaolin", 1]], additions);
        expect(isSameRecipe(one, other, names)).toBe(false);
        expect(isSameRecipe(one, recipe(ingredients, [...additions, ["kaolin", 1]]), names)).toBe(
          false,
        );
      }),
    );
  });
});

describe("a tile that was glazed before a recipe was changed", () => {
  const [old, now] = [
    recipe([
      ["whiting", 20],
      ["silica", 80],
    ]),
    recipe([
      ["whiting", 30],
      ["silica", 70],
    ]),
  ];
  const versions = [
    { day: "2026-10-06", blob: "v1", before: [] },
    { day: "2026-11-03", blob: "v2", before: ["v1"] },
  ];
  const foam: GlazeRecord = {
    name: "Foam",
    kind: "glaze",
    blend: [{ glaze: "tidewrack", parts: 1 }],
  };

  function catalogueOf(
    given: readonly RecordVersion[],
    records: readonly (GlazeRecord | null)[],
    { current = now, alone = false } = {},
  ) {
    const history: RecordHistory = {
      ...{ path: null, state: "as-committed", first: null, last: null },
      ...{ authors: [], versions: given, photographs: [] },
    };
    const tidewrack = glaze("tidewrack", current);
    const findings: Findings = {
      ...{ pictures: new Map(), chemistry: new Map(), heats: new Map(), notes: new Map() },
      builtInMaterials: [],
      history: new Map([[tidewrack.file, history]]),
      written: {
        tiles: new Map(),
        glazes: new Map(records.map((record, i) => [`v${i + 1}`, record && { record, notes: "" }])),
      },
    };
    const glazed = (
      id: string,
      day: string | undefined,
      of = "tidewrack",
      firings = [fired("g-1")],
    ) => {
      const made = tile(id, [coat(of), ...firings]);
      return { ...made, record: { ...made.record, ...(day && { glazed: day }) }, set: "evening" };
    };
    const whole = archive({
      glazes: [tidewrack, glaze("foam", foam)],
      firings: [firing("g-1", { on: "2026-10-20" }), firing("g-2", { on: "2026-11-20" })],
      sets: [set("evening", { name: "Evening" })],
      tiles: [
        glazed("A", "2026-10-14"),
        glazed("B", "2026-11-03"),
        glazed("C", "2026-09-01"),
        glazed("D", "2026-10-14", "foam"),
        glazed("E", undefined),
        glazed("F", undefined, "tidewrack", [fired("g-2")]),
        glazed("G", undefined, "tidewrack", []),
      ],
    });
    const shown = { unlisted: true, tiles: 7, forFamilies: false };
    return makeCatalogue(whole, findings, alone ? shown : undefined);
  }

  const told = (...given: Parameters<typeof catalogueOf>) =>
    Object.fromEntries(
      [...catalogueOf(...given).recipesSince].map(([url, since]) => [
        url.replace(/^tiles\/|\.html$/gu, ""),
        since.map((one) => `${one.glaze.name}${recipeSinceWords(one)}`),
      ]),
    );

  test("says so, with the day, and no tile that was glazed on that day or later does", () => {
    const changed =
      "Tidewrack was changed after this tile was glazed (on 3 November 2026): what is written there may not be what is on this tile.";
    expect(told(versions, [old, now])).toEqual({
      a: [changed],
      c: [changed],
      d: [changed.replace("Tidewrack", "Tidewrack, which is blended into Foam,")],
      e: [changed],
    });
    expect(recipeSinceNote([{ day: "2026-11-03" }])).toBe(
      "A day is when a change was written down; the bucket itself may have been changed earlier, or later.",
    );
  });

  test("says it of a change that was not committed yet, without a day", () => {
    const [first] = versions;
    expect(told(first ? [first] : [], [old]).a).toEqual([
      "Tidewrack was changed after this tile was glazed: what is written there may not be what is on this tile.",
    ]);
  });

  test("says nothing where the recipe is what it was, or was only written in other parts", () => {
    expect(told(versions, [old, old], { current: old })).toEqual({});
    const twice = recipe([
      ["whiting", 40],
      ["silica", 160],
    ]);
    expect(told(versions, [old, twice], { current: twice })).toEqual({});
    const back = [...versions, { day: "2026-11-09", blob: "v3", before: ["v2"] }];
    expect(Object.keys(told(back, [old, now, old], { current: old }))).toEqual(["b"]);
  });

  test("says nothing of what was tried on the day on which the glaze was first written down", () => {
    const tried = [
      { day: "2026-10-20", blob: "v1", before: [] },
      { day: "2026-10-20", blob: "v2", before: ["v1"] },
    ];
    expect(told(tried, [old, now])).toEqual({});
  });

  test("passes over versions that cannot be read", () => {
    const more = [...versions, { day: "2026-11-09", blob: "v3", before: ["v2"] }];
    expect(told(more, [old, null, now]).a?.[0]).toContain("(on 9 November 2026)");
  });

  test("is told in the site of one set as well, without the day, which has no other word of git", () => {
    const { recipesSince, records } = catalogueOf(versions, [old, now], { alone: true });
    expect(recipesSince.get("tiles/a.html")).toMatchObject([{ day: null }]);
    expect(recipeSinceNote(recipesSince.get("tiles/a.html") ?? [])).toBe(
      "The bucket itself may have been changed earlier, or later.",
    );
    expect(records.size).toBe(0);
  });

  test("and the glaze's page tells the change with both parts", () => {
    const { recipe: story = null } =
      catalogueOf(versions, [old, now]).records.get("glazes/tidewrack.html") ?? {};
    expect(recipeHistory(story)?.lines).toEqual([
      { day: "6 October 2026", words: "written down." },
      {
        day: "3 November 2026",
        words:
          "something that is not shown here, 20 → 30 parts; something that is not shown here, 80 → 70 parts.",
      },
    ]);
  });
});
