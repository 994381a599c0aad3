/** What to mind with some glazes, in short, a line for each; in full on the glaze's own page. */
import type { VNode } from "preact";
import type { Minding } from "../../src/catalogue/minding.ts";

interface MindingProps {
  readonly root: string;
  readonly minding: readonly Minding[];
  /** What the lines are of: `Mixing and firing`. */
  readonly title: string;
}

export function MindingLines({ root, minding, title }: MindingProps): VNode | null {
  if (minding.length === 0) return null;
  return (
    <div class="minding">
      <p>
        <b>{title}</b>
      </p>
      <ul>
        {minding.map(({ glaze, loud, quiet }) => (
          <li>
            <a href={`${root}${glaze.url}#mind`}>{glaze.name}</a>:{" "}
            {loud.length > 0 && (
              <span class="loud-words">
                {`⚠︎ ${loud.join(", ")}`}
                {quiet.length > 0 && "; "}
              </span>
            )}
            {quiet.join("; ")}.
          </li>
        ))}
      </ul>
    </div>
  );
}
