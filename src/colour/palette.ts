import { type Cluster, findClusters } from "./clusters.ts";
import { oklabToLinear } from "./oklab.ts";
import { distance, type Samples, thinOut } from "./samples.ts";
import { linearToHex } from "./srgb.ts";

/** One of the main colours, and what share of the glaze it has. */
export interface PaletteColour {
  hex: string;
  share: number;
}

const mostColours = 5;
const paletteSamples = 1000;
/** Colours nearer than this are one to the eye (in OKLab, some 4 units of CIELAB). */
const alike = 0.04;
const leastShare = 0.03;

/** The main colours of the glaze, the largest first; their shares add up to about 1. */
export function makePalette(samples: Samples, glaze: readonly number[]): PaletteColour[] {
  const some = thinOut(glaze, paletteSamples);
  const merged = mergeAlike(findClusters(samples, some, mostColours));
  const kept = merged.filter((cluster) => cluster.members.length >= leastShare * some.length);
  const total = kept.reduce((sum, cluster) => sum + cluster.members.length, 0);
  return kept.map(({ centre, members }) => ({
    hex: linearToHex(oklabToLinear(centre)),
    share: Math.round((1000 * members.length) / total) / 1000,
  }));
}

/** Joins each cluster to the first larger one that looks the same; that one keeps its colour. */
function mergeAlike(clusters: Cluster[]): Cluster[] {
  const merged: Cluster[] = [];
  for (const cluster of clusters) {
    const at = merged.findIndex((other) => distance(other.centre, cluster.centre) < alike);
    const like = merged[at];
    if (!like) merged.push(cluster);
    else merged[at] = { ...like, members: [...like.members, ...cluster.members] };
  }
  return merged.sort((one, other) => other.members.length - one.members.length);
}
