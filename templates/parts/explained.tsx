/** A sentence in which what stands between backticks is written as it is typed. */
import type { VNode } from "preact";

export function Explained({ words }: { readonly words: string }): VNode {
  return (
    <>
      {words
        .split("`")
        .map((piece, i) => (i % 2 === 0 ? piece : <span class="code">{piece}</span>))}
    </>
  );
}
