import { describe, expect, it } from "vitest";
import { linearToLab } from "../../src/colour/cielab.ts";
import { differenceCiede2000 } from "../../src/colour/difference.ts";
import { correctByCard } from "../../src/colour/grey-card.ts";
import { multiply } from "../../src/colour/matrix.ts";
import type { Pixels } from "../../src/colour/region.ts";
import { type LinearRgb, lightOfCode, linearToSrgb } from "../../src/colour/srgb.ts";
import {
  blackBody,
  colourInDaylight,
  colourUnder,
  LAMPS,
  lobe,
  type Spectrum,
  step,
} from "./lights.ts";

/** Surfaces that reflect as glazes do: smooth curves, a step for iron, a hump for metals. */
const CHART: Record<string, Spectrum> = {
  white: () => 0.85,
  grey: () => 0.4,
  black: () => 0.03,
  "iron black": (l) => 0.02 + 0.06 * step(590, 25)(l),
  "iron brown": (l) => 0.05 + 0.25 * step(590, 25)(l),
  ochre: (l) => 0.12 + 0.4 * step(560, 35)(l),
  "pale green": (l) => 0.3 + 0.2 * lobe(l, 530, 70, 70),
  "cobalt blue": (l) => 0.05 + 0.25 * lobe(l, 450, 45, 50),
  "rutile blue": (l) => 0.2 + 0.2 * lobe(l, 470, 60, 60),
  cream: (l) => 0.45 + 0.3 * step(520, 30)(l),
  pink: (l) => 0.4 + 0.25 * step(580, 20)(l) + 0.1 * lobe(l, 440, 40, 40),
  "copper red": (l) => 0.05 + 0.25 * step(605, 15)(l),
  "copper green": (l) => 0.12 + 0.16 * lobe(l, 520, 50, 50),
  lilac: (l) => 0.2 + 0.2 * lobe(l, 440, 40, 40) + 0.15 * step(630, 20)(l),
};

/** A steep curve: what a lamp's light tells of it, daylight contradicts most. */
const DEEP_COPPER: Record<string, Spectrum> = {
  "deep copper green": (l) => 0.06 + 0.2 * lobe(l, 520, 45, 45),
};

const CARD: Spectrum = () => 0.18;

/** A photograph of one surface, exposed so that the chart's white is not burnt out. */
function photograph(surface: Spectrum, light: Spectrum): [number, number, number] {
  const brightest = Math.max(...colourUnder(() => 0.85, light));
  const [r, g, b] = colourUnder(surface, light).map((channel) => {
    const code = linearToSrgb((channel * 0.92) / brightest);
    return Math.round(255 * Math.min(1, Math.max(0, code)));
  });
  return [r ?? 0, g ?? 0, b ?? 0];
}

function fill(codes: readonly number[], size = 8): Pixels {
  const data = Uint8Array.from(Array.from({ length: size * size }, () => codes).flat());
  return { data, width: size, height: size };
}

function lightOf(codes: readonly number[]): LinearRgb {
  const [r = 0, g = 0, b = 0] = codes.map((code) => lightOfCode[code] ?? 0);
  return [r, g, b];
}

function correctionFor(codes: readonly number[]) {
  const correction = correctByCard(fill(codes), [0, 0, 100, 100]);
  if ("unusable" in correction) throw new Error(correction.unusable);
  return correction;
}

function errorsUnder(light: Spectrum, chart: Record<string, Spectrum>, correct = true) {
  const { matrix } = correctionFor(photograph(CARD, light));
  return Object.entries(chart).flatMap(([name, surface]) => {
    const codes = photograph(surface, light);
    const isClipped = codes.some((code) => code <= 1 || code >= 254);
    if (isClipped) return [];
    const seen = correct ? multiply(matrix, lightOf(codes)) : lightOf(codes);
    const truth = linearToLab(colourInDaylight(surface));
    return [{ name, error: differenceCiede2000(linearToLab(seen), truth) }];
  });
}

describe("a grey card puts the light right", () => {
  it.each([2700, 3500, 5000, 7500])(
    "every patch that the camera can hold comes within 3 of daylight under %i K",
    (kelvin) => {
      const errors = errorsUnder(blackBody(kelvin), CHART);
      expect(errors.length).toBeGreaterThanOrEqual(13);
      for (const { name, error } of errors) expect(error, name).toBeLessThan(3);
    },
  );

  it("without it the same patches are off by far more", () => {
    const errors = errorsUnder(blackBody(2700), CHART, false).map(({ error }) => error);
    expect(Math.min(...errors)).toBeGreaterThan(7);
  });

  it.each([3500, 5000, 7500])("a deep copper green too comes within 3 under %i K", (kelvin) => {
    const [green] = errorsUnder(blackBody(kelvin), DEEP_COPPER);
    expect(green?.error).toBeLessThan(3);
  });

  it("a deep copper green under a household bulb keeps an error that no card can tell", () => {
    const [green] = errorsUnder(blackBody(2700), DEEP_COPPER);
    expect(green?.error).toBeCloseTo(3.6, 0);
  });

  it.each(Object.entries(LAMPS))(
    "under %s no patch is off by more than 4½, and most by less than 2½",
    (_, lamp) => {
      const errors = errorsUnder(lamp, { ...CHART, ...DEEP_COPPER }).map(({ error }) => error);
      expect(Math.max(...errors)).toBeLessThan(4.5);
      expect(errors.sort((a, b) => a - b)[errors.length >> 1]).toBeLessThan(2.5);
    },
  );

  it("the card itself comes out neutral", () => {
    const { matrix } = correctionFor([159, 107, 52]);
    const [, a, b] = linearToLab(multiply(matrix, lightOf([159, 107, 52])));
    expect(Math.hypot(a, b)).toBeLessThan(0.01);
  });
});

describe("exposure", () => {
  const lightnessAfter = (code: number) => {
    const { matrix, exposure } = correctionFor([code, code, code]);
    return [exposure, linearToLab(multiply(matrix, lightOf([code, code, code])))[0]] as const;
  };

  it("is left as taken where the card is as light as grey cards are", () => {
    const [exposure, lightness] = lightnessAfter(124);
    expect(exposure).toBe("as-taken");
    expect(lightness).toBeCloseTo(linearToLab(lightOf([124, 124, 124]))[0], 6);
  });

  it("is put right by the nearer end of that range where it was dark or light", () => {
    expect(lightnessAfter(95)).toEqual(["corrected", expect.closeTo(49.5, 1)]);
    expect(lightnessAfter(150)).toEqual(["corrected", expect.closeTo(53.6, 1)]);
  });

  it("is left as taken where the card cannot be a grey card's grey", () => {
    const [exposure, lightness] = lightnessAfter(225);
    expect(exposure).toBe("not-a-grey-cards");
    expect(lightness).toBeCloseTo(linearToLab(lightOf([225, 225, 225]))[0], 6);
  });
});

describe("a card that cannot serve is not used", () => {
  it.each([
    ["burnt-out", [255, 240, 200]],
    ["dark", [40, 20, 8]],
    ["coloured", [220, 40, 30]],
  ])("since it is %s", (unusable, codes) => {
    expect(correctByCard(fill(codes), [0, 0, 100, 100])).toEqual({ unusable });
  });

  it("but a scratch or a word printed on it does no harm", () => {
    const card = fill([159, 107, 52]);
    card.data.fill(0, 0, 8 * 3 * 2);
    expect(correctByCard(card, [0, 0, 100, 100])).toEqual(correctionFor([159, 107, 52]));
  });
});
