import type { Daylight } from "./daylight.ts";
import { type Grid, makeGrid, num } from "./grid.ts";
import type { Vec3 } from "./vector.ts";

/** The view's axes in the world: right and up in the picture, and towards the camera. */
export interface ViewAxes {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toCamera: Vec3;
}

/**
 * Light that reaches each point, as a vector in view axes: a surface with normal n receives x·nx +
 * y·ny + z·nz. Apart for the window and the room.
 */
export interface ReceivedLight {
  readonly window: readonly [Grid, Grid, Grid];
  readonly room: readonly [Grid, Grid, Grid];
}

const STEPS = 256;
const HALF_TURN_PARTS = 96;

/**
 * Lights a view of solid things without any chance: for each of a number of directions across the
 * picture, every point's horizon is found by one sweep with a convex hull (linear in the number of
 * points), and the sky above that horizon is added from a table.
 *
 * `depth` is the height towards the camera in millimetres, `slopes` the surface's rise to the right
 * and upwards; `pixel` is the width of a cell in millimetres.
 */
export function lightView(
  depth: Grid,
  slopes: readonly [Grid, Grid],
  pixel: number,
  axes: ViewAxes,
  daylight: Daylight,
  directions: number,
): ReceivedLight {
  const planes = () => makeGrid(depth.width, depth.height);
  const light: ReceivedLight = {
    window: [planes(), planes(), planes()],
    room: [planes(), planes(), planes()],
  };
  for (const sector of shareSectors(axes, daylight, directions)) {
    const horizon = sweepHorizon(depth, pixel, Math.cos(sector.angle), Math.sin(sector.angle));
    addSector(light, horizon, slopes, sector, skyTables(axes, daylight, sector));
  }
  return light;
}

interface Sector {
  readonly angle: number;
  readonly width: number;
}

/** Sectors of the whole turn, narrower where the window stands. */
function shareSectors(axes: ViewAxes, daylight: Daylight, count: number): Sector[] {
  const parts = 360;
  const weights = Array.from({ length: parts }, (_, i) => {
    const angle = ((i + 0.5) / parts) * Math.PI * 2;
    let window = 0;
    for (let j = 1; j < 24; j++) {
      window += daylight.window(viewDirection(axes, angle, (j / 24) * (Math.PI / 2)), 0);
    }
    return window;
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const sectors: Sector[] = [];
  let begun = 0;
  let share = 0;
  for (let i = 0; i < parts; i++) {
    share += (0.5 / parts + (0.5 * (weights[i] ?? 0)) / total) * count;
    if (share >= 1 || i === parts - 1) {
      const width = ((i + 1 - begun) / parts) * Math.PI * 2;
      sectors.push({ angle: (begun / parts) * Math.PI * 2 + width / 2, width });
      begun = i + 1;
      share -= 1;
    }
  }
  return sectors;
}

function viewDirection(axes: ViewAxes, angle: number, elevation: number): Vec3 {
  const x = Math.cos(angle) * Math.cos(elevation);
  const y = Math.sin(angle) * Math.cos(elevation);
  const z = Math.sin(elevation);
  const part = (i: 0 | 1 | 2) => axes.right[i] * x + axes.up[i] * y + axes.toCamera[i] * z;
  return [part(0), part(1), part(2)];
}

/** Four running sums of light above each horizon: across and towards the camera, window and room. */
function skyTables(axes: ViewAxes, daylight: Daylight, sector: Sector): Float32Array {
  const table = new Float32Array(STEPS * 4);
  const sums = [0, 0, 0, 0];
  let part = HALF_TURN_PARTS - 1;
  const width = Math.PI / HALF_TURN_PARTS;
  for (let step = STEPS - 1; step >= 0; step--) {
    const horizon = Math.atan(stepSlope(step));
    for (; part >= 0; part--) {
      const elevation = -Math.PI / 2 + (part + 0.5) * width;
      if (elevation < horizon) break;
      addPart(sums, axes, daylight, sector, elevation, width);
    }
    table.set(sums, step * 4);
  }
  return table;
}

function addPart(
  sums: number[],
  axes: ViewAxes,
  daylight: Daylight,
  sector: Sector,
  elevation: number,
  width: number,
): void {
  const across = Math.cos(elevation);
  const solid = (across * width * sector.width) / Math.PI;
  let window = 0;
  let room = 0;
  for (let k = -1; k <= 1; k++) {
    const direction = viewDirection(axes, sector.angle + (k * sector.width) / 3, elevation);
    window += daylight.window(direction, 0) / 3;
    room += daylight.room(direction, 0) / 3;
  }
  const toCamera = Math.sin(elevation);
  sums[0] = (sums[0] ?? 0) + window * solid * across;
  sums[1] = (sums[1] ?? 0) + window * solid * toCamera;
  sums[2] = (sums[2] ?? 0) + room * solid * across;
  sums[3] = (sums[3] ?? 0) + room * solid * toCamera;
}

function stepSlope(step: number): number {
  const t = Math.min(0.9999, Math.max(-0.9999, (step / (STEPS - 1)) * 2 - 1));
  return t / (1 - Math.abs(t));
}

/** Parallel lines through the picture, each walked away from the light. */
interface Sweep {
  /** Whether the lines run more across than down. */
  readonly wide: boolean;
  readonly length: number;
  readonly lines: number;
  /** Cells that a line moves sideways with each step along it. */
  readonly lean: number;
  readonly backwards: boolean;
  readonly stepMm: number;
}

function planSweep(depth: Grid, pixel: number, dx: number, dy: number): Sweep {
  const wide = Math.abs(dx) >= Math.abs(dy);
  const lean = wide ? -dy / dx : -dx / dy;
  return {
    wide,
    length: wide ? depth.width : depth.height,
    lines: wide ? depth.height : depth.width,
    lean,
    backwards: wide ? dx > 0 : dy < 0,
    stepMm: pixel * Math.hypot(1, lean),
  };
}

/** The slope of each point's horizon towards (dx, dy), y upwards; very low where nothing rises. */
function sweepHorizon(depth: Grid, pixel: number, dx: number, dy: number): Float32Array {
  const out = new Float32Array(depth.data.length);
  const sweep = planSweep(depth, pixel, dx, dy);
  const reach = Math.ceil(Math.abs(sweep.lean) * sweep.length);
  const hull = new Hull(sweep.length);
  for (let line = -reach; line < sweep.lines + reach; line++) {
    hull.clear();
    sweepLine(depth, sweep, line, hull, out);
  }
  return out;
}

function sweepLine(depth: Grid, sweep: Sweep, line: number, hull: Hull, out: Float32Array): void {
  const { width, data } = depth;
  const { wide, length, lines, lean, backwards, stepMm } = sweep;
  for (let i = 0; i < length; i++) {
    const along = backwards ? length - 1 - i : i;
    const across = Math.round(line + along * lean);
    if (across < 0 || across >= lines) continue;
    const at = wide ? across * width + along : along * width + across;
    out[at] = hull.pass(i * stepMm, num(data, at));
  }
}

/** The upper hull of the heights passed so far, as seen by whoever walks away from the light. */
class Hull {
  readonly #places: Float64Array;
  readonly #heights: Float64Array;
  #count = 0;

  constructor(length: number) {
    this.#places = new Float64Array(length);
    this.#heights = new Float64Array(length);
  }

  clear(): void {
    this.#count = 0;
  }

  /** Passes the next height; returns how steeply the hull behind rises from there. */
  pass(place: number, height: number): number {
    let slope = -1e4;
    if (this.#count > 0) slope = this.#rise(this.#count - 1, place, height);
    while (this.#count > 1) {
      const next = this.#rise(this.#count - 2, place, height);
      if (next < slope) break;
      slope = next;
      this.#count--;
    }
    this.#places[this.#count] = place;
    this.#heights[this.#count] = height;
    this.#count++;
    return slope;
  }

  #rise(index: number, place: number, height: number): number {
    return ((this.#heights[index] as number) - height) / (place - (this.#places[index] as number));
  }
}

function addSector(
  light: ReceivedLight,
  horizon: Float32Array,
  slopes: readonly [Grid, Grid],
  sector: Sector,
  table: Float32Array,
): void {
  const dx = Math.cos(sector.angle);
  const dy = Math.sin(sector.angle);
  const [wx, wy, wz] = [light.window[0].data, light.window[1].data, light.window[2].data];
  const [rx, ry, rz] = [light.room[0].data, light.room[1].data, light.room[2].data];
  const [sx, sy] = [slopes[0].data, slopes[1].data];
  for (let i = 0; i < horizon.length; i++) {
    const slope = Math.max(num(horizon, i), num(sx, i) * dx + num(sy, i) * dy);
    const t = slope / (1 + Math.abs(slope));
    const step = (((t + 1) * 0.5 * (STEPS - 1)) | 0) * 4;
    const windowAcross = num(table, step);
    const roomAcross = num(table, step + 2);
    wx[i] = num(wx, i) + windowAcross * dx;
    wy[i] = num(wy, i) + windowAcross * dy;
    wz[i] = num(wz, i) + num(table, step + 1);
    rx[i] = num(rx, i) + roomAcross * dx;
    ry[i] = num(ry, i) + roomAcross * dy;
    rz[i] = num(rz, i) + num(table, step + 3);
  }
}
