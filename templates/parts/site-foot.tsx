/** The foot of every page: what the catalogue is not, and where else to go. */
import type { VNode } from "preact";
import type { Frame } from "./frame.ts";

export function SiteFoot({ frame: { root, studio, licence } }: { readonly frame: Frame }): VNode {
  return (
    <footer class="site-foot">
      <p>
        These pages report what {studio} tested. They certify nothing:{" "}
        <a href={`${root}care.html`}>what to take care of, and what decides</a>.
      </p>
      <p class="quiet">{licence}</p>
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
      </ul>
    </footer>
  );
}
