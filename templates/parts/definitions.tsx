/** A definition table: what something has, a line each. Lines of which nothing is known are left out. */
import type { ComponentChildren, VNode } from "preact";

export type Definition = readonly [term: string, value: ComponentChildren];

export function Definitions({ of }: { readonly of: readonly Definition[] }): VNode | null {
  const known = of.filter(([, value]) => value !== null && value !== undefined && value !== "");
  if (known.length === 0) return null;
  return (
    <dl class="definitions">
      {known.map(([term, value]) => (
        <div>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
