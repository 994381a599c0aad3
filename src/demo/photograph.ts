import { chartCell } from "./chart.ts";
import { type Daylight, makeDaylight } from "./daylight.ts";
import { clamp, type Grid, makeGrid, num, sampleGrid, smoothstep } from "./grid.ts";
import { lightView, type ReceivedLight } from "./horizon-light.ts";
import { setLettering } from "./lettering.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import { CARD, CARD_BORDER, GROUND, LABEL, LABEL_HALF, TILE, type View } from "./scene.ts";
import type { Skin } from "./skin.ts";
import type { StudioHand } from "./studio-hand.ts";
import { addScaled, cross, dot, normalize, skyDirection, type Vec3 } from "./vector.ts";

/** What the surface at a point of the picture is made of. */
interface Surface {
  red: number;
  green: number;
  blue: number;
  roughness: number;
  glass: number;
  metal: number;
}

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
  const surface: Surface = { red: 0, green: 0, blue: 0, roughness: 1, glass: 0, metal: 0 };
  const shade = makeShader(view, light, daylight, hand);
  let at = 0;
  for (let row = 0; row < view.height; row++) {
    for (let column = 0; column < view.width; column++, at++) {
      paint(at, surface);
      shade(at, column, row, vectorAt(normals, at), surface, data);
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

function makePainter(view: View, skin: Skin, hand: StudioHand, code: string) {
  const lettering = setLettering(code, 3);
  const paper = noisePlace(`paper ${code}`);
  return (at: number, surface: Surface): void => {
    const u = num(view.place[0].data, at);
    const v = num(view.place[1].data, at);
    switch (view.what[at]) {
      case TILE:
        return paintTile(skin, u, v, surface);
      case CARD:
        return paintGrey(
          surface,
          Math.max(Math.abs(u), Math.abs(v)) > 1 / CARD_BORDER + 0.02 ? 0.8 : 0.18,
          0.9,
        );
      case LABEL: {
        const distance = lettering.distance(
          u * LABEL_HALF[0] + lettering.width / 2,
          v * LABEL_HALF[1] + 1.5,
        );
        const ink = smoothstep(0.3, 0.2, distance);
        const shade = 0.78 + 0.012 * grain(paper.x + u * 30, paper.y + v * 12);
        return paintGrey(surface, shade + (0.05 - shade) * ink, 0.75);
      }
      default:
        return paintGround(hand, paper.x + u, paper.y + v, surface);
    }
  };
}

function paintTile(skin: Skin, u: number, v: number, surface: Surface): void {
  const [c, r] = chartCell(skin.chart, u, v);
  surface.red = sampleGrid(skin.red, c, r);
  surface.green = sampleGrid(skin.green, c, r);
  surface.blue = sampleGrid(skin.blue, c, r);
  surface.roughness = sampleGrid(skin.roughness, c, r);
  surface.glass = sampleGrid(skin.glass, c, r);
  surface.metal = sampleGrid(skin.metal, c, r);
}

function paintGrey(surface: Surface, shade: number, roughness: number): void {
  surface.red = surface.green = surface.blue = shade;
  surface.roughness = roughness;
  surface.glass = 0.25;
  surface.metal = 0;
}

function paintGround(hand: StudioHand, x: number, y: number, surface: Surface): void {
  let shade = hand.ground;
  if (hand.groundKind === "paper") {
    shade *= 1 + 0.018 * grain(x * 2.6, y * 2.6) + 0.02 * clouds(x * 0.02, y * 0.02);
  } else if (hand.groundKind === "board") {
    shade *= 1 + 0.03 * grain(x * 4.5, y * 1.1) + 0.03 * clouds(x * 0.05, y * 0.04);
  } else {
    shade *= 1 + 0.07 * clouds(x * 0.05, y * 0.05) + 0.05 * clouds(x * 0.8, y * 0.8);
  }
  paintGrey(surface, shade, hand.groundKind === "slate" ? 0.6 : 0.95);
}

/** Works out the light that leaves each point for the camera. */
function makeShader(view: View, light: ReceivedLight, daylight: Daylight, hand: StudioHand) {
  const { right, up, toCamera } = view.axes;
  const windowSide = skyDirection(hand.windowAzimuth, 90);
  const roomShare = 1 - hand.windowShare;
  const received = (planes: Planes, c: number, r: number, n: Vec3): number =>
    Math.max(
      0,
      sampleGrid(planes[0], c, r) * dot(n, right) +
        sampleGrid(planes[1], c, r) * dot(n, up) +
        sampleGrid(planes[2], c, r) * dot(n, toCamera),
    );
  return (at: number, column: number, row: number, n: Vec3, s: Surface, out: Float32Array) => {
    const c = (column + 0.5) / LIGHT_STEP - 0.5;
    const r = (row + 0.5) / LIGHT_STEP - 0.5;
    const across = (column / view.width - 0.5) * windowSide[0] * view.pixel * view.width;
    const away = (0.5 - row / view.height) * windowSide[1] * view.pixel * view.height;
    const nearness = 1 + 0.0034 * (across + away);
    const window = received(light.window, c, r, n) * nearness;
    const room = received(light.room, c, r, n);
    const open = clamp(sampleGrid(light.room[2], c, r) / (roomShare * 0.85), 0, 1);
    const bounce = (1 - open) * 0.16;
    const toEye = normalize(
      addScaled(
        addScaled(
          addScaled([0, 0, 0], toCamera, hand.cameraDistance),
          right,
          -(column - view.width / 2) * view.pixel,
        ),
        up,
        (row - view.height / 2) * view.pixel,
      ),
    );
    const facing = Math.max(0.02, dot(n, toEye));
    const mirror = addScaled([-toEye[0], -toEye[1], -toEye[2]], n, 2 * facing);
    const grazing = (1 - facing) ** 5 * (1 - s.roughness);
    const glint =
      daylight.window(mirror, s.roughness) * nearness * smoothstep(0.15, 0.7, open) +
      daylight.room(mirror, s.roughness) * open;
    const glass = s.glass * (0.043 + 0.957 * grazing) * (1 - s.metal);
    const lit = window * (1 - glass);
    const dim = room * (1 - glass);
    const colours = [s.red, s.green, s.blue];
    for (let k = 0; k < 3; k++) {
      const albedo = colours[k] as number;
      const white = k === 0 ? 0.985 : k === 2 ? 1.02 : 1;
      const warm = k === 0 ? 1.03 : k === 2 ? 0.955 : 1;
      const diffuse = albedo * (lit * white + dim * warm + bounce * albedo) * (1 - s.metal * 0.85);
      const metal = s.metal * (0.25 + 0.75 * albedo) * (0.55 + 0.45 * grazing);
      out[at * 3 + k] = diffuse + glint * (glass + metal);
    }
  };
}

/** The places of a view that show the ground, for those who measure it. */
export function isGround(view: View, at: number): boolean {
  return view.what[at] === GROUND;
}
