/** A curve as small as a word, for lists, and as tall as a few lines, beside a tile. */
import type { VNode } from "preact";
import type { Curve } from "../../src/firing/curve.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import { temperatureInWords } from "../words/firing/degrees.ts";
import { curvePaths, peakOf, type Scales } from "./curve-shape.ts";

/** Every small curve has one scale of temperature, so that a low firing looks low. */
const hottest = 1320;

/** @param headroom what is left free above the hottest */
function scalesFor(curve: Curve, width: number, height: number, headroom = 0): Scales {
  const minutes = curve.at(-1)?.minutes || 1;
  return {
    x: (at) => (at / minutes) * width,
    y: (celsius) => height - (celsius / hottest) * (height - headroom),
  };
}

/** In a list: the line and its ground, without words. */
export function CurveGlyph(props: {
  readonly curve: Curve;
  /** What was meant is drawn lighter than what was recorded. */
  readonly kind: "meant" | "told";
}): VNode {
  const { curve, kind } = props;
  const paths = curvePaths(curve, scalesFor(curve, 96, 38));
  return (
    <svg aria-hidden="true" class="curve-glyph" width="96" height="40" viewBox="0 -1 96 40">
      <path class="base" d="M0 38.5H96" />
      <path class={kind} d={paths.timed} />
      {paths.untimed && <path class={`${kind} untimed`} d={paths.untimed} />}
    </svg>
  );
}

/** The height of the drawing, and of the line of words above the hottest peak. */
const [tall, wordsHigh] = [112, 22];

/** Beside a tile: with its peak and its length in words. */
export function TileCurve(props: {
  readonly curve: Curve;
  readonly unit: TemperatureUnit;
}): VNode | null {
  const { curve, unit } = props;
  const peak = peakOf(curve);
  const minutes = curve.at(-1)?.minutes ?? 0;
  if (!peak || minutes === 0) return null;
  const scales = scalesFor(curve, 1000, tall, wordsHigh);
  const paths = curvePaths(curve, scales);
  const x = scales.x(peak.minutes) / 10;
  const isLate = x > 60;
  return (
    <div class="tile-curve" aria-hidden="true">
      <svg aria-hidden="true" viewBox={`0 0 1000 ${tall}`} preserveAspectRatio="none">
        <path class="told" d={paths.timed} />
        {paths.untimed && <path class="told untimed" d={paths.untimed} />}
        <path class="base" d={`M0 ${tall}H1000`} />
      </svg>
      <svg aria-hidden="true" class="labels">
        <text
          x={`${x.toFixed(1)}%`}
          y={(scales.y(peak.celsius) - 6).toFixed(1)}
          dx={isLate ? -10 : 10}
          {...(isLate && { "text-anchor": "end" })}
        >
          {temperatureInWords(peak.celsius, unit)}
        </text>
        <text x="100%" y={tall + 17} text-anchor="end">
          {hoursInWords(minutes)}
        </text>
      </svg>
    </div>
  );
}

function hoursInWords(minutes: number): string {
  const hours = Math.round(minutes / 60);
  return hours < 1 ? `${Math.round(minutes)} min` : `${hours} h`;
}
