/** What to mind with some glazes, in short, a line for each; in full on the glaze's own page. */
import type { VNode } from "preact";
import type { LoadFume, Minding } from "../../src/catalogue/minding.ts";

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

/** What a load gives off, a line for each, with the glazes that it is from. */
export function LoadFumes(props: {
  readonly root: string;
  readonly fumes: readonly LoadFume[];
}): VNode | null {
  if (props.fumes.length === 0) return null;
  return (
    <div class="minding">
      <p>
        <b>What the glazes of this load give off in the kiln, as far as it is known</b>
      </p>
      <ul>
        {props.fumes.map(({ words, glazes }) => (
          <li>
            {words} (
            {glazes.map(({ name, url }, i) => (
              <>
                {i > 0 && ", "}
                <a href={`${props.root}${url}#mind`}>{name}</a>
              </>
            ))}
            )
          </li>
        ))}
      </ul>
    </div>
  );
}
