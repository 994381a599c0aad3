/** What a firing came to, what its cones said, and its programme. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import { minutesInWords, type TemperatureUnit } from "../../src/firing/units.ts";
import { ConePack } from "../charts/cone-pack.tsx";
import { capital, tied } from "../words/english/numbers.ts";
import { reachedWords } from "../words/firing/cones.ts";
import { rateInBothUnits, temperatureInBothUnits } from "../words/firing/degrees.ts";
import { heatWorkCaveat } from "../words/firing/heat-work.ts";
import { witnessWords } from "../words/firing/load.ts";
import { openTimeSentences, programmeSentences } from "../words/firing/programme.ts";
import { shelfWords } from "../words/tile/steps.ts";
import { Definitions } from "./definitions.tsx";

interface FactsProps {
  readonly firing: CatalogueFiring;
  readonly unit: TemperatureUnit;
}

/** The figures that can be read off a log or a programme. */
export function HeatFacts({ firing: { heat }, unit }: FactsProps): VNode | null {
  if (!heat) return null;
  const from = heat.from === "log" ? "by the log" : "if the kiln followed its programme";
  return (
    <section class="heat-facts">
      <h2>What it came to, {from}</h2>
      <Definitions
        of={[
          ["Heat work", capital(reachedWords(heat))],
          ["Hottest", temperatureInBothUnits(heat.peak, unit)],
          ["The last hundred degrees", rateWords(heat.lastRate, unit)],
          ["Held at the top", heat.hold >= 1 ? minutesInWords(heat.hold) : ""],
          [
            `Above ${unit === "celsius" ? "1000 °C" : "1832 °F"}`,
            heat.timeAbove1000 >= 1 ? minutesInWords(heat.timeAbove1000) : "",
          ],
          [
            `Cooling, ${unit === "celsius" ? "1100 to 900 °C" : "2012 to 1652 °F"}`,
            rateWords(heat.coolingRate, unit),
          ],
        ]}
      />
      <p class="quiet">{heatWorkCaveat}</p>
    </section>
  );
}

function rateWords(rate: number | null, unit: TemperatureUnit): string {
  return rate === null ? "" : rateInBothUnits(rate, unit);
}

/** The witness cones shelf by shelf, drawn as they stood where their bends were written down. */
export function Witnesses({
  firing: { on, witnessed },
}: {
  readonly firing: CatalogueFiring;
}): VNode {
  const shelves = Object.entries(witnessed);
  return (
    <section class="witnesses">
      <h2>What the cones said</h2>
      {shelves.length === 0 && (
        <p>{on ? "No witness cone was read." : "The kiln has not been lit yet."}</p>
      )}
      <Definitions
        of={shelves.map(([shelf, witness]) => [
          capital(shelfWords(shelf)),
          <>
            {witness.read === "bends" && <ConePack bends={witness.bends} />}
            <span class={witness.read === "bends" ? "bends" : "code"}>{witnessWords(witness)}</span>
          </>,
        ])}
      />
    </section>
  );
}

/** The programme as sentences, in the studio's unit and then in the other. */
export function Programme({ firing: { programme }, unit }: FactsProps): VNode {
  const segments = programme?.segments ?? [];
  const inOtherUnit = programmeSentences(segments, unit === "celsius" ? "fahrenheit" : "celsius");
  return (
    <section class="programme">
      <h2>The programme</h2>
      {programme ? (
        <ol class="steps">
          {programmeSentences(segments, unit).map((words, i) => (
            <li>
              <span>
                {tied(words)}. <span class="other-unit">{tied(inOtherUnit[i] ?? "")}</span>
              </span>
            </li>
          ))}
        </ol>
      ) : (
        <p>Not recorded.</p>
      )}
      {openTimeSentences(segments, unit).map((words) => (
        <p>{words}.</p>
      ))}
      <p class="quiet">
        {programme &&
          `In °${unit === "celsius" ? "C" : "F"}, then in °${unit === "celsius" ? "F" : "C"}. `}
        A programme fits the kiln that it was written for. Cones, not the display, say what the
        glaze had.
      </p>
    </section>
  );
}

/** How the log was read: what was taken for what. */
export function LogRead({ firing: { log } }: { readonly firing: CatalogueFiring }): VNode | null {
  if (!log) return null;
  return (
    <details class="as-table log-read">
      <summary>How the log was read</summary>
      <ul>
        {log.taken.map((words) => (
          <li>{words}</li>
        ))}
      </ul>
    </details>
  );
}
