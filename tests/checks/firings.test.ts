import { describe, expect, it } from "vitest";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import type { Firing } from "../../src/records/archive.ts";
import { firingSchema } from "../../src/records/firing.ts";
import { archive, codesIn, firing, nothing, tell } from "./support.ts";

/** A load as the archive reads it: every scalar is text. */
function load(fields: Readonly<Record<string, unknown>>, log?: string): Firing {
  const record = firingSchema.parse({ on: "2026-10-18", kind: "glaze", ...fields });
  const file = "tiles/firings/g-1.csv";
  return { ...firing("g-1", record), log: log === undefined ? null : { file, text: log } };
}

const extraOf = (firings: readonly Firing[]) => ({
  ...nothing,
  heats: heatOfFirings(archive({ firings })),
});
const told = (...firings: Firing[]) => tell({ firings }, extraOf(firings));
const found = (...firings: Firing[]) => codesIn({ firings }, extraOf(firings));

const programme = (to: string, hold = "15") => [
  { to: "600", rate: "100" },
  { to, rate: "60", hold },
];
const coneSix = programme("1210");
const coneNoughtSix = programme("996", "5");

/** A steady climb to a peak, a reading every ten minutes. */
function climb(peak: number, labels = "minutes,°C"): string {
  const rows = Array.from({ length: Math.round((peak - 20) / 10) + 1 }, (_, i) =>
    [i * 10, 20 + i * 10].join(","),
  );
  return [labels, ...rows].join("\n");
}

describe("a schedule", () => {
  it("that only makes sense in °F is asked about", () => {
    expect(told(load({ schedule: [{ to: "2232", rate: "108" }] }))).toMatchInlineSnapshot(`
      "error schedule-fault tiles/firings/g-1.md › schedule › 0 › to
      The schedule goes to 2232, which is hotter than a pottery kiln gets in °C. Is it in °F?
      Write “unit: F” beside the schedule if it is in °F, “unit: C” if it truly is in °C."
    `);
    expect(found(load({ unit: "F", schedule: [{ to: "2232", rate: "108" }] }))).toEqual([]);
  });

  it("whose rate leads away from its temperature, or nowhere, is a fault at that rate", () => {
    const schedule = [
      { to: "600", rate: "-100" },
      { to: "1210", rate: "0" },
    ];
    expect(told(load({ schedule }))).toMatchInlineSnapshot(`
      "error schedule-fault tiles/firings/g-1.md › schedule › 0 › rate
      From 20 to 600 the kiln heats, but the rate of -100 is one of cooling
      Write the rate without its minus sign, or put the temperatures right.

      error schedule-fault tiles/firings/g-1.md › schedule › 1 › rate
      At 0 degrees an hour the kiln never comes to 1210
      Leave the rate out where the kiln goes as fast as it can or cools by itself."
    `);
  });
});

describe("a log", () => {
  it("that nobody could read without guessing is a fault of the log's own file", () => {
    expect(told(load({}, climb(1210, "minutes,reading")))).toMatchInlineSnapshot(`
      "error log-unusable tiles/firings/g-1.csv
      Nothing says whether the log is in °C or °F. Its hottest reading is 1210
      Write “log-unit: C” or “log-unit: F” in the firing's record, or label the column °C or °F."
    `);
    expect(found(load({ "log-unit": "C" }, climb(1210, "minutes,reading")))).toEqual([]);
  });

  it("that leaves its form to be found out tells what was taken for what", () => {
    const clock = climb(1210, "clock,°C").replace(
      /^(\d+),/gmu,
      (_, minutes) => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")},`,
    );
    expect(told(load({}, clock))).toMatchInlineSnapshot(`
      "warning log-doubtful tiles/firings/g-1.csv
      The log does not say itself what it holds. Time: column 1 “clock”, taken as h:mm, since as mm:ss the kiln would have raced
      If that is right, nothing needs mending; labels in the log's first line settle it."
    `);
    expect(found(load({}, clock.replace("clock", "h:mm")))).toEqual([]);
  });

  it("with a gap or a failing probe is told at the line where that begins", () => {
    const lines = climb(1210).split("\n");
    const holey = [...lines.slice(0, 40), ...lines.slice(60)].map((line, i) =>
      i === 20 ? line.replace(/,.*/u, ",9999") : line,
    );
    expect(told(load({}, holey.join("\n")))).toMatchInlineSnapshot(`
      "warning log-doubtful tiles/firings/g-1.csv
      The probe dropped out: 1 row of 100 holds no temperature (“9999”) and was left out
      If that is right, nothing needs mending; otherwise export the log again.

      warning log-doubtful tiles/firings/g-1.csv
      Nothing was recorded for 210 minutes, from 400 to 610 °C: the curve is taken to run straight across
      If that is right, nothing needs mending; otherwise export the log again."
    `);
  });

  it("that says all of itself is not spoken of", () => {
    expect(found(load({ cone: "6", witness: { middle: "6" }, schedule: coneSix }))).toEqual([]);
  });
});

describe("the story of a firing", () => {
  it("that holds is not spoken of", () => {
    const pack = { "5": "down", "6": "bent", "7": "standing" };
    expect(
      found(load({ cone: "6", witness: { top: pack, bottom: "5½" }, schedule: coneSix })),
    ).toEqual([]);
  });

  it("that does not hold is told with the likeliest readings, at what is furthest off", () => {
    const hot = load(
      { cone: "6", witness: { top: "8", bottom: "8" }, schedule: coneSix },
      climb(1220),
    );
    expect(told(hot)).toMatchInlineSnapshot(`
      "warning story-differs tiles/firings/g-1.md › witness
      The records of this firing do not agree. Aimed at cone 6; the witness cones show cone 8 (top)
      The likeliest first: A thermocouple that has drifted: it reads low, so the kiln got hotter than it shows. Compare it with a new one, and trust the cones until then. Or: The witness cones were misread, or mixed up when they were set: look at the pack again, and at the numbers pressed into it."
    `);
  });

  it("of an uneven kiln is told as that", () => {
    expect(
      told(load({ cone: "6", witness: { top: "6", bottom: "4" }, schedule: coneSix })),
    ).toMatchInlineSnapshot(`
      "warning story-differs tiles/firings/g-1.md › witness
      The records of this firing do not agree. Aimed at cone 6; the witness cones show cone 4 (bottom)
      The likeliest first: The kiln fired unevenly. Look at how the load was stacked, at the elements or burners, and at where the thermocouple sits. Or: The witness cones were misread, or mixed up when they were set: look at the pack again, and at the numbers pressed into it."
    `);
  });

  it("whose witness cones contradict themselves is told at their shelf", () => {
    const witness = { top: { "5": "standing", "6": "down" } };
    expect(told(load({ cone: "6", witness }))).toMatchInlineSnapshot(`
      "warning witness-contradicts tiles/firings/g-1.md › witness › top
      Cone 6 is down while cone 5, the cooler of the two, is standing: that cannot be
      Look at the pack again: two cones may have changed places, or 06 been taken for 6."
    `);
  });
});

describe("06 and 6", () => {
  it("taken for one another in a firing that has been is told, and stays history", () => {
    const misfire = load({ cone: "6", witness: { middle: "06" }, schedule: coneNoughtSix });
    expect(told(misfire)).toMatchInlineSnapshot(`
      "warning nought-mistaken tiles/firings/g-1.md › cone
      The records of this firing do not agree. Aimed at cone 6; the witness cones show cone 06 (middle)
      The kiln was fired to cone 06 instead of cone 6, or one was written for the other. Check the programme first. If that is how it happened, leave it: that is history."
    `);
  });

  it("taken for one another in the writing alone is told as that", () => {
    const slip = load({ cone: "6", witness: { middle: "06" }, schedule: coneSix });
    expect(told(slip)).toContain("showed cone 6 and were written down as cone 06");
  });

  it("stop a firing still to come whose programme would melt what is meant for 06", () => {
    const toCome = load({ on: undefined, cone: "06", schedule: coneSix });
    expect(told(toCome)).toMatchInlineSnapshot(`
      "error programme-too-hot tiles/firings/g-1.md › schedule
      Aimed at cone 06; the programme works out at cone 6: its climb alone is about 210 °C (375 °F) too hot
      Clay and glaze for the cooler cone melt over the shelves: put the cone or the programme right before the kiln is lit."
    `);
  });

  it("only warn where the programme of a firing still to come is too cool", () => {
    const toCome = load({ on: undefined, cone: "6", schedule: coneNoughtSix });
    expect(found(toCome)).toEqual(["nought-mistaken"]);
  });
});
