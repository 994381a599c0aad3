import type { Daylight } from "./daylight.ts";
import { clamp, sampleGrid, smoothstep } from "./grid.ts";
import type { ReceivedLight } from "./horizon-light.ts";
import type { Surface } from "./paint-scene.ts";
import type { View } from "./scene.ts";
import type { StudioHand } from "./studio-hand.ts";
import { addScaled, dot, normalize, skyDirection, type Vec3 } from "./vector.ts";

/** How the window's and the room's light are tinted: red, green, blue. */
const WINDOW_TINT = [0.985, 1, 1.02] as const;
const ROOM_TINT = [1.03, 1, 0.955] as const;

/** How much of the light that falls straight on it glass sends back (refractive index 1.52). */
const GLASS_MIRROR = 0.043;

/** Light that reaches a point of the picture. */
interface Arriving {
  window: number;
  room: number;
  /** How much of the room a point sees, 0 to 1. */
  open: number;
  /** How much more of the window's light reaches the side that is nearer to it. */
  nearness: number;
}

/** Writes the light that leaves a point for the camera into `out`, three numbers a point. */
export type Shader = (
  column: number,
  row: number,
  normal: Vec3,
  surface: Surface,
  out: Float32Array,
) => void;

/** @param step every how many picture points the received light was worked out */
export function makeShader(
  view: View,
  light: ReceivedLight,
  daylight: Daylight,
  hand: StudioHand,
  step: number,
): Shader {
  const arrives = makeArrival(view, light, hand, step);
  return (column, row, normal, surface, out) => {
    const arriving = arrives(column, row, normal);
    const toEye = directionToEye(view, hand, column, row);
    const facing = Math.max(0.02, dot(normal, toEye));
    const mirror = addScaled([-toEye[0], -toEye[1], -toEye[2]], normal, 2 * facing);
    const grazing = (1 - facing) ** 5 * (1 - surface.roughness);
    const { nearness, open } = arriving;
    const glint =
      daylight.window(mirror, surface.roughness) * nearness * smoothstep(0.15, 0.7, open) +
      daylight.room(mirror, surface.roughness) * open;
    writeLight(arriving, surface, glint, grazing, out, (row * view.width + column) * 3);
  };
}

function makeArrival(view: View, light: ReceivedLight, hand: StudioHand, step: number) {
  const { right, up, toCamera } = view.axes;
  const windowSide = skyDirection(hand.windowAzimuth, 90);
  const roomShare = 1 - hand.windowShare;
  const arriving: Arriving = { window: 0, room: 0, open: 0, nearness: 1 };
  const received = (planes: ReceivedLight["window"], c: number, r: number, n: Vec3): number =>
    Math.max(
      0,
      sampleGrid(planes[0], c, r) * dot(n, right) +
        sampleGrid(planes[1], c, r) * dot(n, up) +
        sampleGrid(planes[2], c, r) * dot(n, toCamera),
    );
  return (column: number, row: number, normal: Vec3): Arriving => {
    const c = (column + 0.5) / step - 0.5;
    const r = (row + 0.5) / step - 0.5;
    const across = (column / view.width - 0.5) * windowSide[0] * view.pixel * view.width;
    const away = (0.5 - row / view.height) * windowSide[1] * view.pixel * view.height;
    arriving.nearness = 1 + 0.0034 * (across + away);
    arriving.window = received(light.window, c, r, normal) * arriving.nearness;
    arriving.room = received(light.room, c, r, normal);
    arriving.open = clamp(sampleGrid(light.room[2], c, r) / (roomShare * 0.85), 0, 1);
    return arriving;
  };
}

function directionToEye(view: View, hand: StudioHand, column: number, row: number): Vec3 {
  const { right, up, toCamera } = view.axes;
  const towards = addScaled([0, 0, 0], toCamera, hand.cameraDistance);
  const across = addScaled(towards, right, -(column - view.width / 2) * view.pixel);
  return normalize(addScaled(across, up, (row - view.height / 2) * view.pixel));
}

function writeLight(
  arriving: Arriving,
  surface: Surface,
  glint: number,
  grazing: number,
  out: Float32Array,
  at: number,
): void {
  const { metal } = surface;
  const glass = surface.glass * (GLASS_MIRROR + (1 - GLASS_MIRROR) * grazing) * (1 - metal);
  const lit = arriving.window * (1 - glass);
  const dim = arriving.room * (1 - glass);
  const bounce = (1 - arriving.open) * 0.16;
  const part = (k: 0 | 1 | 2, albedo: number): void => {
    const light = lit * WINDOW_TINT[k] + dim * ROOM_TINT[k] + bounce * albedo;
    const mirrored = glass + metal * (0.25 + 0.75 * albedo) * (0.55 + 0.45 * grazing);
    out[at + k] = albedo * light * (1 - metal * 0.85) + glint * mirrored;
  };
  part(0, surface.red);
  part(1, surface.green);
  part(2, surface.blue);
}
