import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { makeDataFiles } from "../support/data-files.ts";
import { catalogueOf, coneSix, load, logTo } from "../templates/support/firings.ts";

const files = makeDataFiles(
  catalogueOf([
    load("b-log", { cone: "6", schedule: coneSix, witness: { top: "6" } }, logTo(1215)),
    load("c-programme", { cone: "6", unit: "F", schedule: [{ to: "2192", rate: "108" }] }),
    load("d-cool", { schedule: [{ to: "500", rate: "100", hold: "30" }] }),
    load("a-bare", { cone: "6" }),
    load("e-differs", { cone: "6", schedule: coneSix, witness: { top: "9" } }),
    load("f-asked", { cone: "6", schedule: [{ to: "2232", rate: "108" }] }),
  ]),
);

const read = (path: string) =>
  JSON.parse(files.find((file) => file.path === path)?.content ?? "null");
const rows = read("data/firings.json") as { id: string; heat: unknown }[];
const heatOf = (id: string) => rows.find((row) => row.id === id)?.heat;

describe("firings.json", () => {
  test("states the heat of a log, rounded so that equal archives give equal bytes", () => {
    expect(heatOf("b-log")).toEqual({
      equivalentCone: { cone: "5½", next: "6", fraction: expect.any(Number) },
      equivalentConeRange: {
        low: { cone: "5½", next: "6", fraction: expect.any(Number) },
        high: { cone: "5½", next: "6", fraction: expect.any(Number) },
      },
      peak: 1215,
      lastRate: 60,
      hold: 0,
      coolingRate: 300,
      agreement: "agrees",
    });
    expect(JSON.stringify(rows)).not.toMatch(/\d\.\d{4,}/u);
  });

  test("states that of a schedule in °C whichever unit it was written in", () => {
    expect(heatOf("c-programme")).toMatchObject({ peak: 1200, lastRate: 60, coolingRate: null });
  });

  test("says null where nothing is known, and where a schedule must be asked about", () => {
    expect([heatOf("a-bare"), heatOf("f-asked")]).toEqual([null, null]);
    expect(heatOf("d-cool")).toMatchObject({
      equivalentCone: { cone: null, next: "022", fraction: 0 },
      agreement: null,
    });
  });

  test("says whether the accounts of a firing agree", () => {
    expect(heatOf("e-differs")).toMatchObject({ agreement: "differs" });
  });

  test("is what the JSON Schema beside it says", () => {
    const validate = new Ajv2020({ strict: true }).compile(read("data/firings.schema.json"));
    expect(validate(rows), JSON.stringify(validate.errors)).toBe(true);
  });
});
