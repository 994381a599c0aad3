/** What came out of the kiln, and what was seen later. */
import type { VNode } from "preact";
import type { CatalogueTile } from "../../src/catalogue/types.ts";
import { capital, formatDay } from "../words/numbers.ts";
import { againSentence, fateSentence, lookWords, stageName } from "../words/outcome.ts";
import { Swatches } from "./swatches.tsx";

export function Outcome({ tile }: { readonly tile: CatalogueTile }): VNode {
  return (
    <section class="outcome">
      <h2>What came out</h2>
      {tile.results.length === 0 && tile.fate === null && <p>{capital(stageName(tile.stage))}.</p>}
      {tile.fate && <p>{fateSentence(tile.fate)}</p>}
      {tile.results.map((result) => (
        <p>
          {tile.results.length > 1 && result.after && <span class="code">{result.after} </span>}
          {capital(lookWords(result)) || "Nothing was written down"}.{" "}
          {result.again && <b class={`again ${result.again}`}>{againSentence(result.again)}</b>}
          {result.nextTime && <> Next time: {result.nextTime}.</>}
        </p>
      ))}
      {tile.later.map((look) => (
        <p>
          Looked at again on {formatDay(look.on)}: {lookWords(look)}.
        </p>
      ))}
      {tile.colour && <Swatches colour={tile.colour} />}
    </section>
  );
}
