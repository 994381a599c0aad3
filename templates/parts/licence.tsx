/** What others may do with the records and the photographs, on every page. */
import type { VNode } from "preact";
import { asLicenceSays, inOwnWords, nothingSaid } from "../words/site/licence.ts";
import type { Frame } from "./frame.ts";

export function LicenceLine({ studio, licence }: Pick<Frame, "studio" | "licence">): VNode {
  if (licence === null) return <p class="quiet">{nothingSaid(studio)}</p>;
  if (licence.known === null) return <p class="quiet">{inOwnWords(licence.words)}</p>;
  return (
    <p class="quiet">
      {asLicenceSays}{" "}
      <a rel="license" href={licence.known.address}>
        {licence.known.name}
      </a>
      .
    </p>
  );
}
