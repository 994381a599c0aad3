import { clamp, smoothstep } from "./grid.ts";
import type { StudioHand } from "./studio-hand.ts";
import { addScaled, cross, dot, normalize, skyDirection, type Vec3 } from "./vector.ts";

/** The light around the table: a window and a dim room. World frame: z up, y away from the viewer. */
export interface Daylight {
  /** Radiance of the window in a direction, softened as by a surface of this roughness. */
  window(direction: Vec3, roughness: number): number;
  /** Radiance of the room (walls and ceiling above, the table below), softened likewise. */
  room(direction: Vec3, roughness: number): number;
}

/**
 * Light from a hand's window and room, scaled so that a level white surface with nothing around it
 * sends back 1.
 */
export function makeDaylight(hand: StudioHand): Daylight {
  const facing = skyDirection(hand.windowAzimuth, hand.windowZenith);
  const across = normalize(cross([0, 0, 1], facing));
  const up = cross(facing, across);
  const [panesAcross, panesDown] = hand.panes;
  const halfWidth = hand.windowWidth;
  const halfHeight = hand.windowHeight;

  const window = (direction: Vec3, roughness: number): number => {
    const depth = dot(direction, facing);
    if (depth < 0.05) return 0;
    const p = dot(direction, across) / depth;
    const q = dot(direction, up) / depth;
    const narrow = pane(p, q, 0.012 + roughness * 0.9);
    const wide = pane(p, q, 0.12 + roughness * 1.6);
    return (narrow * 0.85 + wide * 0.15) * (1 + 0.25 * clamp(q / halfHeight, -1, 1));
  };

  const pane = (p: number, q: number, soft: number): number => {
    const spread =
      (1 / Math.max(1, (soft / halfWidth) * 0.75)) * (1 / Math.max(1, (soft / halfHeight) * 0.75));
    const inside = edge(p, halfWidth, soft) * edge(q, halfHeight, soft);
    if (inside === 0) return 0;
    const bars =
      bar(p / halfWidth, panesAcross, soft / halfWidth) *
      bar(q / halfHeight, panesDown, soft / halfHeight);
    return inside * bars * spread;
  };

  const fill = skyDirection(hand.windowAzimuth + 165, 62);
  const ceiling = addScaled([0, 0, 1], facing, 0.4);
  const room = (direction: Vec3, roughness: number): number => {
    const soft = 0.12 + roughness;
    const above = smoothstep(-soft, soft, direction[2]);
    const wall = smoothstep(0.72 - roughness * 0.4, 0.96, dot(direction, fill));
    const overhead = 0.62 + 0.3 * dot(direction, ceiling) + 0.55 * wall;
    const table = hand.ground * 0.8 + hand.tableLight * tablePatch(direction, roughness);
    return above * Math.max(0.2, overhead) + (1 - above) * table;
  };

  return scaled(window, room, hand.windowShare);
}

/** Brighter light that the window throws on the table before the piece: upright glaze mirrors it. */
function tablePatch(direction: Vec3, roughness: number): number {
  const forward = -direction[1];
  if (forward < 0.2) return 0;
  const soft = 0.016 + roughness * 0.8;
  const p = (direction[0] / forward + 0.06) / (1 + 0.6 * (-direction[2] / forward - 0.45));
  const q = -direction[2] / forward - 0.455;
  const spread = 1 / Math.max(1, soft / 0.09) ** 2;
  const bars = bar(p / 0.1, 2, soft / 0.1) * bar(q / 0.075, 2, soft / 0.075);
  return edge(p, 0.1, soft) * edge(q, 0.075, soft) * bars * spread;
}

function edge(value: number, half: number, soft: number): number {
  return (
    smoothstep(-half - soft, -half + soft, value) * smoothstep(half + soft, half - soft, value)
  );
}

/** Dark glazing bars between the panes, which blur away on a rough surface. */
function bar(place: number, panes: number, soft: number): number {
  if (panes < 2) return 1;
  const cell = ((place + 1) / 2) * panes;
  const distance = Math.abs(cell - Math.round(cell)) * (2 / panes);
  const line = Math.round(cell) > 0 && Math.round(cell) < panes ? 1 : 0;
  const width = 0.035;
  const depth = Math.min(1, width / (soft + width * 0.5)) * 0.85;
  return 1 - line * depth * (1 - smoothstep(width, width + soft + 0.01, distance));
}

function scaled(window: Daylight["window"], room: Daylight["room"], windowShare: number): Daylight {
  const windowScale = windowShare / levelLight(window);
  const roomScale = (1 - windowShare) / levelLight(room);
  return {
    window: (direction, roughness) => window(direction, roughness) * windowScale,
    room: (direction, roughness) => room(direction, roughness) * roomScale,
  };
}

/** What a level white surface sends back under a source that fills the sky above it. */
function levelLight(source: Daylight["window"]): number {
  let sum = 0;
  const rings = 60;
  const turns = 120;
  for (let i = 0; i < rings; i++) {
    const height = (i + 0.5) / rings;
    const flat = Math.sqrt(1 - height * height);
    for (let k = 0; k < turns; k++) {
      const angle = ((k + 0.5) / turns) * Math.PI * 2;
      sum += source([Math.cos(angle) * flat, Math.sin(angle) * flat, height], 0) * height;
    }
  }
  return (sum * 2) / (rings * turns);
}
