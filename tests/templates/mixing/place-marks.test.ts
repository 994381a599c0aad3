import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { findCrowds, mapView } from "../../../templates/mixing/map-view.ts";
import { chooseScattered, gatherNear, placeBoxes } from "../../../templates/mixing/place-marks.ts";

const room = { width: 900, height: 700 };
const box = { width: 120, height: 120 };
const point = fc.record({
  x: fc.double({ min: 0, max: 900, noNaN: true }),
  y: fc.double({ min: 0, max: 700, noNaN: true }),
});

describe("photographs on a map", () => {
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
  test("that lie together are one group, in the order of their first", () => {
    const points = [0, 100, 3, 98, 200].map((x) => ({ x, y: 0 }));
    expect(gatherNear(points, 5)).toEqual([[0, 2], [1, 3], [4]]);
  });

  test("are chosen far from one another where there are too many", () => {
    const points = [0, 1, 2, 50, 99, 100].map((x) => ({ x, y: 0 }));
    expect(chooseScattered(points, 3)).toEqual([0, 3, 5]);
    expect(chooseScattered(points, 6)).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

describe("a map", () => {
  const at = (silica: number, alumina: number) => ({ silica, alumina });
  const lines = [{ silicaToAlumina: 5, between: ["matte", "semi-matte"] }] as const;

  test("shows four glazes in one place as a crowd, and three beside one another", () => {
    const three = [at(3, 0.3), at(3, 0.3), at(3, 0.3), at(4, 0.6)];
    expect(findCrowds(three)).toEqual([]);
    expect(mapView(three, []).marks.every(({ place }) => place !== null)).toBe(true);
    const four = [...three, at(3, 0.3)];
    expect(findCrowds(four)).toEqual([[0, 1, 2, 4]]);
    const view = mapView(four, []);
    expect(view.marks.map(({ place }) => place !== null)).toEqual([
      false,
      false,
      false,
      true,
      false,
    ]);
    expect(view.crowds[0]?.members).toEqual([0, 1, 2, 4]);
  });

  test("has room for forty photographs, and shows the others as points", () => {
    const many = Array.from({ length: 60 }, (_, i) =>
      at(2 + (i % 10), 0.2 + Math.floor(i / 10) / 5),
    );
    expect(mapView(many, []).marks.filter(({ place }) => place !== null)).toHaveLength(40);
  });

  test("draws a ratio line where it lies in the plot, silica across and alumina up", () => {
    const view = mapView([at(2, 0.2), at(5, 0.9)], lines);
    const [placed] = view.lines;
    const { x, y } = view.scales;
    for (const end of [placed?.from, placed?.to]) {
      expect(x.invert(end?.x ?? 0) / y.invert(end?.y ?? 0)).toBeCloseTo(5, 6);
    }
    expect(view.points[1]?.x).toBeGreaterThan(view.points[0]?.x ?? 0);
    expect(view.points[1]?.y).toBeLessThan(view.points[0]?.y ?? 0);
  });

  test("leaves a ratio line out that runs beside the plot", () => {
    expect(mapView([at(10, 0.2), at(12, 0.25)], lines).lines).toEqual([]);
  });
});
