import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equivalentConeOf, placeOfEquivalentCone } from "../../src/firing/heat-work.ts";
import { type LogReading, parseLog } from "../../src/firing/log.ts";
import { celsiusToFahrenheit } from "../../src/firing/units.ts";

/** A firing to cone 6 and down again, a point every so many minutes. */
function firing(everyMinutes = 5): readonly { minutes: number; celsius: number }[] {
  const count = Math.ceil(1100 / everyMinutes);
  return Array.from({ length: count }, (_, i) => {
    const minutes = i * everyMinutes;
    const cooling = minutes - 600;
    const celsius = cooling < 0 ? 20 + 2 * minutes : 20 + 1200 * Math.exp(-cooling / 500);
    return { minutes, celsius: Math.round(celsius * 10) / 10 };
  });
}

const lines = (write: (minutes: number, celsius: number) => string, everyMinutes = 5) =>
  firing(everyMinutes).map(({ minutes, celsius }) => write(minutes, celsius));

const two = (n: number) => String(Math.floor(n)).padStart(2, "0");
const hms = (minutes: number) => `${Math.floor(minutes / 60)}:${two(minutes % 60)}:00`;
const comma = (n: number) => String(n).replace(".", ",");
const codes = (reading: LogReading) => reading.notes.map((note) => note.code);

/** The curve that every form of the same firing must give. */
const expected = firing().map(({ minutes, celsius }) => ({ minutes, celsius }));

function expectTheFiring(reading: LogReading): void {
  expect(reading.notes.filter((note) => note.severity !== "note")).toEqual([]);
  expect(reading.curve).toHaveLength(expected.length);
  reading.curve.forEach((point, i) => {
    expect(point.minutes).toBeCloseTo(expected[i]?.minutes ?? Number.NaN, 6);
    expect(point.celsius).toBeCloseTo(expected[i]?.celsius ?? Number.NaN, 6);
  });
}

/** A clock that was started in the evening, so that the firing runs over midnight. */
function evening(minutes: number): { day: number; clock: string } {
  const since = 20 * 60 + minutes;
  return {
    day: 20 + Math.floor(since / 1440),
    clock: `${two((since / 60) % 24)}:${two(since % 60)}`,
  };
}

const forms: Readonly<Record<string, readonly string[]>> = {
  "commas, minutes": ["minutes,temp (C)", ...lines((m, c) => `${m},${c}`)],
  "commas, seconds": ["Time [s],PV [°C],SP [°C]", ...lines((m, c) => `${m * 60},${c},1220`)],
  "semicolons, decimal commas, h:mm:ss": [
    "Zeit;Istwert °C;Sollwert °C;Leistung %",
    ...lines((m, c) => `${hms(m)};${comma(c)};1220,0;55,5`),
  ],
  "tabs, hours": ["hours\tTemp C", ...lines((m, c) => `${m / 60}\t${c}`)],
  "quoted decimal commas between commas": [
    '"Elapsed (min)","Temperature (°C)"',
    ...lines((m, c) => `"${comma(m)}","${comma(c)}"`),
  ],
  "moments as ISO 8601": [
    "timestamp,temp_c",
    ...lines((m, c) => {
      const { day, clock } = evening(m);
      return `2026-10-${day}T${clock}:00Z,${c}`;
    }),
  ],
  "a day and a clock in two columns": [
    "Date;Time;T (°C)",
    ...lines((m, c) => {
      const { day, clock } = evening(m);
      return `${day}.10.2026;${clock}:00;${comma(c)}`;
    }),
  ],
  "month first, with AM and PM": [
    "Date,Temp °C",
    ...lines((m, c) => {
      const { day, clock } = evening(m);
      const hour = Number(clock.slice(0, 2));
      const half = hour < 12 ? "AM" : "PM";
      return `10/${day}/2026 ${hour % 12 || 12}${clock.slice(2)}:00 ${half},${c}`;
    }),
  ],
  "a clock that runs over midnight": [
    "Clock,°C",
    ...lines((m, c) => `${evening(m).clock}:00,${c}`),
  ],
  "seconds from 1970": ["time,deg C", ...lines((m, c) => `${1_790_000_000 + m * 60},${c}`)],
  "a head of the device, then labels, then units": [
    "Logger,type K",
    "Started,2026-10-20",
    "",
    "Time,Channel 1",
    "min,°C",
    ...lines((m, c) => `${m},${c}`),
  ],
  "the unit behind each number": ["time;value", ...lines((m, c) => `${hms(m)};${comma(c)} °C`)],
  "the unit in a column of its own": ["h:mm:ss,Value,Unit", ...lines((m, c) => `${hms(m)},${c},C`)],
  "a degree sign in an old encoding": ["min;Temp \uFFFDC", ...lines((m, c) => `${m};${comma(c)}`)],
  "a declared separator and a byte order mark": [
    "\uFEFFsep=;",
    "minutes;°C",
    ...lines((m, c) => `${m};${c}`),
  ],
  "thousands parted": [
    "minutes;°C",
    ...lines(
      (m, c) =>
        `${m};${c >= 1000 ? `1.${comma(Number((c - 1000).toFixed(1))).padStart(c % 1 ? 5 : 3, "0")}` : comma(c)}`,
    ),
  ],
  "the rows' own numbers in front": [
    "No,Time (min),Temperature (C)",
    ...firing().map(({ minutes, celsius }, i) => `${i + 1},${minutes},${celsius}`),
  ],
  "two parts to the clock": [
    "time,°C",
    ...lines((m, c) => `${Math.floor(m / 60)}:${two(m % 60)},${c}`),
  ],
};

describe("one firing, however it was exported", () => {
  it.each(Object.entries(forms))("%s", (_, form) => {
    expectTheFiring(parseLog(form.join("\n")));
    expectTheFiring(parseLog(form.join("\r\n")));
  });

  it("newest first is turned round, and said so", () => {
    const reading = parseLog(["minutes,°C", ...lines((m, c) => `${m},${c}`).reverse()].join("\n"));
    expectTheFiring(reading);
    expect(codes(reading)).toEqual(["log-reversed"]);
  });

  it("without labels, once the record gives the unit, and the time can only be one thing", () => {
    for (const [perMinute, unit] of [
      [60, "seconds"],
      [1, "minutes"],
      [1 / 60, "hours"],
    ] as const) {
      const reading = parseLog(lines((m, c) => `${m * perMinute};${c}`).join("\n"), "celsius");
      expectTheFiring(reading);
      expect(reading.taken[1]).toBe(
        `Time: column 1, taken as ${unit}, the only unit in which a kiln could have kept up.`,
      );
    }
  });

  it("without labels, with the rows' numbers in front", () => {
    const rows = firing().map(({ minutes, celsius }, i) => `${i + 1};${minutes};${celsius}`);
    expectTheFiring(parseLog(rows.join("\n"), "celsius"));
  });

  it("in °F gives the same curve and the same cone", () => {
    const celsius = parseLog(["minutes,°C", ...lines((m, c) => `${m},${c}`)].join("\n"));
    const fahrenheit = parseLog(
      ["minutes,°F", ...lines((m, c) => `${m},${celsiusToFahrenheit(c).toFixed(6)}`)].join("\n"),
    );
    expectTheFiring(fahrenheit);
    const placeOf = (reading: LogReading) =>
      placeOfEquivalentCone(equivalentConeOf(reading.curve)) ?? Number.NaN;
    expect(placeOf(fahrenheit)).toBeCloseTo(placeOf(celsius), 4);
  });

  it("read in °F by label or by record agrees with °C, whatever the firing", () => {
    const temperatures = fc.array(fc.integer({ min: 20, max: 1300 }), {
      minLength: 2,
      maxLength: 40,
    });
    fc.assert(
      fc.property(temperatures, (all) => {
        const rows = (write: (c: number) => number) =>
          all.map((c, i) => `${i * 30},${write(c)}`).join("\n");
        const celsius = parseLog(`min,°C\n${rows((c) => c)}`).curve;
        const label = parseLog(`min,°F\n${rows((c) => c * 1.8 + 32)}`).curve;
        const record = parseLog(`min,temp\n${rows((c) => c * 1.8 + 32)}`, "fahrenheit").curve;
        expect(label).toEqual(record);
        expect(label).toHaveLength(celsius.length);
        label.forEach((point, i) => {
          expect(point.celsius).toBeCloseTo(celsius[i]?.celsius ?? Number.NaN, 6);
        });
      }),
    );
  });
});

describe("what was taken for what", () => {
  it("is said in words", () => {
    const form = forms["semicolons, decimal commas, h:mm:ss"] ?? [];
    expect(parseLog(form.join("\n")).taken).toEqual([
      "Columns are separated by semicolons. Labels in line 1, readings from line 2 on.",
      "Time: column 1 “Zeit”, taken as h:mm:ss.",
      "Temperature: column 2 “Istwert °C”, taken as °C, as its label says, decimal commas.",
      "220 readings over 18 hours 15 minutes, one every 5 minutes.",
    ]);
  });

  it("names the other columns that might have been meant", () => {
    const reading = parseLog(
      ["min,top °C,bottom °C", ...lines((m, c) => `${m},${c},${c - 20}`)].join("\n"),
    );
    expect(reading.notes).toEqual([
      {
        severity: "warning",
        code: "log-several-temperatures",
        message:
          "Several columns may hold the kiln's temperature: column 2 “top °C” was taken, not column 3 “bottom °C”.",
        hint: "Leave only the wanted column in the log if this is the wrong one.",
      },
    ]);
    expect(reading.curve[1]?.celsius).toBe(30);
  });

  it("tells the order of day and month where the dates leave it open", () => {
    const rows = lines(
      (m, c) => `0${Math.floor(m / 600) + 6}/07/2026 ${two((m / 60) % 10)}:${two(m % 60)},${c}`,
    );
    expect(parseLog(`Date,°C\n${rows.join("\n")}`).taken[1]).toBe(
      "Time: column 1 “Date”, taken as date and time of day, day before month, which makes the shorter log.",
    );
  });
});

describe("what cannot be known is asked", () => {
  const plain = lines((m, c) => `${m},${c}`);

  it("the unit of temperature", () => {
    const reading = parseLog(["minutes,temperature", ...plain].join("\n"));
    expect(reading.curve).toEqual([]);
    expect(reading.notes).toEqual([
      {
        severity: "error",
        code: "log-unit-unknown",
        message: "Nothing says whether the log is in °C or °F. Its hottest reading is 1220.",
        hint: "Write “log-unit: C” or “log-unit: F” in the firing's record, or label the column °C or °F.",
      },
    ]);
  });

  it("the unit, even where only one makes sense", () => {
    const rows = lines((m, c) => `${m},${Math.round(c * 1.8 + 32)}`);
    const reading = parseLog(["minutes,temperature", ...rows].join("\n"));
    expect(reading.notes[0]?.message).toBe(
      "Nothing says whether the log is in °C or °F. Its hottest reading is 2228, which a pottery kiln reaches in °F alone.",
    );
  });

  it("a unit that the record contradicts, or the numbers do", () => {
    const against = parseLog(["minutes,°C", ...plain].join("\n"), "fahrenheit");
    expect(against.notes[0]?.message).toBe(
      "The log is in °C, as its label says, but the firing's record says °F.",
    );
    const hot = lines((m, c) => `${m},${Math.round(c * 1.8 + 32)}`);
    expect(parseLog(["minutes,°C", ...hot].join("\n")).notes[0]?.message).toBe(
      "The log is in °C, as its label says, but goes to 2228, which no pottery kiln reaches in °C. Is it in °F?",
    );
  });

  it("a time that may be seconds or minutes", () => {
    const rows = Array.from({ length: 60 }, (_, i) => `${i * 60};${20 + i * 20}`);
    expect(codes(parseLog(`time;°C\n${rows.join("\n")}`))).toEqual(["log-time-unit-unknown"]);
  });

  it("decimal commas between commas", () => {
    const rows = lines((m, c) => `${m},${comma(c + 0.1)}`);
    expect(codes(parseLog(["min,°C", ...rows].join("\n")))).toEqual(["log-columns-differ"]);
    expect(codes(parseLog(rows.join("\n"), "celsius"))).toEqual(["log-columns-differ"]);
  });

  it("two firings in one log", () => {
    const reading = parseLog(["minutes,°C", ...plain, ...plain].join("\n"));
    expect(reading.notes).toMatchObject([{ code: "log-time-runs-back", line: 222 }]);
  });
});

describe("a probe that drops out", () => {
  /** Puts other words in place of the temperatures of some rows. */
  const with_ = (words: Readonly<Record<number, string>>) =>
    [
      "minutes,°C",
      ...firing().map(({ minutes, celsius }, i) => `${minutes},${words[i] ?? celsius}`),
    ].join("\n");

  it.each(["9999", "0", "", "-999", "32767", "NaN", "----", "OPEN", "1e9", "Infinity"])(
    "with “%s” is left out and told",
    (word) => {
      const reading = parseLog(with_({ 40: word, 41: word, 100: word }));
      expect(reading.curve).toHaveLength(expected.length - 3);
      expect(reading.notes).toMatchObject([{ severity: "note", code: "log-dropouts", line: 42 }]);
      expect(reading.notes[0]?.message).toContain(word === "" ? "an empty cell" : `“${word}”`);
    },
  );

  it("with a wrong number for a while is left out and told", () => {
    const reading = parseLog(with_({ 60: "35", 61: "36", 62: "1350" }));
    expect(reading.curve).toHaveLength(expected.length - 3);
    expect(reading.notes).toMatchObject([{ severity: "warning", code: "log-dropouts", line: 62 }]);
  });

  it("and one pulled out of a raku kiln is believed", () => {
    const rows = Array.from({ length: 90 }, (_, i) => `${i},${i < 60 ? 20 + i * 16 : 200 - i}`);
    const reading = parseLog(`minutes,°C\n${rows.join("\n")}`);
    expect(reading.curve).toHaveLength(90);
    expect(reading.notes).toMatchObject([{ code: "log-sudden-change", line: 62 }]);
  });

  it("for most of a firing is a warning", () => {
    const words = Object.fromEntries(Array.from({ length: 120 }, (_, i) => [i + 50, "9999"]));
    expect(parseLog(with_(words)).notes).toMatchObject([
      { severity: "warning", code: "log-dropouts" },
      { severity: "warning", code: "log-gap", line: 172 },
    ]);
  });
});

describe("gaps and repeats", () => {
  it("a gap is told, with its length", () => {
    const rows = lines((m, c) => `${m},${c}`).filter((_, i) => i < 80 || i > 100);
    const reading = parseLog(["minutes,°C", ...rows].join("\n"));
    expect(reading.notes).toEqual([
      {
        severity: "warning",
        code: "log-gap",
        line: 82,
        message:
          "Nothing was recorded for 110 minutes, from 810 to 1030 °C: the curve is taken to run straight across.",
      },
    ]);
  });

  it("a repeated time is left out and counted", () => {
    const rows = lines((m, c) => `${m},${c}`);
    const reading = parseLog(["minutes,°C", ...rows.slice(0, 9), ...rows.slice(8)].join("\n"));
    expectTheFiring(reading);
    expect(reading.notes).toMatchObject([{ code: "log-repeats", line: 11 }]);
  });

  it("a reading whose clock leapt is left out and told, wherever it stands", () => {
    for (const at of [0, 30, 218]) {
      const rows = lines((m, c) => `${m},${c}`);
      rows[at] = "70000,500";
      const reading = parseLog(["minutes,°C", ...rows].join("\n"));
      expect(reading.curve).toHaveLength(expected.length - 1);
      expect(reading.notes).toEqual([
        {
          severity: "warning",
          code: "log-time-runs-back",
          line: at + 2,
          message: "1 reading left out: out of the order of time.",
        },
      ]);
    }
  });

  it("a row or a foot that holds no time is left out and counted", () => {
    const rows = lines((m, c) => `${m},${c}`);
    const text = ["minutes,°C", ...rows.slice(0, 9), "?,?", ...rows.slice(9), "end of log,"];
    const reading = parseLog(text.join("\n"));
    expectTheFiring(reading);
    expect(codes(reading).sort()).toEqual(["log-dropouts", "log-unreadable-rows"]);
  });

  it("many gaps are told in a few lines", () => {
    const rows = Array.from({ length: 400 }, (_, i) => `${i + 60 * Math.floor(i / 10)},${20 + i}`);
    const notes = parseLog(`minutes,°C\n${rows.join("\n")}`).notes;
    expect(notes).toHaveLength(6);
    expect(notes[5]?.message).toBe("34 more places like these follow.");
  });
});

describe("hostile logs", () => {
  it.each([
    ["nothing", "", "log-one-column"],
    ["blank lines", "\n\n \n", "log-one-column"],
    ["one column", "20\n30\n40", "log-one-column"],
    ["words", "a,b\nc,d\ne,f", "log-too-few-readings"],
    ["one reading", "minutes,°C\n0,20", "log-too-few-readings"],
    ["a spreadsheet's own file", "PK\u0003\u0004\u0000\u0000,1\n2,3", "log-not-text"],
    ["an unclosed quote", `minutes,°C\n0,"20\n${"1,21\n".repeat(20)}`, "log-broken-quotes"],
    ["an endless line", `minutes,°C\n0,20\n1,"${"x".repeat(200_000)}`, "log-broken-quotes"],
    [
      "cells of blanks",
      `minutes,°C\n2026-10-20 ${" ".repeat(90_000)}x,1${" ".repeat(9000)}x\n`,
      "log-too-few-readings",
    ],
    ["set points alone", "minutes,SP °C\n0,20\n1,30\n2,40", "log-no-temperature"],
    ["no time", "TC1 °C,TC2 °C\n20,21\n18,22\n30,29\n25,27", "log-no-time"],
    ["all dropped out", "minutes,°C\n0,9999\n1,9999\n2,9999", "log-too-few-readings"],
  ])("%s: a plain answer", (_, text, code) => {
    const reading = parseLog(text);
    expect(reading.curve).toEqual([]);
    expect(reading.notes).toMatchObject([{ severity: "error", code }]);
  });

  const cell = fc.oneof(
    fc.integer({ min: -2000, max: 100_000 }).map(String),
    fc.double().map(String),
    fc.constantFrom("", "NaN", "9999", "0", "1e400", "1,5", "°C", '"'),
    fc.constantFrom("12:30", "25:61:61", "2026-13-45 99:99", "20.10.2026 3:04"),
    fc.string({ maxLength: 8 }),
  );
  const unit = fc.constantFrom("celsius" as const, "fahrenheit" as const, undefined);

  /** A curve that a page can draw, or an error that says why there is none. */
  function expectSense({ curve, notes }: LogReading): void {
    if (curve.length === 0) expect(notes.map((note) => note.severity)).toContain("error");
    curve.forEach((point, i) => {
      expect(point.celsius >= -40 && point.celsius <= 1500).toBe(true);
      expect(Number.isFinite(point.minutes)).toBe(true);
      if (i > 0) expect(point.minutes).toBeGreaterThan(curve[i - 1]?.minutes ?? Number.NaN);
    });
  }

  it("made of anything at all give sense or a reason", () => {
    const text = fc
      .array(fc.array(cell, { maxLength: 4 }), { maxLength: 30 })
      .chain((rows) =>
        fc.constantFrom(",", ";", "\t").map((by) => rows.map((row) => row.join(by)).join("\n")),
      );
    const head = fc.constantFrom("", "minutes,°C\n", "time;temp\n", "a\tb\n");
    fc.assert(
      fc.property(head, text, unit, (top, body, given) => {
        expectSense(parseLog(top + body, given));
      }),
      { numRuns: 300 },
    );
  });

  it("that were sound before cells were spoilt and rows shuffled give sense or a reason", () => {
    const spoilt = fc.array(fc.tuple(fc.nat(54), fc.nat(1), cell), { maxLength: 12 });
    const swapped = fc.array(fc.tuple(fc.nat(54), fc.nat(54)), { maxLength: 3 });
    fc.assert(
      fc.property(spoilt, swapped, unit, (spoils, swaps, given) => {
        const rows = firing(20).map(({ minutes, celsius }) => [`${minutes}`, `${celsius}`]);
        for (const [row, column, word] of spoils) rows[row]?.splice(column, 1, word);
        for (const [a, b] of swaps) [rows[a], rows[b]] = [rows[b] ?? [], rows[a] ?? []];
        const text = rows.map((row) => row.join(";")).join("\n");
        expectSense(parseLog(`minutes;temperature\n${text}`, given));
      }),
      { numRuns: 500 },
    );
  });

  it("a log of more than 20 MB is not even begun", () => {
    expect(codes(parseLog("1,20\n".repeat(4_000_001)))).toEqual(["log-too-large"]);
  });
});

describe("a long log", () => {
  it("takes some ten times as long as one with a tenth of its rows, heat work included", () => {
    const [, few] = timed(2_000);
    const [readings, many] = timed(20_000);
    expect(readings).toBe(20_000);
    expect(many / few).toBeLessThan(30);
  });
});

/** Reads a log of so many rows, three times: how many readings it has, and the least processor time. */
function timed(rows: number): readonly [readings: number, microseconds: number] {
  const lines = Array.from({ length: rows }, (_, i) => {
    const [h, m, s] = [Math.floor(i / 3600), Math.floor(i / 60) % 60, i % 60];
    return `20.10.2026;${two(h)}:${two(m)}:${two(s)};${comma(Number((20 + (i * 1_100) / rows).toFixed(1)))};1220`;
  });
  const text = `Datum;Zeit;Ist °C;Soll °C\n${lines.join("\n")}`;
  const runs = [1, 2, 3].map(() => {
    const begin = process.cpuUsage();
    const { curve } = parseLog(text);
    equivalentConeOf(curve);
    return { readings: curve.length, time: process.cpuUsage(begin).user };
  });
  return [runs[0]?.readings ?? 0, Math.min(...runs.map(({ time }) => time))];
}
