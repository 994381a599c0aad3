/** The witness cones of a shelf as they stood when the kiln was opened. */
import type { VNode } from "preact";
import type { Bend } from "../../src/records/firing.ts";
import { type Cone, compareCones } from "../../src/terms/cones.ts";

/** Foot, the pull of the bend, and tip: x to the right, y upwards, in pixels. */
const spines: Readonly<Record<Bend, readonly [x: number, y: number][]>> = {
  standing: [
    [0, 0],
    [2, 17],
    [4, 34],
  ],
  bending: [
    [0, 0],
    [2, 30],
    [19, 25],
  ],
  bent: [
    [0, 0],
    [7, 50],
    [25, 1],
  ],
  down: [
    [0, 0],
    [6, 13],
    [31, 2],
  ],
};

/** Half as wide as its foot. */
const halfFoot = 4.5;

export function ConePack({ bends }: { readonly bends: ReadonlyMap<Cone, Bend> }): VNode {
  return (
    <span class="cone-pack" aria-hidden="true">
      {[...bends]
        .sort(([a], [b]) => compareCones(a, b))
        .map(([cone, bend]) => (
          <span class="cone-drawn">
            <svg aria-hidden="true" width="48" height="40" viewBox="-8 -36 48 40">
              <path class="earth" d="M-8 0H40" />
              <path class="body" d={conePath(bend)} />
            </svg>
            <span class="code">{cone}</span>
          </span>
        ))}
    </span>
  );
}

/** The outline of a cone: its spine, thick at the foot and thin at the tip. */
function conePath(bend: Bend): string {
  const steps = 12;
  const left: string[] = [];
  const right: string[] = [];
  for (let i = 0; i <= steps; i += 1) {
    const t = i / steps;
    const [x, y, dx, dy] = spineAt(spines[bend], t);
    const half = halfFoot * (1 - t) + 0.5;
    const length = Math.hypot(dx, dy) || 1;
    left.push(point(x - (dy / length) * half, y + (dx / length) * half));
    right.unshift(point(x + (dy / length) * half, y - (dx / length) * half));
  }
  return `M${[...left, ...right].join("L")}Z`;
}

function spineAt(
  [foot = [0, 0], pull = [0, 0], tip = [0, 0]]: readonly [number, number][],
  t: number,
): readonly [x: number, y: number, dx: number, dy: number] {
  const at = (i: 0 | 1) => foot[i] * (1 - t) ** 2 + pull[i] * 2 * t * (1 - t) + tip[i] * t * t;
  const along = (i: 0 | 1) => 2 * (1 - t) * (pull[i] - foot[i]) + 2 * t * (tip[i] - pull[i]);
  return [at(0), at(1), along(0), along(1)];
}

/** On the page y runs downwards, and nothing goes below the shelf. */
function point(x: number, y: number): string {
  return `${x.toFixed(1)} ${(-Math.max(0, y)).toFixed(1)}`;
}
