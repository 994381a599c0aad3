/** The foot of every page: what the catalogue is not, and where else to go. */
import type { VNode } from "preact";
import type { Frame } from "./frame.ts";

export function SiteFoot({ frame }: { readonly frame: Frame }): VNode {
  const { root, studio, licence, feed, waiting } = frame;
  return (
    <footer class="site-foot">
      <p>
        These pages report what {studio} tested. They certify nothing:{" "}
        <a href={`${root}care.html`}>what to take care of, and what decides</a>.
      </p>
      <p class="quiet">{licence}</p>
      {waiting && (
        <p class="waiting-note">
          Some records <a href={`${root}waiting.html`}>wait to be mended</a>: lists and counts are
          without them.
        </p>
      )}
      <ul class="ways">
        <li>
          <a href={`${root}materials/index.html`}>Materials</a>
        </li>
        <li>
          <a href={`${root}blends/index.html`}>Blends</a>
        </li>
        <li>
          <a href={`${root}maps/index.html`}>Maps</a>
        </li>
        <li>
          <a href={`${root}makers/index.html`}>Makers</a>
        </li>
        <li>
          <a href={`${root}reference.html`}>How to write a record</a>
        </li>
        <li>
          <a href={`${root}about.html`}>About</a>
        </li>
        {feed !== null && (
          <li>
            <a href={root + feed} type="application/atom+xml">
              Feed of new results
            </a>
          </li>
        )}
      </ul>
    </footer>
  );
}
