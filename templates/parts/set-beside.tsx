/** The quiet button that sets a tile or a glaze beside others; its script gives it its words. */
import type { VNode } from "preact";

export function SetBeside(props: {
  readonly kind: "glazes" | "tiles";
  readonly id: string;
}): VNode {
  return (
    <button type="button" class="plain beside-button" data-beside={`${props.kind} ${props.id}`}>
      set beside
    </button>
  );
}
