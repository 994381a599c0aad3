import { chartCell } from "./chart.ts";
import { num, sampleGrid, smoothstep } from "./grid.ts";
import { setLettering } from "./lettering.ts";
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
  const lettering = setLettering(code, 3);
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
      case LABEL: {
        const distance = lettering.distance(
          u * LABEL_HALF[0] + lettering.width / 2,
          v * LABEL_HALF[1] + 1.5,
        );
        const ink = smoothstep(0.3, 0.2, distance);
        const shade = 0.78 + 0.012 * grain(paper.x + u * 30, paper.y + v * 12);
        paintGrey(surface, shade + (0.05 - shade) * ink, 0.75);
        break;
      }
      default:
        paintGround(hand, paper.x + u, paper.y + v, surface);
    }
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
