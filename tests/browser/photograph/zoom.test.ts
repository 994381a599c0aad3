import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { closest, panBy, wholePicture, zoomAt } from "../../../src/browser/photograph/zoom.ts";

const fit = { picture: { width: 300, height: 400 }, frame: { width: 400, height: 400 } };
const moves = fc.array(
  fc.record({
    factor: fc.double({ min: 0.2, max: 5, noNaN: true }),
    x: fc.integer({ min: -200, max: 200 }),
    y: fc.integer({ min: -200, max: 200 }),
  }),
  { maxLength: 20 },
);

describe("an enlarged photograph", () => {
  propertyTest.prop([moves])("never leaves its window, whatever is done", (all) => {
    let zoom = wholePicture;
    for (const { factor, x, y } of all) {
      zoom = panBy(zoomAt(zoom, factor, { x, y }, fit), x, y, fit);
      const spare = (side: "width" | "height") =>
        Math.max(0, (fit.picture[side] * zoom.scale - fit.frame[side]) / 2);
      expect(zoom.scale).toBeGreaterThanOrEqual(1);
      expect(zoom.scale).toBeLessThanOrEqual(closest);
      expect(Math.abs(zoom.x)).toBeLessThanOrEqual(spare("width") + 1e-9);
      expect(Math.abs(zoom.y)).toBeLessThanOrEqual(spare("height") + 1e-9);
    }
  });

  test("keeps the point under the finger where it is", () => {
    const at = { x: 40, y: -60 };
    const before = zoomAt(wholePicture, 3, { x: 0, y: 0 }, fit);
    const after = zoomAt(before, 1.5, at, fit);
    const pointUnder = (zoom: typeof before) => [
      (at.x - zoom.x) / zoom.scale,
      (at.y - zoom.y) / zoom.scale,
    ];
    expect(pointUnder(after)[0]).toBeCloseTo(pointUnder(before)[0] ?? NaN, 9);
    expect(pointUnder(after)[1]).toBeCloseTo(pointUnder(before)[1] ?? NaN, 9);
  });

  test("lies in the middle again once it is whole", () => {
    const moved = panBy(zoomAt(wholePicture, 4, { x: 90, y: 90 }, fit), 50, 50, fit);
    expect(zoomAt(moved, 0.01, { x: 90, y: 90 }, fit)).toEqual(wholePicture);
  });
});
