/** A measured colour as a flat square. The words beside it say the same. */
import type { VNode } from "preact";

export function ColourSwatch({ hex }: { readonly hex: string }): VNode {
  return (
    <svg class="swatch" viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
      <rect width="1" height="1" fill={hex} />
    </svg>
  );
}
