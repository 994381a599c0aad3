/** A code as it is to be written on clay: 6 and 9 have a line beneath, so that a tile has a right way up. */
import type { VNode } from "preact";

export function WrittenCode({ code }: { readonly code: string }): VNode {
  const parts = code.split(/([69])/u);
  return (
    <span class="written-code">
      {parts.map((part) => (/^[69]$/u.test(part) ? <u>{part}</u> : part))}
    </span>
  );
}
