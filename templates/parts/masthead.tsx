/** The head of every page: the studio, and the ways in. */
import type { VNode } from "preact";
import type { Frame } from "./frame.ts";
import { type Section, sections } from "./sections.ts";

/**
 * One row. Where it is too narrow for all, the ways in are folded away behind a button, which a browser
 * opens without any script (`popover`); one too old for that shows them as a row that scrolls.
 */
export function Masthead({
  frame: { root, studio, mark },
  section,
}: {
  readonly frame: Frame;
  readonly section?: Section | undefined;
}): VNode {
  return (
    <header class="masthead">
      <a class="studio" href={`${root}index.html`}>
        {mark && (
          <img src={root + mark.url} alt={mark.alt} width={mark.width} height={mark.height} />
        )}
        <span>{studio}</span>
      </a>
      <button type="button" class="unfold" popovertarget="sections">
        Menu
      </button>
      <nav id="sections" popover="auto" aria-label="Catalogue">
        <ul>
          {sections.map(({ key, address, name }) => (
            <li>
              <a
                href={root + address}
                {...(key === section && { "aria-current": "true" as const })}
              >
                {name}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    </header>
  );
}
