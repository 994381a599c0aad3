/** The curve of a firing: programme and log together, cones as a scale on the right. */
import type { ComponentChildren, VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import { rateInBothUnits } from "../words/firing/degrees.ts";
import type { CurvePaths } from "./curve-shape.ts";
import { CurveTable } from "./curve-table.tsx";
import { type FiringChart, firingChart, plotHeight, plotWidth } from "./firing-chart.ts";

export function FiringFigure(props: {
  readonly firing: CatalogueFiring;
  readonly unit: TemperatureUnit;
}): VNode | null {
  const { firing, unit } = props;
  const chart = firingChart(firing, unit);
  if (!chart) return null;
  return (
    <>
      <figure class="firing-figure">
        <div class="firing-chart" aria-hidden="true">
          <Temperatures chart={chart} unit={unit} />
          <div class="plot">
            <Plot chart={chart} />
            <Labels chart={chart} />
          </div>
          <Cones chart={chart} />
          <Hours chart={chart} />
        </div>
        <figcaption>{captionOf(firing, chart, unit)}</figcaption>
      </figure>
      <CurveTable firing={firing} unit={unit} />
    </>
  );
}

function captionOf({ coneScale }: CatalogueFiring, chart: FiringChart, unit: TemperatureUnit) {
  const untimed = chart.programme?.untimed || chart.log?.untimed;
  return [
    chart.programme && chart.log
      ? "Shaded: the programme. Line: what was recorded."
      : chart.log
        ? "What was recorded; no programme was written down."
        : "The programme; nothing was recorded.",
    untimed && "Broken line: how long that part took is not known.",
    `On the right, cones: each is down at its mark when the last hundred degrees are climbed at ${rateInBothUnits(coneScale.ratePerHour, unit)}. Holds and slow cooling bring them down earlier.`,
  ]
    .filter(Boolean)
    .join(" ");
}

function Plot({ chart: { programme, log, aim } }: { readonly chart: FiringChart }): VNode {
  return (
    <svg aria-hidden="true" viewBox={`0 0 ${plotWidth} ${plotHeight}`} preserveAspectRatio="none">
      {programme && <path class="ground" d={programme.ground} />}
      {aim && <path class="aim" d={`M0 ${aim.y.toFixed(1)}H${plotWidth}`} />}
      {programme && <CurveLine paths={programme} kind={log ? "meant" : "told"} />}
      {log && <CurveLine paths={log} kind="told" />}
      <path class="base" d={`M0 ${plotHeight}H${plotWidth}`} />
    </svg>
  );
}

function CurveLine(props: { readonly paths: CurvePaths; readonly kind: "meant" | "told" }): VNode {
  const { paths, kind } = props;
  return (
    <>
      <path class={kind} d={paths.timed} />
      {paths.untimed && <path class={`${kind} untimed`} d={paths.untimed} />}
    </>
  );
}

function Labels({ chart: { aim, labels } }: { readonly chart: FiringChart }): VNode {
  return (
    <svg aria-hidden="true" class="labels">
      {aim && (
        <text x="4" y={(aim.y - 7).toFixed(1)}>
          {aim.words}
        </text>
      )}
      {labels.map(({ x, y, words, ends, onGround }) => (
        <text
          class={onGround ? "on-ground" : undefined}
          x={perCent(x)}
          y={y.toFixed(1)}
          dx={ends ? -8 : 8}
          {...(ends && { "text-anchor": "end" })}
        >
          {words}
        </text>
      ))}
    </svg>
  );
}

function Edge(props: { readonly kind: string; readonly children: ComponentChildren }): VNode {
  return (
    <svg aria-hidden="true" class={`edge ${props.kind}`} height={plotHeight}>
      {props.children}
    </svg>
  );
}

function Temperatures(props: {
  readonly chart: FiringChart;
  readonly unit: TemperatureUnit;
}): VNode {
  const { chart, unit } = props;
  return (
    <Edge kind="temperatures">
      <text class="title" x="100%" dx="-8" y="-8" text-anchor="end">
        {unit === "celsius" ? "°C" : "°F"}
      </text>
      {chart.temperatures.map(({ y, words }) => (
        <text x="100%" dx="-8" y={y.toFixed(1)} dy="0.35em" text-anchor="end">
          {words}
        </text>
      ))}
    </Edge>
  );
}

function Cones({ chart }: { readonly chart: FiringChart }): VNode {
  return (
    <Edge kind="cones">
      <text class="title" x="0" y="-8">
        cone
      </text>
      <line
        x1="0"
        x2="0"
        y1={(chart.cones.at(-1)?.y ?? 0).toFixed(1)}
        y2={(chart.cones[0]?.y ?? 0).toFixed(1)}
      />
      {chart.cones.map(({ y, words, named, aim }) => (
        <>
          <line x1="0" x2={named ? 8 : 4} y1={y.toFixed(1)} y2={y.toFixed(1)} />
          {named && (
            <text x="12" y={y.toFixed(1)} dy="0.35em" class={aim ? "aim" : undefined}>
              {words}
            </text>
          )}
        </>
      ))}
    </Edge>
  );
}

function Hours({ chart }: { readonly chart: FiringChart }): VNode {
  return (
    <svg aria-hidden="true" class="hours" height="24">
      {chart.hours.map(({ x, words }) => (
        <>
          <line x1={perCent(x)} x2={perCent(x)} y1="0" y2="5" />
          <text x={perCent(x)} y="20" text-anchor={x > 96 ? "end" : "middle"}>
            {words}
          </text>
        </>
      ))}
    </svg>
  );
}

function perCent(x: number): string {
  return `${x.toFixed(2)}%`;
}
