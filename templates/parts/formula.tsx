/** Oxides and formulas with true subscripts. */
import type { VNode } from "preact";
import { subscriptPieces } from "../../src/terms/oxides.ts";

export function Formula({ of }: { readonly of: string }): VNode {
  return (
    <span class="formula">
      {subscriptPieces(of).map(({ text, subscript }) => (subscript ? <sub>{text}</sub> : text))}
    </span>
  );
}
