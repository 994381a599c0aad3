/**
 * The bucket on the scale: a section that fills, a layer for each material, as high as its share of
 * the weight. Each layer has a hatching of its own; additions are white on ink, above a dashed line.
 */
import type { VNode } from "preact";
import { n, run } from "../drawing/edges.ts";

/** What goes in, in its order. */
export interface Poured {
  readonly parts: number;
  readonly isAddition: boolean;
}

const size = { width: 64, height: 60 } as const;
const inside = { bottom: 56, full: 12, floor: 11, flare: 0.11 } as const;

/** A layer of a hundredth is still to be seen. */
const leastHigh = 1.6;

/** The heights of the layers' upper edges, from the floor up. */
export function levelsOf(parts: readonly Poured[]): readonly number[] {
  const whole = parts.reduce((sum, part) => sum + part.parts, 0);
  const room = inside.bottom - inside.full;
  const shares = parts.map((part) => Math.max(leastHigh, (part.parts / whole) * room));
  const squeeze = room / shares.reduce((sum, share) => sum + share, 0);
  let level = inside.bottom;
  return shares.map((share) => {
    level -= share * squeeze;
    return level;
  });
}

/** How far the wall is from the left edge at a height. */
function wallAt(y: number): number {
  return inside.floor - (inside.bottom - y) * inside.flare;
}

function bandPath(from: number, to: number): string {
  const [low, high] = [wallAt(from), wallAt(to)];
  return `M${run(low, from)}L${run(high, to)}H${n(size.width - high)}L${run(size.width - low, from)}Z`;
}

const hatchings = [
  "M-1 7L7 -1M-1 1L1 -1M5 7L7 5",
  "M1.5 1.5h.01M4.5 4.5h.01",
  "M0 1.5H2.5M3 4.5H5.5",
  "M-1 -1L7 7M5 -1L7 1M-1 5L1 7",
  "M1.5 0V6M4.5 0V6",
  "M1 3H5M3 1V5",
  "M0 0L6 6M6 0L0 6",
  "M0 4.5L1.5 1.5L3 4.5L4.5 1.5L6 4.5",
] as const;

function hatchingOf(parts: readonly Poured[], at: number): string {
  const isAddition = parts[at]?.isAddition === true;
  const alike = parts.slice(0, at).filter((part) => part.isAddition === isAddition).length;
  return `${isAddition ? "added" : "base"}-${alike % hatchings.length}`;
}

/** The hatchings and the layers, once for all the buckets of a page. */
export function BucketLayers({ parts }: { readonly parts: readonly Poured[] }): VNode {
  const levels = levelsOf(parts);
  const used = new Set(parts.map((_, i) => hatchingOf(parts, i)));
  return (
    <svg class="defs" width="0" height="0" aria-hidden="true">
      <defs>
        {["base", "added"].flatMap((kind) =>
          hatchings.map((d, i) =>
            used.has(`${kind}-${i}`) ? <Hatching id={`${kind}-${i}`} kind={kind} d={d} /> : null,
          ),
        )}
        {parts.map((_, i) => (
          <path
            id={`layer-${i}`}
            class="layer"
            d={bandPath(levels[i - 1] ?? inside.bottom, levels[i] ?? inside.full)}
            fill={`url(#${hatchingOf(parts, i)})`}
          />
        ))}
      </defs>
    </svg>
  );
}

function Hatching({ id, kind, d }: { readonly id: string; readonly kind: string; d: string }) {
  return (
    <pattern id={id} class={`hatching ${kind}`} width="6" height="6" patternUnits="userSpaceOnUse">
      <path class="hatching-ground" d="M0 0h6v6H0z" />
      <path class="hatching-line" d={d} />
    </pattern>
  );
}

/** The bucket when the material of a place is in: that one inked, those before it faint beneath. */
export function BucketDrawing(props: {
  readonly parts: readonly Poured[];
  readonly at: number;
}): VNode {
  const { parts, at } = props;
  const levels = levelsOf(parts);
  const level = levels[at] ?? inside.full;
  const base = parts.findLastIndex(({ isAddition }) => !isAddition);
  const baseLevel = levels[base];
  const [rim, floor] = [wallAt(2), wallAt(inside.bottom)];
  return (
    <svg class="pail" viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true">
      {parts.slice(0, at).map((_, i) => (
        <use class="before" href={`#layer-${i}`} />
      ))}
      <use class="now" href={`#layer-${at}`} />
      {baseLevel !== undefined && base < parts.length - 1 && (
        <path
          class="base-line"
          d={`M${run(wallAt(baseLevel), baseLevel)}H${n(size.width - wallAt(baseLevel))}`}
        />
      )}
      <path
        class="wall"
        d={`M${run(rim - 2, 2)}H${n(rim)}L${run(floor, inside.bottom)}H${n(size.width - floor)}L${run(size.width - rim, 2)}h2`}
      />
      <path class="level" d={`M${run(size.width - wallAt(level), level)}l4.5-2.6v5.2Z`} />
    </svg>
  );
}
