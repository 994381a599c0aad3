/** The head of every page: the studio, and the ways in. */
import type { VNode } from "preact";
import type { Frame, Section } from "./frame.ts";

const sections: readonly (readonly [Section, string, string])[] = [
  ["wall", "index.html", "Tiles"],
  ["glazes", "glazes/index.html", "Glazes"],
  ["colours", "colours.html", "Colours"],
  ["clays", "clays/index.html", "Clays"],
  ["cones", "cones/index.html", "Cones"],
  ["firings", "firings/index.html", "Firings"],
  ["sets", "sets/index.html", "Sets"],
  ["care", "care.html", "Care"],
];

export function Masthead({
  frame: { root, studio },
  section,
}: {
  readonly frame: Frame;
  readonly section?: Section | undefined;
}): VNode {
  return (
    <header class="masthead">
      <a class="studio" href={`${root}index.html`}>
        {studio}
      </a>
      <nav aria-label="Catalogue">
        <ul>
          {sections.map(([key, address, name]) => (
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
