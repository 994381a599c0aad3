import { chartCell } from "./chart.ts";
import { type Daylight, makeDaylight } from "./daylight.ts";
import { type Grid, makeGrid, num, sampleGrid } from "./grid.ts";
import { lightView, type ReceivedLight } from "./horizon-light.ts";
import { makePainter, makeSurface } from "./paint-scene.ts";
import { TILE, type View } from "./scene.ts";
import { makeShader } from "./shade.ts";
import type { Skin } from "./skin.ts";
import type { StudioHand } from "./studio-hand.ts";
import { addScaled, cross, dot, normalize, type Vec3 } from "./vector.ts";

/** A picture in linear light, three numbers a point. */
export interface Exposure {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** Every how many picture points the received light is worked out. */
const LIGHT_STEP = 3;

/** Takes the picture of a skin on its form by a hand's light. */
export function takePhotograph(view: View, skin: Skin, hand: StudioHand, code: string): Exposure {
  const daylight = makeDaylight(hand);
  const normals = carveRelief(view, skin);
  const light = receiveLight(view, normals, daylight);
  const paint = makePainter(view, skin, hand, code);
  const data = new Float32Array(view.width * view.height * 3);
  const surface = makeSurface();
  const shade = makeShader(view, light, daylight, hand, LIGHT_STEP);
  let at = 0;
  for (let row = 0; row < view.height; row++) {
    for (let column = 0; column < view.width; column++, at++) {
      paint(at, surface);
      shade(column, row, vectorAt(normals, at), surface, data);
    }
  }
  return { width: view.width, height: view.height, data: softenOutlines(view, data) };
}

const TENT = [1, 2, 1, 2, 4, 2, 1, 2, 1] as const;

/** Averages over the points next to an outline, which would be jagged otherwise. */
function softenOutlines(view: View, data: Float32Array): Float32Array {
  const { width, height, what } = view;
  const out = data.slice();
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const at = row * width + column;
      const own = what[at];
      if (
        own === what[at + 1] &&
        own === what[at - 1] &&
        own === what[at + width] &&
        own === what[at - width]
      ) {
        continue;
      }
      for (let k = 0; k < 3; k++) out[at * 3 + k] = tentMean(data, at, width, k);
    }
  }
  return out;
}

function tentMean(data: Float32Array, at: number, width: number, part: number): number {
  let sum = 0;
  for (let i = 0; i < 9; i++) {
    const near = at + ((i / 3) | 0) * width - width + (i % 3) - 1;
    sum += num(data, near * 3 + part) * (TENT[i] as number);
  }
  return sum / 16;
}

type Planes = readonly [Grid, Grid, Grid];

function vectorAt(planes: Planes, at: number): Vec3 {
  return [num(planes[0].data, at), num(planes[1].data, at), num(planes[2].data, at)];
}

/** Adds the skin's height to the view's depth; gives the normals with the relief in them. */
function carveRelief(view: View, skin: Skin): Planes {
  const normals = [0, 1, 2].map((i) => ({
    ...(view.normal[i] as Grid),
    data: (view.normal[i] as Grid).data.slice(),
  })) as unknown as Planes;
  const perMm = skin.chart.perMm;
  for (let at = 0; at < view.what.length; at++) {
    if (view.what[at] !== TILE) continue;
    const [c, r] = chartCell(skin.chart, num(view.place[0].data, at), num(view.place[1].data, at));
    const alongX = (sampleGrid(skin.height, c + 1, r) - sampleGrid(skin.height, c - 1, r)) * 0.5;
    const alongY = (sampleGrid(skin.height, c, r - 1) - sampleGrid(skin.height, c, r + 1)) * 0.5;
    const n = vectorAt(view.normal, at);
    const t = vectorAt(view.tangent, at);
    const tilted = addScaled(addScaled(n, t, -alongX * perMm), cross(n, t), -alongY * perMm);
    const [x, y, z] = normalize(tilted);
    normals[0].data[at] = x;
    normals[1].data[at] = y;
    normals[2].data[at] = z;
    const lift = sampleGrid(skin.height, c, r) * dot(n, view.axes.toCamera);
    view.depth.data[at] = num(view.depth.data, at) + lift;
  }
  return normals;
}

function receiveLight(view: View, normals: Planes, daylight: Daylight): ReceivedLight {
  const width = Math.floor(view.width / LIGHT_STEP);
  const height = Math.floor(view.height / LIGHT_STEP);
  const depth = makeGrid(width, height);
  const slopes = [makeGrid(width, height), makeGrid(width, height)] as const;
  const { right, up, toCamera } = view.axes;
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      let sum = 0;
      let n: Vec3 = [0, 0, 0];
      for (let k = 0; k < LIGHT_STEP * LIGHT_STEP; k++) {
        const x = column * LIGHT_STEP + (k % LIGHT_STEP);
        const y = row * LIGHT_STEP + Math.floor(k / LIGHT_STEP);
        sum += num(view.depth.data, y * view.width + x);
        n = addScaled(n, vectorAt(normals, y * view.width + x), 1);
      }
      const at = row * width + column;
      depth.data[at] = sum / (LIGHT_STEP * LIGHT_STEP);
      const facing = Math.max(0.08, dot(n, toCamera));
      slopes[0].data[at] = -dot(n, right) / facing;
      slopes[1].data[at] = -dot(n, up) / facing;
    }
  }
  return lightView(depth, slopes, view.pixel * LIGHT_STEP, view.axes, daylight, 96);
}
