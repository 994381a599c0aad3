import { expect, test } from "vitest";
import { glazeRow, materialRow, type TileRow, tileRow } from "../../src/publish/data/rows.ts";
import { alone, colouredCatalogue, grey } from "../catalogue/colours/colour-support.ts";
import { catalogueOf, clear, mixed } from "../catalogue/mixing/mixing-support.ts";
import { glaze } from "../checks/support.ts";
import { makeDataFiles } from "../support/data-files.ts";

const files = new Map(
  makeDataFiles(
    catalogueOf({
      glazes: [clear, mixed("leaden", { "lead-bisilicate": 70, kaolin: 30 }), glaze("jar")],
    }),
  ).map(({ path, content }) => [path, content]),
);

function rowsOf(name: string): Record<string, unknown>[] {
  return JSON.parse(files.get(`data/${name}.json`) ?? "[]");
}

test("tiles one change apart name each other, with the difference of their colours", () => {
  const catalogue = colouredCatalogue([
    [alone("A"), grey(50)],
    [alone("B", { coats: 3 }), grey(60)],
    [alone("C", { coats: 3, clay: "cream" }), null],
  ]);
  const made = makeDataFiles(catalogue).find(({ path }) => path === "data/tiles.json");
  const rows = JSON.parse(made?.content ?? "[]").map((row: unknown) => tileRow.parse(row));
  const apart = (tile: string, difference: string, deltaE00: unknown) => ({
    ...{ tile, difference, deltaE00 },
    uncontrolled: [],
  });
  const coats = expect.closeTo(9.5, 0);
  expect(rows.map((row: TileRow) => row.oneChange)).toEqual([
    [apart("B", "coats", coats)],
    [apart("A", "coats", coats), apart("C", "clay", null)],
    [apart("B", "clay", null)],
  ]);
});

test("a mixed glaze has its expansion by every set that covers it", () => {
  const rows = rowsOf("glazes").map((row) => glazeRow.parse(row));
  const row = rows.find(({ id }) => id === "clear");
  expect(row?.chemistry?.expansion).toEqual([
    {
      model: "appen",
      perKelvin: expect.any(Number),
      doubt: expect.any(Number),
      between: [20, 400],
      outside: [],
    },
    {
      model: "english-turner",
      perKelvin: expect.any(Number),
      doubt: expect.any(Number),
      between: [25, 90],
      outside: [],
    },
    {
      model: "winkelmann-schott",
      perKelvin: expect.any(Number),
      doubt: expect.any(Number),
      between: [20, 100],
      outside: [],
    },
    {
      model: "mayer-havas",
      perKelvin: expect.any(Number),
      doubt: expect.any(Number),
      between: [0, 100],
      outside: [],
    },
  ]);
  for (const { perKelvin } of row?.chemistry?.expansion ?? []) {
    expect(perKelvin).toBeGreaterThan(4e-6);
    expect(perKelvin).toBeLessThan(9e-6);
  }
  expect(rows.find(({ id }) => id === "jar")?.chemistry).toBeNull();
  expect(row?.chemistry?.typical).toEqual([]);
});

test("a material has what is published of its dangers", () => {
  const rows = rowsOf("materials").map((row) => materialRow.parse(row));
  const of = (id: string) => rows.find((row) => row.id === id)?.cautions.join(" ");
  expect(of("lead-bisilicate")).toMatch(/^There is lead in it, from Lead bisilicate\. Keep/u);
  expect(of("silica")).toMatch(/^Dust of silica is carcinogenic to breathe in/u);
});

test("a glaze has the colour of every tile that has it alone, by the tiles' codes", () => {
  const catalogue = colouredCatalogue([
    [alone("A-2", { coats: 3, clay: "red" }), grey(50)],
    [alone("A-10", { coats: null }), grey(20)],
    [alone("A-1"), null],
  ]);
  const file = makeDataFiles(catalogue).find(({ path }) => path === "data/glazes.json");
  const rows = (JSON.parse(file?.content ?? "[]") as unknown[]).map((row) => glazeRow.parse(row));
  const fire = { cone: "6", atmosphere: "oxidation" };
  expect(rows.find(({ id }) => id === "soot")?.alone).toEqual([
    {
      ...fire,
      tile: "A-10",
      clay: "buff",
      coats: null,
      hex: "#303030",
      lab: [20, 0, 0],
      name: "black",
    },
    { ...fire, tile: "A-2", clay: "red", coats: 3, hex: "#777777", lab: [50, 0, 0], name: "grey" },
  ]);
  expect(rows.find(({ id }) => id === "kelp")?.alone).toEqual([]);
});
