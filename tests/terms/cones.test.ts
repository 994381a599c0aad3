import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Cone,
  chartedCones,
  compareCones,
  coneSlug,
  conesHotter,
  conesOutside,
  findHottest,
  formatConeRange,
  parseCone,
  parseConeRange,
} from "../../src/terms/cones.ts";
import { cone, readReference } from "../firing/reference.ts";

/** Any cone that a witness may be read as: those of the charts and every half between. */
const everyCone: readonly Cone[] = [
  ...Array.from({ length: 22 }, (_, i) => `0${i + 1}`),
  ...Array.from({ length: 14 }, (_, i) => `${i + 1}`),
].flatMap((name) => {
  const half = parseCone(`${name}½`, "any");
  return half.ok ? [cone(name), half.cone] : [cone(name)];
});

const anyCone = fc.constantFrom(...everyCone);
const charted = fc.constantFrom(...chartedCones);

describe("the names of cones", () => {
  it("are those of the published chart, and no others", () => {
    const printed = new Set(readReference("cones").map((row) => row.cone ?? ""));
    expect(chartedCones).toHaveLength(38);
    expect(new Set(chartedCones.map((name) => name.replace("½", ".5")))).toEqual(printed);
  });

  it("are read as potters write them", () => {
    const readings = [
      "06",
      " 6 ",
      "5½",
      "5.5",
      "5 1/2",
      "51/2",
      "05½",
      "05.5",
      "05 1/2",
      "022",
      "14",
    ];
    expect(readings.map((text) => cone(text))).toEqual([
      "06",
      "6",
      "5½",
      "5½",
      "5½",
      "5½",
      "05½",
      "05½",
      "05½",
      "022",
      "14",
    ]);
  });

  it.each([
    ["", []],
    ["six", []],
    ["0", ["01", "1"]],
    ["00", ["01", "1"]],
    ["023", ["022", "021"]],
    ["15", ["13", "14"]],
    ["100", ["13", "14"]],
    ["-6", ["5½", "6"]],
    ["6.5", ["6", "7"]],
    ["06½", ["07", "06"]],
    ["5.50", ["5", "5½"]],
    ["006", ["06", "05½"]],
    ["6½½", ["5½", "6"]],
    ["cone 6", ["5½", "6"]],
    ["1222", ["13", "14"]],
    ["1e1", ["01", "1"]],
    ["٦", []],
  ])("%o is none, and the nearest are told", (text, nearest) => {
    expect(parseCone(text)).toEqual({ ok: false, nearest });
  });

  it("have no halves in a chart but 05½ and 5½; a witness may be read as any", () => {
    const halves = everyCone.filter((name) => name.endsWith("½"));
    expect(halves).toHaveLength(34);
    for (const half of halves)
      expect(parseCone(half).ok, half).toBe(half === "05½" || half === "5½");
    expect(parseCone("022½", "any").ok).toBe(false);
    expect(parseCone("14½", "any").ok).toBe(false);
    expect(parseCone("0½", "any").ok).toBe(false);
  });

  it("read back as themselves", () => {
    fc.assert(
      fc.property(anyCone, (name) => {
        expect(parseCone(name, "any")).toEqual({ ok: true, cone: name });
      }),
    );
  });

  it("are never made of a number and back: what is read never loses its nought", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const reading = parseCone(text, "any");
        if (reading.ok) expect(reading.cone.startsWith("0")).toBe(text.trim().startsWith("0"));
        else expect(reading.nearest.every((name) => chartedCones.includes(name))).toBe(true);
      }),
    );
  });

  it("make addresses that differ", () => {
    expect(coneSlug(cone("05½"))).toBe("05-half");
    expect(new Set(everyCone.map(coneSlug)).size).toBe(everyCone.length);
  });
});

describe("the order of cones", () => {
  it("is that of their published temperatures", () => {
    for (const rate of ["60", "150"]) {
      const printed = readReference("cones")
        .filter((row) => row.cone_type === "self-supporting regular" && row.rate_C_per_h === rate)
        .map((row) => ({ name: cone(row.cone ?? ""), celsius: Number(row.temp_C) }));
      expect(printed).toHaveLength(38);
      const byHeat = printed.toSorted((a, b) => a.celsius - b.celsius).map(({ name }) => name);
      expect(byHeat).toEqual(printed.map(({ name }) => name).toSorted(compareCones));
    }
  });

  it("is total: of two cones one is hotter, unless they are the same", () => {
    fc.assert(
      fc.property(anyCone, anyCone, (a, b) => {
        expect(Math.sign(compareCones(a, b)) + Math.sign(compareCones(b, a))).toBe(0);
        expect(compareCones(a, b) === 0).toBe(a === b);
      }),
    );
  });

  it("holds from the first to the third by way of the second", () => {
    fc.assert(
      fc.property(anyCone, anyCone, anyCone, (a, b, c) => {
        const [first, second, third] = [a, b, c].toSorted(compareCones) as [Cone, Cone, Cone];
        expect(compareCones(first, third)).toBeLessThanOrEqual(0);
        expect(conesHotter(third, first)).toBe(
          conesHotter(third, second) + conesHotter(second, first),
        );
      }),
    );
  });

  it("a half cone lies between its neighbours, in the series with the nought as in the other", () => {
    expect(
      ["05", "05½", "06", "6", "5½", "5"].map((text) => cone(text)).toSorted(compareCones),
    ).toEqual(["06", "05½", "05", "5", "5½", "6"]);
  });

  it("puts nothing between 01 and 1, and eleven cones between 06 and 6", () => {
    expect(conesHotter(cone("1"), cone("01"))).toBe(1);
    expect(conesHotter(cone("6"), cone("06"))).toBe(11);
    expect(conesHotter(cone("06"), cone("6"))).toBe(-11);
    expect(conesHotter(cone("5½"), cone("5"))).toBe(0.5);
    expect(conesHotter(cone("05"), cone("05½"))).toBe(0.5);
  });

  it("finds the hottest, and none among none", () => {
    expect(findHottest(["04", "6", "05½", "5½"].map((text) => cone(text)))).toBe("6");
    expect(findHottest([])).toBeUndefined();
    fc.assert(
      fc.property(fc.array(anyCone, { minLength: 1 }), (cones) => {
        expect(findHottest(cones)).toBe(cones.toSorted(compareCones).at(-1));
      }),
    );
  });
});

describe("a range of cones", () => {
  const range = (text: string) => {
    const reading = parseConeRange(text);
    if (!reading.ok) throw new Error(`no range ${text}`);
    return reading.range;
  };

  it("may be one cone, or two in any of the ways they are written", () => {
    expect(range("6")).toEqual({ from: "6", to: "6" });
    for (const text of ["06-04", "06–04", "06 — 04", "06 to 04", "04-06"])
      expect(range(text)).toEqual({ from: "06", to: "04" });
    expect(range("5 1/2 - 6")).toEqual({ from: "5½", to: "6" });
  });

  it("runs across 01 and 1 either way round", () => {
    expect(range("01-1")).toEqual({ from: "01", to: "1" });
    expect(range("6-06")).toEqual({ from: "06", to: "6" });
  });

  it("is the same whichever way round it is written, the cooler cone first", () => {
    fc.assert(
      fc.property(charted, charted, (a, b) => {
        expect(range(`${a}-${b}`)).toEqual(range(`${b}-${a}`));
        expect(compareCones(range(`${a}-${b}`).from, range(`${a}-${b}`).to)).toBeLessThanOrEqual(0);
      }),
    );
  });

  it("reads back from the way it is shown", () => {
    fc.assert(
      fc.property(charted, charted, (a, b) => {
        const meant = range(`${a}-${b}`);
        expect(range(formatConeRange(meant))).toEqual(meant);
      }),
    );
  });

  it.each(["", "-", "6-", "-6", "4-5-6", "4-x", "6,7", "04to06"])("%o is none", (text) => {
    expect(parseConeRange(text).ok).toBe(false);
  });

  it("tells how far a cone lies outside it", () => {
    const lowFire = range("06-04");
    expect(conesOutside(cone("05½"), lowFire)).toBe(0);
    expect(conesOutside(cone("06"), lowFire)).toBe(0);
    expect(conesOutside(cone("04"), lowFire)).toBe(0);
    expect(conesOutside(cone("6"), lowFire)).toBe(9);
    expect(conesOutside(cone("08"), lowFire)).toBe(-2);
  });

  it("holds a cone exactly where neither end is beyond it", () => {
    fc.assert(
      fc.property(anyCone, charted, charted, (tested, a, b) => {
        const { from, to } = range(`${a}-${b}`);
        const isInside = compareCones(from, tested) <= 0 && compareCones(tested, to) <= 0;
        expect(conesOutside(tested, { from, to }) === 0).toBe(isInside);
      }),
    );
  });
});
