/** The map of one cone: photographs where their glazes stand by silica and alumina. */
import type { VNode } from "preact";
import type { MapMark } from "../../src/catalogue/mixing/maps.ts";
import { ratioLines } from "../../src/chemistry/stull.ts";
import type { TileEntry } from "../parts/entry.ts";
import { listed, spoken } from "../words/english/numbers.ts";
import { formatMoles } from "../words/mixing/chemistry.ts";
import { regionWords } from "../words/mixing/second-opinion.ts";
import { Axes, asGroup, unread } from "./axes.tsx";
import { type Crowd, type MapView, mapFrame, mapView, mark, type PlacedMark } from "./map-view.ts";
import type { Place } from "./place-marks.ts";

/** A mark with what a page knows of it besides. */
export interface ShownMark extends MapMark {
  /** The tile whose photograph stands for it, and a small file of that. */
  readonly tile: TileEntry | null;
  /** The address of its photograph. */
  readonly picture: string | null;
  /** What may never be left out, such as `⚠ holds lead`. */
  readonly loud: string | null;
}

export interface GlazeMapProps {
  readonly root: string;
  readonly marks: readonly ShownMark[];
}

export function GlazeMap({ root, marks }: GlazeMapProps): VNode {
  const view = mapView(marks, ratioLines);
  return (
    <svg
      {...asGroup}
      class="glaze-map"
      viewBox={`0 0 ${mapFrame.width} ${mapFrame.height}`}
      aria-label="Glazes by silica across and alumina up; the table below holds the same figures"
    >
      <Axes plotted={view} />
      <OldLines view={view} />
      {[...view.marks, ...view.crowds].map((placed) => (
        <Leader placed={placed} />
      ))}
      <Points view={view} />
      {marks.map((shown, i) => (
        <Mark root={root} shown={shown} placed={view.marks[i]} />
      ))}
      {view.crowds.map((crowd, i) => (
        <CrowdMark root={root} crowd={crowd} marks={marks} letter={letterOf(i)} />
      ))}
    </svg>
  );
}

/** Along each line, what lies on its far side as texts have it. */
function OldLines({ view: { lines } }: { readonly view: MapView }): VNode {
  return (
    <g class="old-lines" {...unread}>
      {lines.map(({ from, to, line }, i) => {
        const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
        const along = `translate(${at(to)}) rotate(${degrees.toFixed(1)})`;
        const [above, below] = line.between;
        return (
          <>
            <path d={`M${at(from)}L${at(to)}`} />
            <text transform={along} x="-12" y={i === 0 ? -8 : 20} text-anchor="end">
              {line.silicaToAlumina} to 1,{" "}
              {i === 0 ? `${regionWords[above]} above` : `${regionWords[below]} below`}
            </text>
          </>
        );
      })}
    </g>
  );
}

function at({ x, y }: Place): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

/** From a photograph that had to move to the point it stands for. */
function Leader({ placed: { point, place } }: { readonly placed: PlacedMark }): VNode | null {
  if (!place) return null;
  const half = mark.photograph / 2;
  const isAtHome = Math.abs(place.x - point.x) < half && Math.abs(place.y - point.y) < half;
  return isAtHome ? null : <path class="leader" d={`M${at(point)}L${at(place)}`} />;
}

/** Where there is no room for a photograph: points in one path, their names in the table. */
function Points({ view }: { readonly view: MapView }): VNode | null {
  const inACrowd = new Set(view.crowds.flatMap(({ members }) => members));
  const bare = view.marks.filter(({ place }, i) => !place && !inACrowd.has(i));
  if (bare.length === 0) return null;
  return <path class="points" d={bare.map(({ point }) => `M${at(point)}h0`).join("")} />;
}

function Mark(props: {
  readonly root: string;
  readonly shown: ShownMark;
  readonly placed: PlacedMark | undefined;
}): VNode | null {
  const { root, shown, placed } = props;
  if (!placed?.place) return null;
  const { point, place } = placed;
  return (
    <a
      class={shown.disagrees ? "mark disagrees" : "mark"}
      href={root + shown.glaze.url}
      aria-label={markWords(shown)}
    >
      <circle class="point" cx={point.x.toFixed(1)} cy={point.y.toFixed(1)} r="4" />
      <Picture root={root} shown={shown} place={place} />
    </a>
  );
}

/** The name of a crowd, in the drawing and below it. */
export function letterOf(place: number): string {
  return String.fromCodePoint(65 + place);
}

/** Four of its photographs as one mark; all of them stand below the map. */
function CrowdMark(props: {
  readonly root: string;
  readonly crowd: Crowd;
  readonly marks: readonly ShownMark[];
  readonly letter: string;
}): VNode {
  const { root, crowd, marks, letter } = props;
  const { point, place, members } = crowd;
  const pictures = members.flatMap((i) => marks[i]?.picture ?? []).slice(0, 4);
  const half = mark.photograph / 2;
  const words = `${letter}: ${members.length} glazes in one place`;
  const isDoubtful = members.some((i) => marks[i]?.disagrees);
  return (
    <a class={isDoubtful ? "mark disagrees" : "mark"} href={`#crowd-${letter}`} aria-label={words}>
      <circle class="point" cx={point.x.toFixed(1)} cy={point.y.toFixed(1)} r="4" />
      {pictures.map((url, i) => (
        <image
          x={(place.x - half + (i % 2) * half).toFixed(1)}
          y={(place.y - half + Math.floor(i / 2) * half).toFixed(1)}
          width={half}
          height={half}
          href={root + url}
          preserveAspectRatio="xMidYMid slice"
        />
      ))}
      <rect
        class="frame"
        x={(place.x - half).toFixed(1)}
        y={(place.y - half).toFixed(1)}
        width={mark.photograph}
        height={mark.photograph}
      />
      <text
        class="name"
        x={place.x.toFixed(1)}
        y={(place.y + half + 15).toFixed(1)}
        text-anchor="middle"
      >
        {letter}
      </text>
      <text
        class="surface"
        x={place.x.toFixed(1)}
        y={(place.y + half + 30).toFixed(1)}
        text-anchor="middle"
      >
        {members.length} glazes
      </text>
    </a>
  );
}

/** `Eider: silica 2.23, alumina 0.347; matte and satin`. */
function markWords({ glaze, silica, alumina, surface, loud }: ShownMark): string {
  const figures = `silica ${formatMoles(silica)}, alumina ${formatMoles(alumina)}`;
  return [`${glaze.name}: ${figures}`, listed(surface.map(spoken)), loud]
    .filter(Boolean)
    .join("; ");
}

function Picture(props: {
  readonly root: string;
  readonly shown: ShownMark;
  readonly place: Place;
}): VNode {
  const { root, shown, place } = props;
  const size = mark.photograph;
  const box = {
    x: (place.x - size / 2).toFixed(1),
    y: (place.y - size / 2).toFixed(1),
    width: size,
    height: size,
  };
  const below = place.y + size / 2;
  const lines = [...wrap(shown.glaze.name), listed(shown.surface.map(spoken))];
  return (
    <>
      <rect class="ground" {...box} />
      {shown.picture && (
        <image {...box} href={root + shown.picture} preserveAspectRatio="xMidYMid slice" />
      )}
      <rect class="frame" {...box} />
      {lines.map((words, i) => (
        <text
          class={i === lines.length - 1 ? "surface" : "name"}
          x={place.x.toFixed(1)}
          y={(below + 15 + i * 15).toFixed(1)}
          text-anchor="middle"
        >
          {i === 0 && shown.loud ? `⚠\uFE0E ${words}` : words}
        </text>
      ))}
    </>
  );
}

const longestLine = 17;

/** A name on at most two lines, the second cut where it would run into a neighbour. */
function wrap(name: string): readonly string[] {
  if (name.length <= longestLine) return [name];
  const space = name.lastIndexOf(" ", longestLine);
  const cut = space > 0 ? space : longestLine;
  const rest = name.slice(cut).trim();
  return [
    name.slice(0, cut),
    rest.length > longestLine ? `${rest.slice(0, longestLine - 1)}…` : rest,
  ];
}
