/**
 * The upper edge of a layer, which tells how it was put on. An edge runs from left to right as
 * heights below the top of its lane: 0 touches the layer above, `depth` is as low as it goes.
 */
import type { Way } from "../../src/terms/choices.ts";

/** What an edge is drawn within, in the drawing's own units. */
export interface EdgeScale {
  /** How far one wave, one grain, one bead lies from the next. */
  readonly pitch: number;
  /** How far below the top of the lane the edge may fall. */
  readonly depth: number;
}

/** A path's part from `(from, …)` to `(to, …)` along an edge, its first point included. */
export type Edge = (from: number, to: number, scale: EdgeScale) => string;

/** One decimal is a tenth of a pixel, and spares half the markup. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** A level line: a dip, a transfer, or a way that nobody wrote down. */
const level: Edge = (from, to) => `${n(from)} 0H${n(to)}`;

/** Slow waves, as a loaded brush leaves them. */
function wave(lengths: number): Edge {
  return (from, to, { pitch, depth }) => {
    const count = Math.max(1, Math.round((to - from) / (pitch * lengths)));
    const half = (to - from) / count / 2;
    const one = `q${n(half / 2)} ${n(-depth)} ${n(half)} 0t${n(half)} 0`;
    return `${n(from)} ${n(depth / 2)}${one.repeat(count)}`;
  };
}

/** A level line with a lip where the glaze ran last. */
const lip: Edge = (from, to, { pitch, depth }) => {
  const lipWidth = Math.min(pitch * 1.6, (to - from) / 2);
  const begin = to - lipWidth;
  return `${n(from)} ${n(depth)}H${n(begin - lipWidth / 3)}Q${n(begin)} ${n(depth)} ${n(begin)} ${n(depth / 2)}Q${n(begin)} 0 ${n(to - lipWidth / 2)} 0T${n(to)} ${n(depth)}`;
};

/** A saw of fine grains. */
const grain: Edge = (from, to, { pitch, depth }) => {
  const count = Math.max(2, Math.round((to - from) / (pitch / 4)));
  const step = (to - from) / count / 2;
  return `${n(from)} ${n(depth * 0.7)}${`l${n(step)} ${n(-depth * 0.7)}l${n(step)} ${n(depth * 0.7)}`.repeat(count)}`;
};

/** Round tops side by side: a sponge's stipple, a rope of trailed glaze. */
function scallops(lengths: number): Edge {
  return (from, to, { pitch, depth }) => {
    const count = Math.max(1, Math.round((to - from) / (pitch * lengths)));
    const width = (to - from) / count;
    return `${n(from)} ${n(depth)}${`q${n(width / 2)} ${n(-depth * 2)} ${n(width)} 0`.repeat(count)}`;
  };
}

/** Blocks with gaps half as deep as the edge may fall: a stencil's dashed run, a stamp's prints. */
function blocks(lengths: number): Edge {
  return (from, to, { pitch, depth }) => {
    const count = Math.max(1, Math.round((to - from) / (pitch * lengths)));
    const width = (to - from) / count;
    const one = `v${n(-depth)}h${n(width * 0.6)}v${n(depth)}h${n(width * 0.4)}`;
    return `${n(from)} ${n(depth)}${one.repeat(count)}`;
  };
}

/** A few drops that stand proud of a level line. */
const drops: Edge = (from, to, { pitch, depth }) => {
  const count = Math.max(1, Math.round((to - from) / (pitch * 1.7)));
  const width = (to - from) / count;
  const one = `h${n(width * 0.55)}q0 ${n(-depth)} ${n(width * 0.225)} ${n(-depth)}t${n(width * 0.225)} ${n(depth)}`;
  return `${n(from)} ${n(depth)}${one.repeat(count)}`;
};

const edges: Readonly<Record<Way, Edge>> = {
  brush: wave(1),
  dip: level,
  dot: level,
  drip: drops,
  pen: blocks(0.35),
  pour: lip,
  roll: wave(0.4),
  spatter: level,
  sponge: scallops(0.5),
  "sponge-stamp": blocks(1.6),
  spray: grain,
  stencil: blocks(0.8),
  trail: scallops(0.8),
  transfer: level,
};

/** The edge of a layer by its way of going on. */
export function edgeOf(way: Way | null): Edge {
  return way === null ? level : edges[way];
}

/** Teeth of one form, for a texture that was cut or pressed into clay. */
function teeth(lengths: number, one: (width: number, depth: number) => string): Edge {
  return (from, to, { pitch, depth }) => {
    const count = Math.max(1, Math.round((to - from) / (pitch * lengths)));
    return `${n(from)} 0${one((to - from) / count, depth).repeat(count)}`;
  };
}

const textureEdges = {
  smooth: level,
  carved: teeth(1.5, (w, d) => `h${n(w * 0.55)}l${n(w * 0.15)} ${n(d)}l${n(w * 0.3)} ${n(-d)}`),
  combed: teeth(0.5, (w, d) => `l${n(w / 2)} ${n(d)}l${n(w / 2)} ${n(-d)}`),
  impressed: teeth(2, (w, d) => `h${n(w * 0.4)}q${n(w * 0.3)} ${n(d * 2)} ${n(w * 0.6)} 0`),
  pierced: teeth(2, (w, d) => `h${n(w * 0.6)}v${n(d * 1.6)}h${n(w * 0.4)}v${n(-d * 1.6)}`),
  rolled: teeth(
    1.2,
    (w, d) => `q${n(w / 4)} ${n(d)} ${n(w / 2)} ${n(d / 2)}t${n(w / 2)} ${n(-d / 2)}`,
  ),
  "slip-trailed": scallops(1),
  sprigged: teeth(
    2.4,
    (w, d) => `v${n(d)}h${n(w * 0.5)}q${n(w * 0.25)} ${n(-d * 2)} ${n(w * 0.5)} 0v${n(-d)}`,
  ),
  stamped: teeth(1.2, (w, d) => `h${n(w * 0.5)}v${n(d)}h${n(w * 0.5)}v${n(-d)}`),
} satisfies Readonly<Record<string, Edge>>;

const edgesOfTextures: ReadonlyMap<string, Edge> = new Map(Object.entries(textureEdges));

const ownTexture = teeth(
  1.1,
  (w, d) =>
    `l${n(w * 0.4)} ${n(d * 0.8)}l${n(w * 0.25)} ${n(-d * 0.4)}l${n(w * 0.35)} ${n(-d * 0.4)}`,
);

/** The upper edge of the clay by its texture; a potter's own word has an uneven one. */
export function textureEdge(texture: string): Edge {
  return edgesOfTextures.get(texture) ?? ownTexture;
}
