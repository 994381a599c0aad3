/** What the kiln did to one tile: a sentence, what its own shelf showed, and a small curve. */
import type { VNode } from "preact";
import type { TileFiring } from "../../src/catalogue/kilns/tile-firings.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import { TileCurve } from "../charts/small-curve.tsx";
import { besideTile } from "../words/firing/story.ts";
import { firingHead, firingTail } from "../words/tile/outcome.ts";

export function TileFiringWords(props: {
  readonly root: string;
  readonly firing: TileFiring;
  readonly unit: TemperatureUnit;
}): VNode {
  const { root, firing, unit } = props;
  const page = firing.page && root + firing.page.url;
  const tail = firingTail(firing);
  const isBisque = firing.kind === "bisque";
  const beside = isBisque && firing.agreement !== "differs" ? "" : besideTile(firing);
  return (
    <>
      <p>
        {page ? <a href={page}>{firingHead(firing)}</a> : firingHead(firing)}
        {tail && ` ${tail}`}.
      </p>
      {beside && (
        <p class="beside">
          {beside}
          {firing.agreement === "differs" && page && (
            <>
              {" "}
              <a href={page}>The records of this load do not agree: see what may be behind it</a>.
            </>
          )}
        </p>
      )}
      {!isBisque && firing.curve && <TileCurve curve={firing.curve} unit={unit} />}
    </>
  );
}
