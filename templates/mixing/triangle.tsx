/** A triaxial blend as a triangle of photographs, each where its shares put it. */
import type { VNode } from "preact";
import { asGroup } from "./axes.tsx";

/** A place in the triangle: a blend or a corner. */
export interface TrianglePlace {
  /** Of the three corners: the first at the top, the second left, the third right. */
  readonly shares: readonly number[];
  readonly code: string | null;
  readonly url: string;
  /** What is read aloud: the glaze's name and shares. */
  readonly words: string;
  /** Its address. */
  readonly picture: string | null;
}

/** In the drawing's own units: the edge of a photograph, and the way from one to its neighbour. */
const [photograph, across, down] = [88, 100, 122];

export function Triangle({
  root,
  places,
}: {
  readonly root: string;
  readonly places: readonly TrianglePlace[];
}): VNode {
  const steps = stepsOf(places);
  const [width, height] = [(steps + 1) * across, (steps + 1) * down];
  return (
    <svg
      {...asGroup}
      class={steps > 5 ? "triangle wide" : "triangle"}
      viewBox={`0 0 ${width} ${height}`}
      aria-label="The blends as a triangle"
    >
      {places.map((place) => {
        const [top = 0, , right = 0] = place.shares;
        const row = (1 - top) * steps;
        const x = width / 2 + (right * steps - row / 2) * across - photograph / 2;
        return <Corner root={root} place={place} x={x} y={row * down} />;
      })}
    </svg>
  );
}

/** How many steps lie along an edge: as many as the finest share has room for. */
function stepsOf(places: readonly TrianglePlace[]): number {
  const shares = places.flatMap((place) => place.shares).filter((share) => share > 0.01);
  const least = Math.min(1, ...shares);
  return Math.min(20, Math.max(2, Math.round(1 / least)));
}

function Corner(props: {
  readonly root: string;
  readonly place: TrianglePlace;
  readonly x: number;
  readonly y: number;
}): VNode {
  const { root, place, x, y } = props;
  const box = { x: x.toFixed(1), y: y.toFixed(1), width: photograph, height: photograph };
  return (
    <a href={root + place.url} aria-label={place.words}>
      <rect class="ground" {...box} />
      {place.picture && (
        <image {...box} href={root + place.picture} preserveAspectRatio="xMidYMid slice" />
      )}
      <rect class="frame" {...box} />
      <text
        class="code"
        x={(x + photograph / 2).toFixed(1)}
        y={(y + photograph + 20).toFixed(1)}
        text-anchor="middle"
      >
        {place.code ?? "no tile"}
      </text>
    </a>
  );
}
