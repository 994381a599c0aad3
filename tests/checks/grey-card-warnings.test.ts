import { describe, expect, it } from "vitest";
import { greyCardWarnings } from "../../src/checks/grey-card-warnings.ts";
import { type MeasuredColour, measureColour } from "../../src/colour/measure.ts";
import { nothing } from "./support.ts";

const { asTyped } = nothing;

/** A grey field whose left quarter is the card. */
function measured(card: readonly [number, number, number]): MeasuredColour {
  const [width, height] = [40, 20];
  const data = new Uint8Array(width * height * 3).fill(120);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width / 4; x++) data.set(card, (y * width + x) * 3);
  return measureColour({ data, width, height }, { grey: [0, 0, 25, 100] });
}

describe("a maker is told what to do about a grey card", () => {
  it("that is burnt out, that is not grey, and that lies in the dark", () => {
    const told = ([255, 40, 3] as const).map((r) =>
      greyCardWarnings(measured(r === 40 ? [200, 40, 30] : [r, r, r]), asTyped),
    );
    expect(told.flat().map(({ message }) => message.split(",")[0])).toEqual([
      "The grey card is burnt out in this photograph",
      "The place of the grey card is not grey in this photograph",
      "The place of the grey card is almost black in this photograph",
    ]);
    for (const [warning] of told) expect(warning?.code).toBe("grey-card-useless");
    expect(told[1]?.[0]?.hint).toBe(
      "Run “npx tilebook crop” and lay the frame on the card, or write “photo: {grey: no}” where there is none.",
    );
  });

  it("and not told anything where the card served, or there is none", () => {
    expect(greyCardWarnings(measured([124, 120, 110]), asTyped)).toEqual([]);
    expect(greyCardWarnings({ ...measured([124, 120, 110]), greyCard: null }, asTyped)).toEqual([]);
    expect(greyCardWarnings(undefined, asTyped)).toEqual([]);
  });
});
