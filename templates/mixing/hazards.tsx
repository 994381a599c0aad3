/** Cautions for recipes and materials: the loud ones first, each with its source. */
import type { VNode } from "preact";
import type { Caution } from "../../src/chemistry/cautions/cautions.ts";
import { listed } from "../words/english/numbers.ts";

interface HazardsProps {
  readonly root: string;
  readonly hazards: readonly Caution[];
  /** The glaze that they are of, where more than one is on the page. */
  readonly of?: string;
}

/**
 * Only what may never be left out, at the head of a page; nothing where there is no such thing.
 * The sources stand with the whole list.
 */
export function LoudHazards(props: HazardsProps): VNode | null {
  const loud = props.hazards.filter(({ isLoud }) => isLoud);
  return <Hazards {...props} hazards={loud.map((caution) => ({ ...caution, sources: [] }))} />;
}

export function Hazards({ root, hazards, of }: HazardsProps): VNode | null {
  if (hazards.length === 0) return null;
  return (
    <div class="cautions">
      {hazards.map((caution) => (
        <Hazard caution={caution} of={of} />
      ))}
      <p class="quiet">
        Labels, safety sheets, local rules and a laboratory decide:{" "}
        <a href={`${root}care.html`}>care</a>.
      </p>
    </div>
  );
}

function Hazard({ caution, of }: { readonly caution: Caution; readonly of: string | undefined }) {
  const { isLoud, message, hint, sources } = caution;
  return (
    <div class={isLoud ? "caution loud" : "caution"}>
      <p>
        <b>Caution</b> {of !== undefined && `${of}: `}
        {message}.
      </p>
      {hint !== "" && <p class="quiet">{hint}</p>}
      {sources.length > 0 && <p class="quiet source">{sourceWords(sources)}</p>}
    </div>
  );
}

function sourceWords(sources: Caution["sources"]): string {
  return `Source: ${[...new Set(sources.map(({ source }) => source))].join("; ")}.`;
}

/** What a list says beside a glaze's name, such as `⚠ holds lead`; nothing where nothing is loud. */
export function loudWords(hazards: readonly Caution[]): string | null {
  const words = hazards.filter(({ isLoud }) => isLoud).map(({ inShort }) => inShort);
  return words.length > 0 ? `⚠\uFE0E ${listed(words)}` : null;
}
