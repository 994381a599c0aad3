/**
 * The upper edge of a layer, which tells how it was put on. An edge runs from left to right between
 * the top of its lane, where it touches the layer above, and `depth` below that.
 */
import type { Way } from "../../src/terms/choices.ts";

/** What an edge is drawn within, in the drawing's own units. */
export interface EdgeScale {
  /** Where the top of the lane is; y runs down. */
  readonly top: number;
  /** How far one wave, one grain, one bead lies from the next. */
  readonly pitch: number;
  /** How far below the top of the lane the edge may fall. */
  readonly depth: number;
}

/** An edge from one place to another: the height that it begins at, and a path from there on. */
export interface Edge {
  readonly begin: number;
  readonly path: string;
}

export type EdgeOf = (from: number, to: number, scale: EdgeScale) => Edge;

/** One decimal is a tenth of a pixel, and spares half the markup. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10).replace(/^(-?)0\./u, "$1.");
}

/** Numbers of a path one after another: a minus parts them as well as a space. */
export function run(...values: readonly number[]): string {
  return values.reduce((text, value, i) => {
    const number = n(value);
    return text + (i === 0 || number.startsWith("-") ? "" : " ") + number;
  }, "");
}

/** The same command so many times over, which a path writes once. */
function again(command: string, times: number, ...values: readonly number[]): string {
  return command + run(...Array.from({ length: times }, () => values).flat());
}

/** How many of something of a width go from one place to another, and how wide each then is. */
function divide(from: number, to: number, width: number, least = 1) {
  const count = Math.max(least, Math.round((to - from) / width));
  return { count, width: (to - from) / count };
}

/** A level line: a dip, a transfer, or a way that nobody wrote down. */
const level: EdgeOf = (_, to, { top }) => ({ begin: top, path: `H${n(to)}` });

/** Slow waves, as a loaded brush leaves them. */
function wave(lengths: number): EdgeOf {
  return (from, to, { top, pitch, depth }) => {
    const { count, width } = divide(from, to, pitch * lengths);
    const half = width / 2;
    const path = `q${run(half / 2, -depth, half, 0)}${again("t", 2 * count - 1, half, 0)}`;
    return { begin: top + depth / 2, path };
  };
}

/** A level line with a lip where the glaze ran last. */
const lip: EdgeOf = (from, to, { top, pitch, depth }) => {
  const width = Math.min(pitch * 1.6, (to - from) / 2);
  const begin = to - width;
  const low = top + depth;
  const up = `Q${run(begin, low, begin, low - depth / 2)}Q${run(begin, top, to - width / 2, top)}`;
  return { begin: low, path: `H${n(begin - width / 3)}${up}T${run(to, low)}` };
};

/** A saw of fine grains. */
const grain: EdgeOf = (from, to, { top, pitch, depth }) => {
  const { count, width } = divide(from, to, pitch / 4, 2);
  const high = depth * 0.7;
  return { begin: top + high, path: again("l", count, width / 2, -high, width / 2, high) };
};

/** Round tops side by side: a sponge's stipple, a rope of trailed glaze. */
function scallops(lengths: number): EdgeOf {
  return (from, to, { top, pitch, depth }) => {
    const { count, width } = divide(from, to, pitch * lengths);
    return { begin: top + depth, path: again("q", count, width / 2, -depth * 2, width, 0) };
  };
}

/** One form again and again, beginning so far below the top of the lane as a share of the depth. */
function repeated(
  lengths: number,
  low: number,
  one: (width: number, depth: number) => string,
): EdgeOf {
  return (from, to, { top, pitch, depth }) => {
    const { count, width } = divide(from, to, pitch * lengths);
    return { begin: top + low * depth, path: one(width, depth).repeat(count) };
  };
}

/** Blocks with gaps between them: a stencil's dashed run, a stamp's prints. */
function blocks(lengths: number): EdgeOf {
  return repeated(lengths, 1, (w, d) => `v${n(-d)}h${n(w * 0.6)}v${n(d)}h${n(w * 0.4)}`);
}

/** A few drops that stand proud of a level line. */
const drops: EdgeOf = repeated(1.7, 1, (width, depth) => {
  const quarter = width * 0.225;
  return `h${n(width * 0.55)}q${run(0, -depth, quarter, -depth)}t${run(quarter, depth)}`;
});

const edges: Readonly<Record<Way, EdgeOf>> = {
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
export function edgeOf(way: Way | null): EdgeOf {
  return way === null ? level : edges[way];
}

/** Teeth of one form, for a texture that was cut or pressed into clay. */
function teeth(lengths: number, one: (width: number, depth: number) => string): EdgeOf {
  return repeated(lengths, 0, one);
}

const textureEdges = {
  smooth: level,
  carved: teeth(1.5, (w, d) => `h${n(w * 0.55)}l${run(w * 0.15, d, w * 0.3, -d)}`),
  combed: teeth(0.5, (w, d) => `l${run(w / 2, d, w / 2, -d)}`),
  impressed: teeth(2, (w, d) => `h${n(w * 0.4)}q${run(w * 0.3, d * 2, w * 0.6, 0)}`),
  pierced: teeth(2, (w, d) => `h${n(w * 0.6)}v${n(d * 1.6)}h${n(w * 0.4)}v${n(-d * 1.6)}`),
  rolled: teeth(1.2, (w, d) => `q${run(w / 4, d, w / 2, d / 2)}t${run(w / 2, -d / 2)}`),
  "slip-trailed": scallops(1),
  sprigged: teeth(
    2.4,
    (w, d) => `v${n(d)}h${n(w * 0.5)}q${run(w * 0.25, -d * 2, w * 0.5, 0)}v${n(-d)}`,
  ),
  stamped: teeth(1.2, (w, d) => `h${n(w * 0.5)}v${n(d)}h${n(w * 0.5)}v${n(-d)}`),
} satisfies Readonly<Record<string, EdgeOf>>;

const edgesOfTextures: ReadonlyMap<string, EdgeOf> = new Map(Object.entries(textureEdges));

const ownTexture = teeth(
  1.1,
  (w, d) => `l${run(w * 0.4, d * 0.8, w * 0.25, -d * 0.4, w * 0.35, -d * 0.4)}`,
);

/** The upper edge of the clay by its texture; a potter's own word has an uneven one. */
export function textureEdge(texture: string): EdgeOf {
  return edgesOfTextures.get(texture) ?? ownTexture;
}
