import { chartCell } from "./chart.ts";
import { clamp, mix, num, sampleGrid, smoothstep } from "./grid.ts";
import { writeByHand } from "./lettering.ts";
import { clouds, grain, noisePlace } from "./noise.ts";
import { CARD, CARD_BORDER, LABEL, LABEL_HALF, TILE, type View } from "./scene.ts";
import type { Skin } from "./skin.ts";
import type { StudioHand } from "./studio-hand.ts";

/** What the surface at a point of the picture is made of. */
export interface Surface {
  red: number;
  green: number;
  blue: number;
  roughness: number;
  glass: number;
  metal: number;
}

export function makeSurface(): Surface {
  return { red: 0, green: 0, blue: 0, roughness: 1, glass: 0, metal: 0 };
}

/** Gives a function that writes what a point of the picture is made of into a surface. */
export function makePainter(view: View, skin: Skin, hand: StudioHand, code: string) {
  const write = makeWriter(hand, code);
  const paper = noisePlace(`paper ${code}`);
  return (at: number, surface: Surface): void => {
    const u = num(view.place[0].data, at);
    const v = num(view.place[1].data, at);
    switch (view.what[at]) {
      case TILE:
        paintTile(skin, u, v, surface);
        break;
      case CARD:
        paintGrey(surface, cardShade(u, v), 0.9);
        break;
      case LABEL:
        write(u, v, surface);
        break;
      default:
        paintGround(hand, paper.x + u, paper.y + v, surface);
    }
  };
}

/** What a code is written on and with: red, green and blue of the slip, and of the stroke. */
const WRITING = {
  pencil: { slip: [0.74, 0.73, 0.69], stroke: [0.09, 0.09, 0.1], half: 0.21, grain: 0.55 },
  underglaze: { slip: [0.66, 0.58, 0.46], stroke: [0.035, 0.04, 0.07], half: 0.27, grain: 0.2 },
} as const;

/** Gives a function that paints the slip with the code: in pencil on paper, or in underglaze on clay. */
function makeWriter(hand: StudioHand, code: string) {
  const lettering = writeByHand(code, 2.9, hand.handwriting, code);
  const how = WRITING[hand.writesWith];
  const at = noisePlace(`slip ${code}`);
  return (u: number, v: number, surface: Surface): void => {
    const x = u * LABEL_HALF[0];
    const y = v * LABEL_HALF[1];
    const press = 1 + 0.35 * grain(at.x + x * 0.35, at.y + y * 0.35);
    const half = how.half * press;
    const stroke = smoothstep(
      half,
      half * 0.35,
      lettering.distance(x + lettering.width / 2, y + 1.45),
    );
    const tooth = 1 - how.grain * smoothstep(-0.2, 0.6, grain(at.y + x * 5.5, at.x + y * 5.5));
    const share = clamp(stroke * tooth * (0.7 + 0.3 * press), 0, 1);
    const fibre =
      1 + 0.025 * grain(at.x + x * 2.4, at.y + y * 2.4) + 0.02 * clouds(at.y + x, at.x + y);
    surface.red = mix(how.slip[0] * fibre, how.stroke[0], share);
    surface.green = mix(how.slip[1] * fibre, how.stroke[1], share);
    surface.blue = mix(how.slip[2] * fibre, how.stroke[2], share);
    surface.roughness = 0.85;
    surface.glass = 0.2;
    surface.metal = 0;
  };
}

/** A grey of 18 per cent in a white border. */
function cardShade(u: number, v: number): number {
  return Math.max(Math.abs(u), Math.abs(v)) > 1 / CARD_BORDER + 0.02 ? 0.8 : 0.18;
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
