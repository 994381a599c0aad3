/** The way from one glaze to another by silica and alumina, at every tenth of the dry weight. */
import type { VNode } from "preact";
import type { MeltedCoats, Overlap } from "../../src/catalogue/mixing/overlaps.ts";
import type { MeltFormula, MeltPoint } from "../../src/chemistry/overlap.ts";
import { Axes } from "./axes.tsx";
import type { Place } from "./place-marks.ts";
import { type DrawingFrame, plotPoints } from "./silica-plot.ts";

interface PathProps {
  readonly overlap: Overlap;
  /** Names of the glaze beneath and of the one on top. */
  readonly under: string;
  readonly over: string;
}

const frame: DrawingFrame = {
  width: 480,
  height: 380,
  plot: { left: 44, top: 12, right: 470, bottom: 326 },
  ticks: 5,
};

/** Nothing where one of the two has no unity formula. */
export function MeltPath({ overlap, under, over }: PathProps): VNode | null {
  const { path, coats } = overlap;
  const [start, end] = [path[0], path.at(-1)];
  if (!start || !end || path.length < 11) return null;
  const plotted = plotPoints(path, frame);
  const at = ({ silica, alumina }: MeltPoint) => ({
    x: plotted.scales.x(silica),
    y: plotted.scales.y(alumina),
  });
  return (
    <svg
      class="melt-path"
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={`The path from ${under} to ${over} by silica and alumina; the table holds the same figures`}
    >
      <Axes plotted={plotted} />
      {coats.map((melted) => (
        <Range points={pointsInRange(melted, path).map(at)} />
      ))}
      <path class="way" d={toPath(plotted.points)} />
      <path class="tenths" d={toDots(plotted.points)} />
      <EndLabel at={at(start)} other={at(end)} words={under} />
      <EndLabel at={at(end)} other={at(start)} words={over} />
      {coats.map((melted) =>
        toPoints(formulaOf(melted)).map((point) => (
          <MeltMark at={at(point)} words={`${melted.over} over ${melted.under}`} />
        )),
      )}
    </svg>
  );
}

function toPoints({ upperShare, unity }: MeltFormula): readonly MeltPoint[] {
  return unity ? [{ upperShare, silica: unity.SiO2 ?? 0, alumina: unity.Al2O3 ?? 0 }] : [];
}

function formulaOf({ melt: { upperShare, chemistry } }: MeltedCoats): MeltFormula {
  return { upperShare, unity: chemistry?.unity ?? null };
}

/** The part of the path that a melt may lie on where nobody knows what a coat weighs. */
function pointsInRange({ range }: MeltedCoats, path: readonly MeltPoint[]): readonly MeltPoint[] {
  const [from, to] = range?.flatMap(toPoints) ?? [];
  if (!from || !to) return [];
  const between = path.filter(
    ({ upperShare }) => upperShare > from.upperShare && upperShare < to.upperShare,
  );
  return [from, ...between, to];
}

function Range({ points }: { readonly points: readonly Place[] }): VNode | null {
  return points.length > 0 ? <path class="range-band" d={toPath(points)} /> : null;
}

/** A dot at each point: a line of no length with round ends. */
function toDots(points: readonly Place[]): string {
  return points.map(({ x, y }) => `M${x.toFixed(1)} ${y.toFixed(1)}h0`).join("");
}

function toPath(points: readonly Place[]): string {
  return `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`;
}

/** Beside an end, above the higher one and below the lower. */
function EndLabel(props: {
  readonly at: Place;
  readonly other: Place;
  readonly words: string;
}): VNode {
  const { at, other, words } = props;
  const isHigher = at.y < other.y || (at.y === other.y && at.x < other.x);
  return (
    <text
      x={at.x.toFixed(1)}
      y={(at.y + (isHigher ? -14 : 26)).toFixed(1)}
      text-anchor={at.x > frame.width / 2 ? "end" : "start"}
    >
      {words}
    </text>
  );
}

function MeltMark({ at, words }: { readonly at: Place; readonly words: string }): VNode {
  return (
    <>
      <circle class="melt" cx={at.x.toFixed(1)} cy={at.y.toFixed(1)} r="6" />
      <text x={at.x.toFixed(1)} y={(at.y + 24).toFixed(1)} text-anchor="middle">
        {words}
      </text>
    </>
  );
}
