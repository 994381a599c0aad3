/** A control tile's twins, load by load: what they look like tells the kiln from the glaze. */
import type { VNode } from "preact";
import type { ColourTrust } from "../../src/catalogue/colours/trust.ts";
import type { ControlTwin } from "../../src/catalogue/kilns/control.ts";
import type { Aspect } from "../../src/likeness/make-up.ts";
import { trustSentence } from "../words/colour/measured.ts";
import { capital, formatDay } from "../words/english/numbers.ts";
import { twinSentence } from "../words/tile/control.ts";
import { unwrittenWords } from "../words/tile/likeness.ts";
import { lookWords } from "../words/tile/outcome.ts";
import { shelfWords } from "../words/tile/steps.ts";
import type { TileEntry } from "./entry.ts";
import { SmallPhotograph } from "./photograph.tsx";
import { NoPhotograph } from "./wall.tsx";

export interface TwinEntry {
  readonly twin: ControlTwin;
  readonly entry: TileEntry;
}

/** A control tile with its twins, as a page about a load or a kiln is given them. */
export interface ControlWithTwins {
  readonly control: TileEntry;
  readonly twins: readonly TwinEntry[];
  /** What nobody wrote down of how they were made. */
  readonly unknown: readonly Aspect[];
  /** How far colour differences can be trusted here. */
  readonly trust: ColourTrust | null;
}

export function Twins(props: {
  readonly root: string;
  readonly twins: readonly TwinEntry[];
  /** The control tile, which the others are held against. */
  readonly control: string;
  readonly unknown: readonly Aspect[];
  readonly trust: ColourTrust | null;
  /** Left out where all of them stood in one. */
  readonly withKiln: boolean;
  /** The load that the page is about. */
  readonly here?: string;
}): VNode {
  const { root, twins, here } = props;
  return (
    <>
      <ol class="twins">
        {twins.map(({ twin, entry }) => (
          <li class={twin.firing.id === here ? "here" : undefined}>
            <a class="twin-plate" href={root + entry.url}>
              {entry.picture && twin.pictured ? (
                <SmallPhotograph root={root} picture={entry.picture} turn="late" />
              ) : (
                <Unseen entry={entry} hasLater={entry.picture !== null} />
              )}
              <span class="code">{twin.tile}</span>
            </a>
            <TwinWords {...props} twin={twin} />
          </li>
        ))}
      </ol>
      {props.unknown.length > 0 && (
        <p class="quiet measure">
          {capital(unwrittenWords(props.unknown))}. Twins may differ in it.
        </p>
      )}
      {twins.some(({ twin }) => twin.difference !== null) && (
        <p class="quiet measure">
          ΔE is how far the measured colour is from that of {props.control}; 1 is about what a
          trained eye just tells apart. {trustSentence(props.trust)}
        </p>
      )}
    </>
  );
}

/** A photograph shows what came of the last firing, and none of the earlier ones. */
function Unseen(props: { readonly entry: TileEntry; readonly hasLater: boolean }): VNode {
  return props.hasLater ? (
    <span class="photograph none">
      <span>fired again since; the photograph shows that</span>
    </span>
  ) : (
    <NoPhotograph tile={props.entry} />
  );
}

function TwinWords(props: {
  readonly root: string;
  readonly twin: ControlTwin;
  readonly control: string;
  readonly withKiln: boolean;
  readonly here?: string;
}): VNode {
  const { root, twin, control, here, withKiln } = props;
  const { firing, on, kiln, shelf, cone, difference } = twin;
  const place = [on && formatDay(on), withKiln && kiln?.name, shelf && shelfWords(shelf)].filter(
    Boolean,
  );
  return (
    <div class="twin-words">
      <p class="quiet">
        {firing.id === here ? (
          <span class="code">{firing.id}</span>
        ) : (
          <a class="code" href={root + firing.url}>
            {firing.id}
          </a>
        )}{" "}
        {place.join(", ")}
        {cone && (
          <>
            , cone <span class="cone-name">{cone}</span>
          </>
        )}
      </p>
      <p>
        {capital(lookWords({ ...twin, run: twin.run ?? undefined })) || "Not described"}
        {difference !== null && (
          <>
            ; <span class="figures">ΔE&nbsp;{Math.round(difference)}</span>
          </>
        )}
      </p>
      {twin.unlike.length > 0 && <p class="unlike">{twinSentence(twin, control)}</p>}
    </div>
  );
}
