import { findClusters } from "./clusters.ts";
import { borderIndices, coreIndices, type Marks, neighbours } from "./marks.ts";
import { type Samples, squareDistance, thinOut } from "./samples.ts";

const coreColours = 4;
const coreSamples = 1000;
/** A colour with less of the middle than this is none of its main colours. */
const leastShare = 0.05;
/** With less of the middle free of reflections nothing can be compared with it. */
const leastCore = 0.1;
const unlike = 0.03;
const deviations = 3;
const lightnessWeight = 0.4;

/**
 * Marks bare edges: bare clay, ground, a neighbour. A bare edge reaches in from the region's border
 * and looks like nothing in its middle half: it is further than 0.03 in OKLab, and than three radii,
 * from each of the main colours there. Lightness counts for less than hue and chroma in that, since
 * light falls off towards the edges. A rule of our own.
 */
export function findBareEdges(samples: Samples, reflections: Marks): Marks {
  const bare = new Uint8Array(samples.white.length);
  const core = coreIndices(samples);
  const clear = core.filter((index) => !reflections[index]);
  if (clear.length < leastCore * core.length) return bare;
  const isUnlike = compareWith(samples, thinOut(clear, coreSamples));
  const queue = borderIndices(samples);
  for (let index = queue.pop(); index !== undefined; index = queue.pop()) {
    if (bare[index] || !isUnlike(index)) continue;
    bare[index] = 1;
    queue.push(...neighbours(samples, index));
  }
  return bare;
}

/** Gives a test for what is unlike every main colour of some samples. */
function compareWith(samples: Samples, some: readonly number[]): (index: number) => boolean {
  const colours = findClusters(samples, some, coreColours)
    .filter((cluster) => cluster.members.length >= leastShare * some.length)
    .map(({ centre, radius }) => ({ centre, bound: Math.max(unlike, deviations * radius) ** 2 }));
  return (index) =>
    colours.every(
      ({ centre, bound }) => squareDistance(samples, index, centre, lightnessWeight) > bound,
    );
}
