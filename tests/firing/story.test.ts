import { describe, expect, it } from "vitest";
import { findHeat, type Heat } from "../../src/firing/heat.ts";
import { scheduleCurve } from "../../src/firing/schedule.ts";
import { tellStory } from "../../src/firing/story.ts";
import type { Witness } from "../../src/firing/witness.ts";
import { comparisonWords, readingWords } from "../../templates/words/firing/accounts.ts";
import { cone } from "./reference.ts";

/** The heat of a climb at 150 and then 60 °C an hour, with a hold of ten minutes. */
function heatTo(celsius: number): Heat {
  const heat = findHeat(
    scheduleCurve({
      segments: [
        { to: celsius - 100, rate: 150 },
        { to: celsius, rate: 60, hold: 10 },
      ],
    }),
  );
  if (!heat) throw new Error("a climb has heat");
  return heat;
}

const six = heatTo(1213);
const four = heatTo(1155);
const lowSix = heatTo(992);

function seen(shelves: Readonly<Record<string, string>>): Readonly<Record<string, Witness>> {
  return Object.fromEntries(
    Object.entries(shelves).map(([shelf, name]) => [shelf, { read: "cone", cone: cone(name) }]),
  );
}

const codesOf = (input: Parameters<typeof tellStory>[0]) => {
  const story = tellStory(input);
  return [story.agreement, ...story.readings.map((reading) => reading.code)];
};

describe("a story that holds", () => {
  it("aim, programme, log and cones within a cone of each other", () => {
    const witness = seen({ top: "6", middle: "6", bottom: "5½" });
    const story = tellStory({ aim: cone("6"), witness, schedule: six, log: six });
    expect(story).toMatchObject({
      agreement: "agrees",
      widest: null,
      leftOpen: null,
      readings: [],
    });
    expect(story.comparisons.map(({ between }) => between)).toEqual([
      "aim-witness",
      "aim-log",
      "aim-schedule",
      "log-witness",
      "schedule-log",
      "shelves",
    ]);
  });

  it("a cone apart is within a cone, a cone and a half is not", () => {
    expect(codesOf({ aim: cone("6"), witness: seen({ top: "7" }) })).toEqual(["agrees"]);
    expect(codesOf({ aim: cone("6"), witness: seen({ top: "7½" }) })[0]).toBe("differs");
  });

  it("01 and 1 are neighbours, and no double of each other", () => {
    expect(codesOf({ aim: cone("1"), witness: seen({ top: "01" }) })).toEqual(["agrees"]);
  });
});

describe("with nothing to compare", () => {
  it("nothing is claimed", () => {
    expect(codesOf({ aim: cone("6") })).toEqual(["unknown"]);
    expect(codesOf({})).toEqual(["unknown"]);
    expect(codesOf({ log: six })).toEqual(["unknown"]);
  });
});

describe("a story that does not hold", () => {
  it("cones hotter than a log that did as it was told: a thermocouple that reads low", () => {
    const story = tellStory({
      aim: cone("6"),
      witness: seen({ top: "8", bottom: "8" }),
      schedule: six,
      log: six,
    });
    expect(story.agreement).toBe("differs");
    expect(story.widest && comparisonWords(story.widest)).toBe(
      "Aimed at cone 6; the witness cones show cone 8 (top)",
    );
    expect(story.readings.map((reading) => reading.code)).toEqual([
      "thermocouple-drifted",
      "cones-misread",
    ]);
    expect(story.readings[0]).toMatchObject({ reads: "low" });
  });

  it("cones cooler than the log: one that reads high", () => {
    const story = tellStory({ aim: cone("6"), witness: seen({ top: "4" }), log: six });
    expect(story.readings[0]).toMatchObject({ code: "thermocouple-drifted", reads: "high" });
  });

  it("top and bottom more than a cone apart: uneven, and nothing else", () => {
    expect(
      codesOf({
        aim: cone("6"),
        witness: seen({ top: "7", bottom: "5" }),
        schedule: six,
        log: six,
      }),
    ).toEqual(["differs", "uneven"]);
  });

  it("a programme for another cone, which the kiln followed", () => {
    expect(
      codesOf({ aim: cone("6"), witness: seen({ top: "4" }), schedule: four, log: four }),
    ).toEqual(["differs", "wrong-programme"]);
  });

  it("a kiln that fell short of the right programme", () => {
    expect(
      codesOf({ aim: cone("6"), witness: seen({ top: "4" }), schedule: six, log: four }),
    ).toEqual(["differs", "programme-not-followed"]);
  });

  it("cones alone against the aim: every reading that is left", () => {
    expect(codesOf({ aim: cone("6"), witness: seen({ top: "4" }) })).toEqual([
      "differs",
      "thermocouple-drifted",
      "wrong-programme",
      "cones-misread",
    ]);
  });

  it("each within a cone of the next, but the ends apart: it adds up", () => {
    const warmer = heatTo(1225);
    expect(
      codesOf({ aim: cone("6"), witness: seen({ top: "7½" }), schedule: six, log: warmer }),
    ).toEqual(["differs", "adds-up"]);
  });
});

describe("06 and 6", () => {
  it("fired to 06 where 6 was meant shows at once", () => {
    const story = tellStory({
      aim: cone("6"),
      witness: seen({ top: "06", bottom: "06" }),
      schedule: lowSix,
      log: lowSix,
    });
    expect(story.readings.map(({ code }) => code)).toEqual(["double-fired"]);
    expect(story.readings.map(readingWords)).toEqual([
      "The kiln was fired to cone 06 instead of cone 6, or one was written for the other. Check the programme first.",
    ]);
  });

  it("and so does the reverse, from any one account", () => {
    for (const input of [{ log: six }, { schedule: six }, { witness: seen({ top: "6" }) }])
      expect(codesOf({ aim: cone("06"), ...input })).toEqual(["differs", "double-fired"]);
  });

  it("written for each other, while the log agrees with the aim", () => {
    expect(codesOf({ aim: cone("6"), witness: seen({ top: "06" }), log: six })).toEqual([
      "differs",
      "double-written",
    ]);
  });

  it("the log of another firing, while the cones agree with the aim", () => {
    expect(codesOf({ aim: cone("6"), witness: seen({ top: "6" }), log: lowSix })).toEqual([
      "differs",
      "wrong-log",
    ]);
  });
});

describe("what is only half known", () => {
  it("a schedule whose last climb has no rate is held against nothing hotter", () => {
    const open = findHeat(scheduleCurve({ segments: [{ to: 1000, rate: 150 }, { to: 1222 }] }));
    expect(codesOf({ aim: cone("6"), schedule: open })).toEqual(["agrees"]);
  });

  it("a pack that contradicts itself is told, and compared with nothing", () => {
    const bends = new Map([
      [cone("5"), "standing"],
      [cone("6"), "down"],
    ] as const);
    const story = tellStory({ aim: cone("6"), witness: { top: { read: "bends", bends } } });
    expect(story.agreement).toBe("unknown");
    expect(story.accounts.contradictions).toMatchObject([{ shelf: "top" }]);
  });

  it("a firing too cool for any cone is as cool as the coolest at most", () => {
    const cold = findHeat(scheduleCurve({ segments: [{ to: 400, rate: 100 }] }));
    expect(codesOf({ aim: cone("022"), log: cold })[0]).toBe("agrees");
    expect(codesOf({ aim: cone("04"), log: cold })[0]).toBe("differs");
  });
});
