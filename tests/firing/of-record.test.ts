import { describe, expect, it } from "vitest";
import { parseLog } from "../../src/firing/log.ts";
import { heatOf } from "../../src/firing/of-record.ts";
import { type FiringRecord, firingSchema } from "../../src/records/firing.ts";
import { comparisonWords } from "../../templates/words/firing/accounts.ts";

/** A record as the archive reads it: every scalar is text. */
function record(fields: Readonly<Record<string, unknown>>): FiringRecord {
  return firingSchema.parse({ kind: "glaze", ...fields });
}

const schedule = [
  { to: "1100", rate: "150" },
  { to: "1213", rate: "60", hold: "10" },
];

const log = [
  "minutes,temperature",
  ...Array.from({ length: 300 }, (_, i) => `${i * 2},${20 + i * 4}`),
].join("\n");

describe("the heat of a firing's record", () => {
  it("comes from the schedule where there is no log", () => {
    const found = heatOf(record({ cone: "6", schedule, witness: { top: "6" } }));
    expect(found).toMatchObject({
      heatFrom: "schedule",
      heat: { peak: 1213, hold: 10 },
      log: null,
      story: { agreement: "agrees" },
    });
  });

  it("comes from the log where there is one that can be used", () => {
    const found = heatOf(
      record({ cone: "6", schedule, "log-unit": "C" }),
      parseLog(log, "celsius"),
    );
    expect(found).toMatchObject({ heatFrom: "log", heat: { peak: 1216 } });
    expect(found.log?.curve).toHaveLength(300);
  });

  it("falls back on the schedule where the log asks for its unit", () => {
    const found = heatOf(record({ cone: "6", schedule }), parseLog(log));
    expect(found.heatFrom).toBe("schedule");
    expect(found.log).toMatchObject({ heat: null, notes: [{ code: "log-unit-unknown" }] });
  });

  it("in °F is the same", () => {
    const inFahrenheit = [
      { to: "2012", rate: "270" },
      { to: "2215.4", rate: "108", hold: "10" },
    ];
    const found = heatOf(record({ cone: "6", unit: "F", schedule: inFahrenheit }));
    expect(found.heat?.peak).toBeCloseTo(1213, 9);
    expect(found.heat?.place).toBeCloseTo(heatOf(record({ schedule })).heat?.place ?? 0, 4);
  });

  it("is nothing while a schedule must be asked about, and nothing without one", () => {
    const asked = heatOf(record({ cone: "6", schedule: [{ to: "2232", rate: "108" }] }));
    expect(asked).toMatchObject({
      heat: null,
      heatFrom: null,
      schedule: { heat: null, curve: [], faults: [{ code: "maybe-fahrenheit" }] },
    });
    expect(heatOf(record({ cone: "6" }))).toMatchObject({ heat: null, schedule: null, log: null });
  });

  it("tells bends by shelf from the record", () => {
    const witness = { top: { "5": "down", "6": "bent", "7": "standing" }, bottom: "5½" };
    const { story } = heatOf(record({ cone: "6", witness }));
    expect(story).toMatchObject({ agreement: "agrees", accounts: { contradictions: [] } });
    expect(story.comparisons.map(comparisonWords)[0]).toBe(
      "Aimed at cone 6; the witness cones show cone 5½ (bottom)",
    );
  });
});
