import type { Extent } from "./chart.ts";
import { clamp, smoothstep } from "./grid.ts";
import { grain, noisePlace } from "./noise.ts";
import { between, makeChance } from "./random.ts";
import type { Vec3 } from "./vector.ts";

/** A test piece as a solid, in millimetres: x to the right, y away from the viewer, z up. */
export interface Form {
  /** Signed distance to the solid, near enough for stepping along a ray. */
  distance(x: number, y: number, z: number): number;
  /** Where on the chart a point of the skin with this normal lies. */
  chartPlace(point: Vec3, normal: Vec3): readonly [number, number];
  /** Directions in which the chart's x and y run over the skin; they need not lie in it. */
  chartAxes(point: Vec3, normal: Vec3): readonly [Vec3, Vec3];
  readonly face: Extent;
  readonly margin: Extent;
  /** The middle of what the camera looks at. */
  readonly centre: Vec3;
  /** Half a box around it, on the ground, for a quick miss. */
  readonly reach: Vec3;
  readonly stands: boolean;
  /** Millimetres across the picture. */
  readonly frame: number;
  /** Whether its front is one plane, which mirrors what lies on the table. */
  readonly plane: boolean;
}

/** What of a form comes from the hand that made it. */
interface Making {
  readonly seed: string;
  /** Millimetres that the middle rises above the ends. */
  readonly bow: number;
  readonly hole: boolean;
  /** Degrees between wall and ground, for pieces that stand. */
  readonly angle: number;
}

/** The form of a tile's `shape`; shapes in a studio's own words are flat. */
export function makeForm(shape: string, seed: string, warped: boolean, angle: number): Form {
  const chance = makeChance(`form ${seed}`);
  const making = {
    seed,
    bow: warped ? between(chance, 2.2, 3.4) : between(chance, 0.25, 0.7),
    hole: chance() < 0.35,
    angle,
  };
  switch (shape) {
    case "channel":
      return channel(making);
    case "l-shape":
      return standingPlate(making, 26);
    case "upright":
      return standingPlate(making, 0);
    case "ring":
      return turned(making, 46, () => 31, 4.5);
    case "pot":
      return turned(
        making,
        60,
        (z) => 24 + 8 * smoothstep(-4, 34, z) - 2.2 * smoothstep(30, 60, z),
        4,
      );
    default:
      return flat(making);
  }
}

function roundRectangle(x: number, y: number, halfX: number, halfY: number, radius: number) {
  const qx = Math.abs(x) - halfX + radius;
  const qy = Math.abs(y) - halfY + radius;
  return Math.min(Math.max(qx, qy), 0) + Math.hypot(Math.max(qx, 0), Math.max(qy, 0)) - radius;
}

/** A solid of outline `plan` and half-thickness, its edges rounded. */
function slab(plan: number, height: number, half: number, fillet: number): number {
  const qx = plan + fillet;
  const qy = Math.abs(height) - half + fillet;
  return Math.min(Math.max(qx, qy), 0) + Math.hypot(Math.max(qx, 0), Math.max(qy, 0)) - fillet;
}

function margins(size: number): Extent {
  return { left: size, right: size, bottom: size, top: size };
}

function flat(making: Making): Form {
  const at = noisePlace(`edge ${making.seed}`);
  const thickness = 6.4;
  const bowAt = (x: number, y: number) => making.bow * (1.5 - (x * x) / 1400 - (y * y) / 1800);
  return {
    distance(x, y, z) {
      const wobble = 0.32 * grain(at.x + x * 0.045, at.y + y * 0.045);
      const plan = roundRectangle(x, y, 30, 40, 2.6) + wobble;
      const solid = slab(plan, z - thickness / 2 - bowAt(x, y), thickness / 2, 1.5);
      if (!making.hole) return solid;
      const bore = 2.4 - Math.hypot(x, y - 33.5);
      return smoothMax(solid, bore, 0.8);
    },
    chartPlace(p, n) {
      const below = Math.max(0, thickness + bowAt(p[0], p[1]) - p[2]);
      return [p[0] + n[0] * below, p[1] + n[1] * below];
    },
    chartAxes: (_, n) => [
      [1, 0, -n[0]],
      [0, 1, -n[1]],
    ],
    face: { left: -30, right: 30, bottom: -40, top: 40 },
    margin: margins(7),
    centre: [0, 0, 5],
    reach: [32, 42, 11],
    stands: false,
    frame: 79,
    plane: false,
  };
}

function smoothMax(a: number, b: number, radius: number): number {
  const h = Math.max(0, radius - Math.abs(a - b)) / radius;
  return Math.max(a, b) + h * h * radius * 0.25;
}

/** A gutter, open upwards, in which a measured drop shows how far a glaze runs. */
function channel(making: Making): Form {
  const radius = 27;
  const wall = 6;
  const rise = radius + wall;
  const at = noisePlace(`edge ${making.seed}`);
  return {
    distance(x, y, z) {
      const wobble = 0.3 * grain(at.x + x * 0.05, at.y + y * 0.05);
      const trough = Math.abs(Math.hypot(x, z - rise) - radius - wall / 2) - wall / 2;
      const cut = smoothMax(trough, roundRectangle(x, y, 27, 40, 2) + wobble, 1.6);
      return smoothMax(smoothMax(cut, z - 15 - wobble, 2.2), 0.1 - z, 0.5);
    },
    chartPlace: (p, n) => {
      const out = Math.max(0, Math.hypot(p[0], p[2] - rise) - radius);
      const over = n[2] < 0.95 && Math.abs(n[1]) > 0.4 ? Math.sign(n[1]) * out : 0;
      const u = radius * Math.atan2(p[0], rise - p[2]);
      return [u + (over === 0 ? Math.sign(u) * out : 0), p[1] + over];
    },
    chartAxes: (p, n) => {
      const angle = Math.atan2(p[0], rise - p[2]);
      return [
        [Math.cos(angle), 0, Math.sin(angle)],
        [0, 1, -n[1]],
      ];
    },
    face: { left: -23, right: 23, bottom: -40, top: 40 },
    margin: { left: 14, right: 14, bottom: 9, top: 9 },
    centre: [0, 0, 6],
    reach: [32, 42, 17],
    stands: false,
    frame: 79,
    plane: false,
  };
}

/** A wall that stands, with a foot in front that catches what runs (or a short one behind). */
function standingPlate(making: Making, footDepth: number): Form {
  const height = 82;
  const thickness = 7;
  const lean = Math.tan(((90 - clamp(making.angle, 45, 90)) * Math.PI) / 180) + 0.035;
  const at = noisePlace(`edge ${making.seed}`);
  const front = (z: number) => lean * z;
  return {
    distance(x, y, z) {
      const wobble = 0.35 * grain(at.x + x * 0.05, at.y + z * 0.05);
      const wallPlan = roundRectangle(x, z - height / 2, 29, height / 2, 3) + wobble;
      const wall = slab(wallPlan, y - front(z) - thickness / 2, thickness / 2, 1.6);
      const depth = footDepth > 0 ? footDepth : 12;
      const footY = footDepth > 0 ? y + depth / 2 - thickness / 2 : y - depth / 2 - thickness;
      const footPlan = roundRectangle(x, footY, 29, depth / 2 + thickness / 2, 3) + wobble;
      const foot = slab(footPlan, z - thickness / 2, thickness / 2, 1.6);
      const both = -smoothMax(-wall, -foot, 9);
      return smoothMax(both, Math.abs(x) - 28.9 + wobble, 1.2);
    },
    chartPlace: (p, n) => {
      const behind = Math.max(0, p[1] - front(p[2]));
      if (footDepth > 0 && p[1] < front(p[2]) - 0.5) {
        return [p[0], -height / 2 + p[2] - Math.max(0, front(p[2]) - p[1])];
      }
      return [p[0] + n[0] * behind, p[2] - height / 2 + Math.max(0, n[2]) * behind];
    },
    chartAxes: (_, n) => [
      [1, n[0], 0],
      [0, n[2], 1],
    ],
    face: { left: -29, right: 29, bottom: footDepth > 0 ? -51 : -41, top: 41 },
    margin: { left: 8, right: 8, bottom: footDepth > 0 ? 18 : 6, top: 8 },
    centre: footDepth > 0 ? [0, 4, height * 0.42] : [0, front(height * 0.5) + 3, height * 0.47],
    reach: [32, 60, height + 3],
    stands: true,
    frame: footDepth > 0 ? 88 : 82,
    plane: true,
  };
}

/** A piece turned on the wheel: `radius` gives the outside at each height. */
function turned(making: Making, height: number, radius: (z: number) => number, wall: number): Form {
  const at = noisePlace(`throwing ${making.seed}`);
  const outside = (z: number) =>
    radius(clamp(z, 0, height)) +
    0.22 * grain(at.x + z * 0.16, at.y) +
    0.1 * grain(at.y + z * 0.4, 3);
  const girth = radius(height * 0.6);
  const floor = 5;
  return {
    distance(x, y, z) {
      const r = Math.hypot(x, y);
      const shell = Math.abs(r - outside(z) + wall / 2) - wall / 2;
      const body = slab(shell, z - height / 2, height / 2, 1.7);
      const base = Math.max(r - outside(z) + 1, Math.abs(z - floor / 2) - floor / 2);
      return Math.min(body, base) * 0.92;
    },
    chartPlace: (p) => {
      const r = Math.hypot(p[0], p[1]);
      const inward = outside(p[2]) - r;
      const u = girth * Math.atan2(p[0], -p[1]);
      const front = girth * Math.PI * 0.5;
      const mirrored = Math.abs(u) > front ? (2 * front - Math.abs(u)) * Math.sign(u) : u;
      if (inward < wall * 0.55) return [mirrored, p[2] - height / 2 + Math.max(0, inward)];
      return [mirrored, height / 2 + inward + (height - p[2])];
    },
    chartAxes: (p, n) => {
      const r = Math.hypot(p[0], p[1]) || 1;
      const outward = n[0] * p[0] + n[1] * p[1] > -0.2 * r ? 1 : -1;
      return [
        [-p[1] / r, p[0] / r, 0],
        [(-p[0] / r) * n[2], (-p[1] / r) * n[2], outward],
      ];
    },
    face: { left: -girth * 1.75, right: girth * 1.75, bottom: -height / 2, top: height / 2 },
    margin: { left: 3, right: 3, bottom: 2, top: 34 },
    centre: [0, 0, height * 0.45],
    reach: [36, 36, height + 2],
    stands: true,
    frame: 88,
    plane: false,
  };
}
