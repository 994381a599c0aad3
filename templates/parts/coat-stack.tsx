/**
 * What was done, row by row beside the layer drawing. The list is read from 1 upwards, as the tile
 * was made; on the page its rows stand as the layers do, the first at the bottom, on the clay.
 */
import type { VNode } from "preact";
import type { Link, TileFiring } from "../../src/catalogue/types.ts";
import type { TileStep } from "../../src/records/archive.ts";
import { DrawingKey } from "../drawing/drawing-key.tsx";
import { coatsHigh, LaneDrawing } from "../drawing/layer-drawing.tsx";
import type { LayerView } from "../drawing/layer-view.ts";
import { spoken } from "../words/numbers.ts";
import { coatWords, firingName, markPlace, markWords, shelfWords } from "../words/steps.ts";

export interface CoatStackProps {
  readonly root: string;
  readonly view: LayerView;
  readonly steps: readonly TileStep[];
  readonly firings: readonly TileFiring[];
  readonly glazes: Readonly<Record<string, Link>>;
  readonly clay: Link | null;
  readonly texture: string;
}

export function CoatStack(props: CoatStackProps): VNode {
  const { view, steps } = props;
  return (
    <>
      <ol class="coat-stack">
        <li class="clay">
          <LaneDrawing view={view} at={-1} />
          <ClayWords {...props} />
        </li>
        {steps.map((step, i) => (
          <StackRow {...props} step={step} at={i} />
        ))}
      </ol>
      <DrawingKey view={view} />
    </>
  );
}

function ClayWords({ root, clay, texture }: CoatStackProps): VNode {
  return (
    <div class="words">
      <span class="what">
        {clay ? <a href={root + clay.url}>{clay.name}</a> : "Clay not named"}
      </span>
      <span class="how">{texture === "smooth" ? "smooth clay" : `${spoken(texture)} clay`}</span>
    </div>
  );
}

function StackRow(props: CoatStackProps & { readonly step: TileStep; readonly at: number }): VNode {
  const { view, step, at, firings, steps } = props;
  const lane = view.lanes[at];
  const place = steps.slice(0, at + 1).filter((other) => other.step === "fired").length - 1;
  const firing = step.step === "fired" ? firings[place] : undefined;
  const gone = lane && "gone" in lane && lane.gone;
  return (
    <li
      class={[step.step, `high-${lane ? coatsHigh(lane) : 1}`, gone && "gone"]
        .filter(Boolean)
        .join(" ")}
    >
      <LaneDrawing view={view} at={at} />
      <div class="words">
        {step.step === "fired" ? (
          <FiringWords {...props} firing={firing} />
        ) : (
          <StepWords {...props} step={step} />
        )}
        {gone && <span class="how"> (washed off again)</span>}
      </div>
    </li>
  );
}

function FiringWords({
  root,
  step,
  firing,
}: CoatStackProps & { readonly step: TileStep; readonly firing: TileFiring | undefined }) {
  if (step.step !== "fired") return null;
  const name = firingName(step.kind);
  return (
    <>
      <span class="what">
        {firing?.firing ? <a href={root + firing.firing.url}>{name}</a> : name}
      </span>
      {step.shelf && <span class="how">{shelfWords(step.shelf)}</span>}
      {firing?.cone && (
        <span class="cone">
          <span class="unseen">cone </span>
          {firing.cone}
        </span>
      )}
    </>
  );
}

function StepWords({
  root,
  step,
  glazes,
}: CoatStackProps & { readonly step: TileStep }): VNode | null {
  if (step.step === "fired") return null;
  if (step.step !== "coat")
    return (
      <>
        <span class="what mark">{markWords(step)}</span>
        <span class="how">{markPlace(step)}</span>
      </>
    );
  return (
    <>
      <span class="what">
        {step.glazes.map((id, i) => {
          const glaze = glazes[id];
          return (
            <>
              {i > 0 && " fading to "}
              {glaze ? <a href={root + glaze.url}>{glaze.name}</a> : id}
            </>
          );
        })}
      </span>
      <span class="how">{coatWords(step)}</span>
    </>
  );
}
