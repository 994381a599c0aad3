import { describe, expect, test } from "vitest";
import { ratioField, ratioLines, ratioRegion } from "../../src/chemistry/stull.ts";
import { readReference } from "./reference.ts";

const rows = readReference("stull");
const rowOf = (item: string) => rows.find((row) => row.item === item);

// R. T. Stull 1912 as summed up in later texts; every row used here is tagged “from memory”.
describe("the old ratio lines", () => {
  test("run at the boundaries of the reference", () => {
    expect(String(ratioLines[0]?.silicaToAlumina)).toBe(rowOf("matte / semi-matte")?.high);
    expect(String(ratioLines[1]?.silicaToAlumina)).toBe(rowOf("semi-matte / bright (gloss)")?.low);
  });

  test("part matte, semi-matte and bright as the regions of the reference do", () => {
    expect(rowOf("semi-matte")).toMatchObject({ low: "5", high: "6" });
    expect([3, 4.99, 5, 5.99, 6, 8, 11].map(ratioRegion)).toEqual([
      ...["matte", "matte", "semi-matte", "semi-matte", "bright", "bright", "bright"],
    ]);
  });

  test("are told with the fluxes, the cone and the tag of the reference", () => {
    expect(rowOf("RO base (flux)")?.value).toBe("0.3 K2O + 0.7 CaO");
    expect(ratioField.fluxes).toEqual({ K2O: 0.3, CaO: 0.7 });
    expect(rowOf("firing")?.value).toBe("about cone 11");
    expect(ratioField.cone).toMatch(/^about cone 11/u);
    expect(rowOf("matte / semi-matte")?.tag).toBe(ratioField.tag);
  });

  test("rest on no row that the reference holds for low in confidence", () => {
    for (const item of [
      "matte / semi-matte",
      "semi-matte / bright (gloss)",
      "semi-matte",
      "firing",
    ])
      expect(rowOf(item)?.confidence).toMatch(/^(high|medium)$/u);
  });
});
