/** Oxides and formulas with true subscripts; a long one may break between its groups. */
import type { VNode } from "preact";
import { subscriptPieces } from "../../src/terms/oxides.ts";

export function Formula({ of }: { readonly of: string }): VNode {
  return (
    <span class="formula">
      {subscriptPieces(of).map(({ text, subscript }) =>
        subscript ? <sub>{text}</sub> : breakable(text),
      )}
    </span>
  );
}

function breakable(text: string): (string | VNode)[] {
  return text.split(/(?<=·)/u).flatMap((part) => (part.endsWith("·") ? [part, <wbr />] : [part]));
}
