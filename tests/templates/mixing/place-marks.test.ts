import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { surfaces } from "../../../src/terms/choices.ts";
import { chooseScattered, placeBoxes } from "../../../templates/mixing/place-marks.ts";
import {
  type MapPoint,
  narrowMap,
  ratioMapView,
  wideMap,
} from "../../../templates/mixing/ratio-map-view.ts";

const room = { width: 900, height: 700 };
const box = { width: 120, height: 120 };
const point = fc.record({
  x: fc.double({ min: 0, max: 900, noNaN: true }),
  y: fc.double({ min: 0, max: 700, noNaN: true }),
});

describe("marks on a map", () => {
  propertyTest.prop([fc.array(point, { maxLength: 12 })], { numRuns: 60 })(
    "hide no other where there is room, and stay inside",
    (points) => {
      const places = placeBoxes(points, box, room);
      expect(places).toHaveLength(points.length);
      for (const [i, a] of places.entries()) {
        expect(a.x).toBeGreaterThanOrEqual(60);
        expect(a.x).toBeLessThanOrEqual(840);
        for (const b of places.slice(i + 1)) {
          const apart = Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));
          expect(apart).toBeGreaterThan(119);
        }
      }
    },
  );

  test("stand where their points are when nothing is in the way", () => {
    const [place] = placeBoxes([{ x: 300, y: 300 }], box, room);
    expect(Math.hypot((place?.x ?? 0) - 300, (place?.y ?? 0) - 300)).toBeLessThan(2);
  });

  test("hide no other where pushing them out of a corner goes round in circles", () => {
    const heights = [0, 0, 0, 0, 0, 0, 0, 501.65310900841223, 0, 570.9541015624989];
    const corner = heights.map((y) => ({ x: 0, y }));
    const places = placeBoxes(corner, box, room);
    for (const [i, a] of places.entries())
      for (const b of places.slice(i + 1))
        expect(Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y))).toBeGreaterThan(119);
  });

  test("of one point part the same way every time", () => {
    const same = Array.from({ length: 5 }, () => ({ x: 400, y: 300 }));
    expect(placeBoxes(same, box, room)).toEqual(placeBoxes(same, box, room));
  });
});

describe("points of a map", () => {
  test("are chosen far from one another where there are too many", () => {
    const points = [0, 1, 2, 50, 99, 100].map((x) => ({ x, y: 0 }));
    expect(chooseScattered(points, 3)).toEqual([0, 3, 5]);
    expect(chooseScattered(points, 6)).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

describe("a map", () => {
  const at = (ratio: number, glass: number, ...surface: MapPoint["surface"]): MapPoint => ({
    ratio,
    glass,
    surface,
  });

  test("has the ratio across and the glass above, with both published lines upright in view", () => {
    for (const frame of [wideMap, narrowMap]) {
      const { marks, boundaries, zones } = ratioMapView([at(7, 2), at(9, 4)], frame);
      const [low, high] = marks.map(({ point }) => point);
      expect(high?.x).toBeGreaterThan(low?.x ?? 0);
      expect(high?.y).toBeLessThan(low?.y ?? 0);
      expect(boundaries).toHaveLength(2);
      for (const x of boundaries) {
        expect(x).toBeGreaterThan(frame.plot.left);
        expect(x).toBeLessThan(low?.x ?? 0);
      }
      expect(zones.map(({ region }) => region)).toEqual(["matte", "semi-matte", "bright"]);
    }
  });

  test("tells from where to where each surface was seen, the shiniest first", () => {
    const { rows, marks } = ratioMapView(
      [at(6, 2, "matte"), at(7, 2, "matte", "satin"), at(9, 3, "gloss")],
      wideMap,
    );
    const [first, second, third] = marks.map(({ point }) => point.x);
    expect(rows.map(({ surface, from, to }) => [surface, from, to])).toEqual([
      ["gloss", third, third],
      ["satin", second, second],
      ["matte", first, second],
    ]);
  });

  test("has room for sixty marks, and shows the others as points", () => {
    const many = Array.from({ length: 80 }, (_, i) => at(5 + (i % 10), 2 + Math.floor(i / 10)));
    const { marks } = ratioMapView(many, wideMap);
    expect(marks.filter(({ place }) => place !== null)).toHaveLength(60);
    expect(marks).toHaveLength(80);
  });

  propertyTest.prop(
    [
      fc.array(
        fc.record({
          ratio: fc.double({ min: 0.5, max: 40, noNaN: true }),
          glass: fc.double({ min: 0.2, max: 9, noNaN: true }),
          surface: fc.subarray([...surfaces]),
        }),
        { minLength: 1, maxLength: 20 },
      ),
      fc.constantFrom(wideMap, narrowMap),
    ],
    { numRuns: 60 },
  )("keeps every mark in its plot, and none on another", (points, frame) => {
    const { left, top, right, bottom } = frame.plot;
    const places = ratioMapView(points, frame).marks.flatMap(({ place }) => place ?? []);
    expect(places).toHaveLength(points.length);
    for (const [i, { x, y }] of places.entries()) {
      expect(x).toBeGreaterThanOrEqual(left);
      expect(x).toBeLessThanOrEqual(right);
      expect(y).toBeGreaterThanOrEqual(top);
      expect(y).toBeLessThanOrEqual(bottom);
      for (const other of places.slice(i + 1))
        expect(
          Math.abs(other.x - x) > frame.mark.width - 1 ||
            Math.abs(other.y - y) > frame.mark.height - 1,
        ).toBe(true);
    }
  });
});
