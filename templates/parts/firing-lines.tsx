/** Firings as a list, a line each: the curve, what was aimed at and seen, and how it went. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { Curve } from "../../src/firing/curve.ts";
import { CurveGlyph } from "../charts/small-curve.tsx";
import { formatDay } from "../words/english/numbers.ts";
import { firingName } from "../words/tile/steps.ts";

/** What a line says of a firing. */
export interface FiringLineProps {
  readonly id: string;
  readonly url: string;
  readonly on: string | null;
  readonly kind: CatalogueFiring["kind"];
  readonly kiln: string | null;
  readonly cone: CatalogueFiring["cone"];
  readonly curve: Curve | null;
  /** Whether the curve is one that was recorded, and not only meant. */
  readonly logged: boolean;
  /** What its witness cones said, and how it went. */
  readonly witnesses: string;
  readonly heading: string;
  readonly differs: boolean;
}

export function FiringLines(props: {
  readonly root: string;
  readonly firings: readonly FiringLineProps[];
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
  readonly firing: FiringLineProps;
  readonly withKiln: boolean;
}): VNode {
  const { root, firing, withKiln } = props;
  const { on, kind, cone, curve } = firing;
  return (
    <a href={root + firing.url} class={firing.differs ? "differs" : undefined}>
      <span class="glyph">
        {curve && curve.length > 1 && (
          <CurveGlyph curve={curve} kind={firing.logged ? "told" : "meant"} />
        )}
      </span>
      <span class="which">
        <span class="code">{firing.id}</span>{" "}
        <span class="quiet">{on ? formatDay(on) : "still to come"}</span>
      </span>
      <span class="told">
        {withKiln && firing.kiln ? `${firingName(kind)}, ${firing.kiln}` : firingName(kind)}
        {cone && (
          <>
            , aimed at cone <span class="cone-name">{cone}</span>
          </>
        )}
        {on && `; ${firing.witnesses}`}
      </span>
      <span class="how-it-went">{firing.heading}</span>
    </a>
  );
}
