/** The hatching for a glaze whose colour nobody has measured, which every drawing refers to. */
import type { VNode } from "preact";

export function Hatch(): VNode {
  return (
    <svg class="defs" width="0" height="0" aria-hidden="true">
      <defs>
        <pattern id="hatch" width="4" height="4" patternUnits="userSpaceOnUse">
          <path class="hatch-ground" d="M0 0h4v4H0z" />
          <path class="hatch-line" d="M-1 5L5 -1M-1 1L1 -1M3 5L5 3" />
        </pattern>
      </defs>
    </svg>
  );
}
