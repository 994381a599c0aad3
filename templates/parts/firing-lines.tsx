/** Firings as a list, a line each: the curve, what was aimed at and seen, and how it went. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import { CurveGlyph } from "../charts/small-curve.tsx";
import { capital, formatDay } from "../words/english/numbers.ts";
import { storyHeading, witnessSummary } from "../words/firing/story.ts";
import { firingName } from "../words/tile/steps.ts";

export function FiringLines(props: {
  readonly root: string;
  readonly firings: readonly CatalogueFiring[];
  /** Left out where every line would name the same one. */
  readonly withKiln: boolean;
}): VNode {
  return (
    <ul class="firing-lines">
      {props.firings.map((firing) => (
        <li>
          <FiringLine root={props.root} firing={firing} withKiln={props.withKiln} />
        </li>
      ))}
    </ul>
  );
}

function FiringLine(props: {
  readonly root: string;
  readonly firing: CatalogueFiring;
  readonly withKiln: boolean;
}): VNode {
  const { root, firing, withKiln } = props;
  const { on, kind, cone, story } = firing;
  const curve = firing.log?.curve ?? firing.programme?.curve;
  return (
    <a href={root + firing.url} class={story.agreement === "differs" ? "differs" : undefined}>
      <span class="glyph">
        {curve && curve.length > 1 && (
          <CurveGlyph curve={curve} kind={firing.log ? "told" : "meant"} />
        )}
      </span>
      <span class="which">
        <span class="code">{firing.id}</span>{" "}
        <span class="quiet">{on ? formatDay(on) : "still to come"}</span>
      </span>
      <span class="told">
        {withKiln && firing.kiln ? `${firingName(kind)}, ${firing.kiln.name}` : firingName(kind)}
        {cone && (
          <>
            , aimed at cone <span class="cone-name">{cone}</span>
          </>
        )}
        {on && `; ${witnessSummary(story)}`}
      </span>
      <span class="how-it-went">{capital(storyHeading(firing))}</span>
    </a>
  );
}
