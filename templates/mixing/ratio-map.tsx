/**
 * The map of one cone: the ratio of silica to alumina across, the glass formers above, the published
 * boundaries upright, and what came out here as marks of the layer drawing's own hatching.
 */
import type { VNode } from "preact";
import type { MapMark } from "../../src/catalogue/mixing/maps.ts";
import type { Surface } from "../../src/terms/choices.ts";
import { readableOn } from "../drawing/colours.ts";
import { markWords } from "../words/mixing/map.ts";
import { regionWords } from "../words/mixing/second-opinion.ts";
import { asGroup, unread } from "./axes.tsx";
import type { Place } from "./place-marks.ts";
import { type MapFrame, type MapView, narrowMap, ratioMapView, wideMap } from "./ratio-map-view.ts";

/** A glaze on the map, with its number in the order of the ratio. */
export interface NumberedMark extends MapMark {
  readonly number: number;
  /** What may never be left out, such as `⚠ holds lead`. */
  readonly loud: string | null;
}

interface RatioMapProps {
  readonly root: string;
  readonly marks: readonly NumberedMark[];
}

/** The same drawing for a desk and for a phone; the styles show one of them. */
export function RatioMap(props: RatioMapProps): VNode {
  return (
    <>
      <SurfaceHatchings />
      <Drawing {...props} frame={wideMap} kind="wide-map" />
      <Drawing {...props} frame={narrowMap} kind="narrow-map" />
    </>
  );
}

interface DrawingProps extends RatioMapProps {
  readonly frame: MapFrame;
  readonly kind: string;
}

function Drawing({ root, marks, frame, kind }: DrawingProps): VNode {
  const placed = marks.flatMap((shown) =>
    shown.ratio === null
      ? []
      : [{ shown, ratio: shown.ratio, glass: shown.glass, surface: shown.surface }],
  );
  const view = ratioMapView(placed, frame);
  return (
    <svg
      {...asGroup}
      class={`ratio-map ${kind}`}
      viewBox={`0 0 ${frame.width} ${view.height}`}
      aria-label="Glazes by silica to alumina across and by glass formers above; the table holds the same figures"
    >
      <MapAxes view={view} />
      <Boundaries view={view} />
      <SeenRows view={view} />
      <path class="leaders" d={view.marks.map(leaderOf).join("")} />
      <path class="points" d={view.marks.map(({ point }) => `M${at(point)}h0`).join("")} />
      {placed.map(({ shown }, i) => (
        <Mark root={root} shown={shown} frame={frame} place={view.marks[i]?.place ?? null} />
      ))}
    </svg>
  );
}

function at({ x, y }: Place): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

function leaderOf({ point, place }: MapView["marks"][number]): string {
  return place ? `M${at(point)}L${at(place)}` : "";
}

function MapAxes({ view }: { readonly view: MapView }): VNode {
  const { plot } = view.frame;
  return (
    <g class="axes" {...unread}>
      <path d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
      {view.ratioTicks.map((tick) => (
        <text x={tick.at.toFixed(1)} y={plot.bottom + 18} text-anchor="middle">
          {tick.words}
        </text>
      ))}
      {view.glassTicks.map((tick) => (
        <text x={plot.left - 8} y={(tick.at + 4).toFixed(1)} text-anchor="end">
          {tick.words}
        </text>
      ))}
      <text class="axis-name" x={plot.right} y={plot.bottom + 38} text-anchor="end">
        silica to alumina, by moles
      </text>
      <text class="axis-name" x="0" y="13">
        glass formers, moles to one of flux
      </text>
    </g>
  );
}

/** Upright, with the name of each side above the plot, where nothing else is. */
function Boundaries({ view }: { readonly view: MapView }): VNode {
  const { plot } = view.frame;
  return (
    <g class="boundaries" {...unread}>
      <path
        d={view.boundaries.map((x) => `M${x.toFixed(1)} ${plot.top}V${plot.bottom}`).join("")}
      />
      {view.zones.map(({ region, x, anchor, tier }) => (
        <text x={x.toFixed(1)} y={36 + tier * 18} text-anchor={anchor}>
          {regionWords[region]}
        </text>
      ))}
    </g>
  );
}

/** Below the axis, from where to where each surface was seen here. */
function SeenRows({ view }: { readonly view: MapView }): VNode {
  const { plot } = view.frame;
  return (
    <g class="seen-rows" {...unread}>
      {view.rows.length > 0 && (
        <text x="0" y={plot.bottom + 38}>
          seen here
        </text>
      )}
      {view.rows.map(({ surface, from, to, y }) => (
        <>
          <text x={plot.left - 8} y={y + 10} text-anchor="end">
            {surface}
          </text>
          <rect
            class="seen"
            x={(from - 6).toFixed(1)}
            y={y}
            width={(to - from + 12).toFixed(1)}
            height="12"
            fill={hatchingOf(surface, "ink")}
          />
        </>
      ))}
    </g>
  );
}

function Mark(props: {
  readonly root: string;
  readonly shown: NumberedMark;
  readonly frame: MapFrame;
  readonly place: Place | null;
}): VNode | null {
  const { root, shown, place } = props;
  if (!place) return null;
  const { width, height } = props.frame.mark;
  const [x, y] = [place.x - width / 2, place.y - height / 2];
  const box = { x: x.toFixed(1), y: y.toFixed(1), width, height };
  const ink = shown.colour ? readableOn(shown.colour) : "ink";
  return (
    <a class="mark" href={root + shown.glaze.url} aria-label={markWords(shown)}>
      <rect class="glazed" {...box} fill={shown.colour ?? "none"} />
      {shown.surface.map((surface, i) => (
        <rect
          class="surface"
          x={(x + width / 2).toFixed(1)}
          y={(y + (i * height) / shown.surface.length).toFixed(1)}
          width={width / 2}
          height={(height / shown.surface.length).toFixed(1)}
          fill={hatchingOf(surface, ink)}
        />
      ))}
      {shown.surface.length === 0 && (
        <rect class="no-surface" {...box} x={(x + width / 2).toFixed(1)} width={width / 2} />
      )}
      <rect class={shown.isIncomplete ? "outline incomplete" : "outline"} {...box} />
      <text
        x={(x + width / 4).toFixed(1)}
        y={(place.y + 4.5).toFixed(1)}
        text-anchor="middle"
        {...(shown.colour && { fill: ink })}
      >
        {shown.number}
      </text>
    </a>
  );
}

type InkOf = "black" | "ink" | "white";

/** A gloss is bare; the rest is the closer hatched, the less it shines. */
const hatchings: Readonly<Record<Exclude<Surface, "gloss">, string>> = {
  satin: "M0 2H6M0 5H6",
  matte: "M-1 7L7 -1M-1 1L1 -1M5 7L7 5M-1 4L4 -1M2 7L7 2",
  dry: "M0 0L6 6M6 0L0 6M3 0L6 3M0 3L3 6M3 0L0 3M6 3L3 6",
};

function hatchingOf(surface: Surface, ink: InkOf): string {
  return surface === "gloss" ? "none" : `url(#${surface}-${ink})`;
}

function SurfaceHatchings(): VNode {
  return (
    <svg class="defs" width="0" height="0" aria-hidden="true">
      <defs>
        {Object.entries(hatchings).flatMap(([surface, d]) =>
          (["black", "ink", "white"] as const).map((ink) => (
            <pattern id={`${surface}-${ink}`} width="6" height="6" patternUnits="userSpaceOnUse">
              <path class="surface-line" d={d} {...(ink !== "ink" && { stroke: ink })} />
            </pattern>
          )),
        )}
      </defs>
    </svg>
  );
}
