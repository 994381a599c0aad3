import { describe, expect, it } from "vitest";
import { type Schedule, segmentsInCelsius } from "../../../../src/firing/schedule.ts";
import {
  celsiusStepToFahrenheitStep,
  celsiusToFahrenheit,
  type TemperatureUnit,
} from "../../../../src/firing/units.ts";
import {
  openTimeSentences,
  programmeSentences,
} from "../../../../templates/words/firing/programme.ts";

const coneSix: Schedule = {
  segments: [
    { to: 1100, rate: 150 },
    { to: 1215, rate: 60, hold: 15 },
    { to: 980, rate: -80 },
  ],
};

function inFahrenheit({ segments }: Schedule): Schedule {
  return {
    unit: "fahrenheit",
    segments: segments.map(({ to, rate, hold }) => ({
      to: celsiusToFahrenheit(to),
      rate: rate === undefined ? undefined : celsiusStepToFahrenheitStep(rate),
      hold,
    })),
  };
}

const programmeInWords = (schedule: Schedule, unit: TemperatureUnit) =>
  programmeSentences(segmentsInCelsius(schedule), unit);
const openTimesInWords = (schedule: Schedule, unit: TemperatureUnit) =>
  openTimeSentences(segmentsInCelsius(schedule), unit);

describe("a programme in words", () => {
  it("is a sentence a segment", () => {
    expect(programmeInWords(coneSix, "celsius")).toEqual([
      "150° an hour to 1100 °C",
      "60° an hour to 1215 °C, hold 15 minutes",
      "Cooling at 80° an hour to 980 °C",
    ]);
  });

  it("is said in the unit the studio reads, whichever it was written in", () => {
    expect(programmeInWords(inFahrenheit(coneSix), "celsius")).toEqual(
      programmeInWords(coneSix, "celsius"),
    );
    expect(programmeInWords(coneSix, "fahrenheit")[1]).toBe(
      "108° an hour to 2219 °F, hold 15 minutes",
    );
  });

  it("says plainly where no rate was written, and does not guess it", () => {
    const schedule: Schedule = {
      segments: [{ to: 1000, hold: 90 }, { to: 1000, hold: 60 }, { to: 600 }],
    };
    expect(programmeInWords(schedule, "celsius")).toEqual([
      "As fast as the kiln goes to 1000 °C, hold 1 hour 30 minutes",
      "Hold 1000 °C for 1 hour",
      "Left to cool by itself to 600 °C",
    ]);
    expect(openTimesInWords(schedule, "celsius")).toEqual([
      "How fast the kiln climbs to 1000 °C is not said: that climb counts as no time at all",
      "How fast the kiln cools to 600 °C is not said: that cooling counts as no time at all",
    ]);
    expect(openTimesInWords(coneSix, "celsius")).toEqual([]);
  });
});
