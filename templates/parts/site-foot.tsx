/** The foot of every page: what the catalogue is not, what may be done with it, and where else to go. */
import type { VNode } from "preact";
import { formTitle } from "../words/add/form.ts";
import type { Frame } from "./frame.ts";
import { LicenceLine } from "./licence.tsx";
import { dataPath, waysAtFoot } from "./sections.ts";

export function SiteFoot({ frame }: { readonly frame: Frame }): VNode {
  const { root, studio, website, pages, licence, feed, waiting, alone } = frame;
  return (
    <footer class="site-foot">
      <p>
        {alone && <>{alone} </>}
        These pages report what {studio} tested. They certify nothing:{" "}
        <a href={`${root}care.html`}>what to take care of, and what decides</a>.
      </p>
      <LicenceLine studio={studio} licence={licence} />
      {waiting && (
        <p class="waiting-note">
          Some records <a href={`${root}waiting.html`}>wait to be mended</a>: lists and counts are
          without them.
        </p>
      )}
      <ul class="ways">
        {pages.map(({ title, url }) => (
          <li>
            <a href={root + url}>{title}</a>
          </li>
        ))}
        {website !== null && (
          <li>
            <a href={website}>The website of {studio}</a>
          </li>
        )}
        {frame.form !== null && (
          <li>
            <a href={root + frame.form}>{formTitle}</a>
          </li>
        )}
        {waysAtFoot
          .filter(({ address }) => !(frame.unlisted && address === dataPath))
          .map(({ address, name }) => (
            <li>
              <a href={root + address}>{name}</a>
            </li>
          ))}
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
