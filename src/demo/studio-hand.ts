import { findHandwriting, type Handwriting } from "./lettering.ts";
import { between, makeChance } from "./random.ts";

/** How one person sets up the copy stand: the same for every picture of a set. */
export interface StudioHand {
  /** Degrees: 0 is the viewer's right, 90 straight away from the viewer, 180 the left. */
  readonly windowAzimuth: number;
  /** Degrees from straight up to the middle of the window. */
  readonly windowZenith: number;
  /** Tangents of half the window's width and height as seen from the tile. */
  readonly windowWidth: number;
  readonly windowHeight: number;
  /** Glazing bars: panes across and down. */
  readonly panes: readonly [number, number];
  /** Share of the light on the table that comes from the window, the rest from the room. */
  readonly windowShare: number;
  /** Degrees of the camera from straight above a tile that lies. */
  readonly cameraTilt: number;
  readonly cameraDistance: number;
  /** Reflectance of the ground. */
  readonly ground: number;
  readonly groundKind: "paper" | "board" | "slate";
  /** Red and blue relative to green, as the camera's white balance left them. */
  readonly balance: readonly [number, number];
  readonly exposure: number;
  /** How bright the light is that the window throws on the table before an upright plane. */
  readonly tableLight: number;
  readonly handwriting: Handwriting;
  readonly writesWith: "pencil" | "underglaze";
}

/** The same stand on the day of one picture: the sun elsewhere, a blind moved, the piece put down anew. */
export function onTheDay(hand: StudioHand, code: string): StudioHand {
  const chance = makeChance(`day ${code}`);
  return {
    ...hand,
    windowAzimuth: hand.windowAzimuth + between(chance, -24, 24),
    windowZenith: hand.windowZenith + between(chance, -9, 7),
    windowWidth: hand.windowWidth * between(chance, 0.72, 1.2),
    windowHeight: hand.windowHeight * between(chance, 0.72, 1.2),
    windowShare: hand.windowShare + between(chance, -0.05, 0.05),
    cameraTilt: hand.cameraTilt + between(chance, -1.5, 1.5),
  };
}

/** Degrees from straight up within which no window may come: a tile that lies would mirror it all over. */
const GLARE = 15;

/** The same stand, moved so far from its window that a piece that lies does not mirror it all over. */
export function outOfGlare(hand: StudioHand): StudioHand {
  const half = (Math.atan(hand.windowHeight) * 180) / Math.PI;
  return { ...hand, windowZenith: Math.max(hand.windowZenith, GLARE + half) };
}

/** The same stand turned for a piece that stands up: the window in front of it, a longer exposure. */
export function turnedForStanding(hand: StudioHand, plane: boolean): StudioHand {
  const left = hand.windowAzimuth > 90;
  return {
    ...hand,
    windowAzimuth: left
      ? 218 + (hand.windowAzimuth - 135) * 0.5
      : -38 + (hand.windowAzimuth - 45) * 0.5,
    windowZenith: hand.windowZenith + 8,
    exposure: hand.exposure * 1.18,
    tableLight: plane ? 3.2 * (hand.windowWidth / 0.5) : 0,
  };
}

/** The stand of a set, worked out from its name. */
export function studioHand(set: string): StudioHand {
  const chance = makeChance(`hand ${set}`);
  const fromLeft = chance() < 0.7;
  const azimuth = between(chance, 112, 158);
  const kinds = ["paper", "paper", "board", "slate"] as const;
  const kind = kinds[Math.floor(chance() * 4)] ?? "paper";
  const shade = { paper: [0.36, 0.5], board: [0.26, 0.38], slate: [0.13, 0.2] }[kind];
  return {
    windowAzimuth: fromLeft ? azimuth : 180 - azimuth,
    windowZenith: between(chance, 41, 51),
    windowWidth: between(chance, 0.42, 0.6),
    windowHeight: between(chance, 0.42, 0.58),
    panes: chance() < 0.5 ? [2, 3] : [2, 1],
    windowShare: between(chance, 0.56, 0.68),
    cameraTilt: between(chance, 9, 15),
    cameraDistance: between(chance, 420, 560),
    ground: between(chance, shade[0] ?? 0.3, shade[1] ?? 0.5),
    groundKind: kind,
    balance: [between(chance, 0.99, 1.025), between(chance, 0.965, 1.0)],
    exposure: between(chance, 0.95, 1.04),
    tableLight: 0,
    handwriting: findHandwriting(set),
    writesWith: chance() < 0.6 ? "pencil" : "underglaze",
  };
}
