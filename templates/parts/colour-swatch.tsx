/** A measured colour as a flat square: its ground is its colour. The words beside it say the same. */
import type { VNode } from "preact";

export function ColourSwatch({ hex }: { readonly hex: string }): VNode {
  return <svg class="swatch" {...{ color: hex }} aria-hidden="true" />;
}
