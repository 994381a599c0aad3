import { expect, test } from "vitest";
import type { Making, MixedGlaze } from "../../src/chemistry/mixed-glazes.ts";
import { rawRecipeFinder } from "../../src/chemistry/raw-batch.ts";

const glaze = (id: string, making: Making): MixedGlaze => ({ id, name: id, making });
const recipe = (
  parts: Readonly<Record<string, number>>,
  added: Readonly<Record<string, number>> = {},
) =>
  ({
    kind: "recipe",
    recipe: {
      ingredients: Object.entries(parts).map(([material, n]) => ({ material, parts: n })),
      additions: Object.entries(added).map(([material, n]) => ({ material, parts: n })),
    },
  }) as const;
const blend = (parts: Readonly<Record<string, number>>, by: "volume" | "weight" = "weight") =>
  ({
    kind: "blend",
    by,
    parts: Object.entries(parts).map(([id, n]) => ({ glaze: id, parts: n })),
  }) as const;

const find = rawRecipeFinder([
  glaze("clear", recipe({ feldspar: 60, silica: 40 })),
  glaze("Blue", recipe({ feldspar: 80, whiting: 10 }, { cobalt: 100 / 9 })),
  glaze("mid", blend({ clear: 1, BLUE: 3 })),
  glaze("nearly-clear", blend({ clear: 1, mid: 1 })),
  glaze("spoons", blend({ clear: 1, Blue: 1 }, "volume")),
  glaze("of-spoons", blend({ clear: 1, spoons: 1 })),
  glaze("jar", { kind: "bought" }),
  glaze("half-jar", blend({ clear: 1, jar: 1 })),
  glaze("round", blend({ round: 1, clear: 1 })),
]);

test("a recipe is weighed out as it is written", () => {
  expect(find("blue")?.additions).toEqual([{ material: "cobalt", parts: 100 / 9 }]);
});

test("a blend by dry weight is weighed out of all the materials in it, most first", () => {
  // Blue is 80, 10 and 10 in a hundred of its dry weight: 9 × 11.1 per cent comes to 10.
  expect(find("mid")?.ingredients).toEqual([
    { material: "feldspar", parts: expect.closeTo(15 + 60, 9) },
    { material: "silica", parts: expect.closeTo(10, 9) },
    { material: "whiting", parts: expect.closeTo(7.5, 9) },
    { material: "cobalt", parts: expect.closeTo(7.5, 9) },
  ]);
  const parts = find("nearly-clear")?.ingredients.map((portion) => portion.parts) ?? [];
  expect(parts.reduce((sum, n) => sum + n, 0)).toBeCloseTo(100, 9);
});

test("a blend of glazes that call one material by two words weighs it out once", () => {
  const findById = rawRecipeFinder(
    [
      glaze("clear", recipe({ feldspar: 60, silica: 40 })),
      glaze("matt", recipe({ feldspar: 80, flint: 20 })),
      glaze("both", blend({ clear: 1, matt: 1 })),
    ],
    (word) => (word === "flint" ? "silica" : word),
  );
  expect(findById("both")?.ingredients).toEqual([
    { material: "feldspar", parts: expect.closeTo(70, 9) },
    { material: "silica", parts: expect.closeTo(30, 9) },
  ]);
});

test("what holds a glaze of unknown dry weight has no recipe", () => {
  for (const id of ["spoons", "of-spoons", "jar", "half-jar", "round", "nobody"])
    expect(find(id)).toBeUndefined();
});
