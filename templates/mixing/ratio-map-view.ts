/** Where everything of a map is: the ratio across, the glass above it. A plain view, without markup. */
import { scaleLinear } from "d3-scale";
import { type RatioRegion, ratioLines } from "../../src/chemistry/stull.ts";
import { type Surface, surfaces } from "../../src/terms/choices.ts";
import { chooseScattered, type Place, placeBoxes } from "./place-marks.ts";

/** A drawing for a desk or for a phone, in its own units, which are pixels where it is shown. */
export interface MapFrame {
  readonly width: number;
  readonly plot: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
  readonly mark: { readonly width: number; readonly height: number };
  /** More marks than this leave no room to see where they belong; the others are points. */
  readonly mostMarks: number;
  /** About how many ticks an axis has. */
  readonly ticks: number;
}

export const wideMap: MapFrame = {
  width: 740,
  plot: { left: 52, top: 64, right: 730, bottom: 460 },
  mark: { width: 40, height: 20 },
  mostMarks: 60,
  ticks: 8,
};

export const narrowMap: MapFrame = {
  width: 358,
  plot: { left: 46, top: 64, right: 352, bottom: 430 },
  mark: { width: 36, height: 20 },
  mostMarks: 40,
  ticks: 5,
};

/** A glaze by its figures and by what came out. */
export interface MapPoint {
  /** Moles of silica for one of alumina. */
  readonly ratio: number;
  /** Moles of glass formers to one of flux. */
  readonly glass: number;
  readonly surface: readonly Surface[];
}

export interface Tick {
  readonly at: number;
  readonly words: string;
}

/** What a published line has on one of its sides, and where its name is written. */
export interface Zone {
  readonly region: RatioRegion;
  readonly x: number;
  readonly anchor: "start" | "middle" | "end";
  /** 1 where there is no room for the name beside its neighbours'. */
  readonly tier: 0 | 1;
}

/** From the least ratio to the greatest at which a surface was seen. */
export interface SeenRow {
  readonly surface: Surface;
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

export interface MapView {
  readonly frame: MapFrame;
  readonly height: number;
  readonly ratioTicks: readonly Tick[];
  readonly glassTicks: readonly Tick[];
  /** Where a mark belongs, and its middle; null where there is no room for it. */
  readonly marks: readonly { readonly point: Place; readonly place: Place | null }[];
  readonly boundaries: readonly number[];
  readonly zones: readonly Zone[];
  readonly rows: readonly SeenRow[];
}

export function ratioMapView(points: readonly MapPoint[], frame: MapFrame): MapView {
  const { plot, ticks } = frame;
  const x = scaleLinear(ratiosShown(points), [plot.left, plot.right]);
  const y = scaleLinear(glassShown(points), [plot.bottom, plot.top]).nice();
  const rows = seenRows(points, x, plot.bottom);
  return {
    frame,
    height: plot.bottom + rowsBelow + rows.length * rowHeight + 4,
    ratioTicks: x.ticks(ticks).map((value) => ({ at: x(value), words: String(value) })),
    glassTicks: y.ticks(ticks).map((value) => ({ at: y(value), words: String(value) })),
    marks: placeMarks(
      points.map(({ ratio, glass }) => ({ x: x(ratio), y: y(glass) })),
      frame,
    ),
    boundaries: ratioLines.map(({ silicaToAlumina }) => x(silicaToAlumina)),
    zones: nameZones(x, frame),
    rows,
  };
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

/** Every published line is in view, whatever the glazes are. */
function ratiosShown(points: readonly MapPoint[]): [number, number] {
  const ratios = [...points.map(({ ratio }) => ratio), 4.6, 7];
  return [Math.min(...ratios) - 0.3, Math.max(...ratios) + 0.4];
}

/** From the least to the most with some room around, and never less than one. */
function glassShown(points: readonly MapPoint[]): [number, number] {
  const amounts = points.map(({ glass }) => glass);
  const [low, high] = [Math.min(...amounts), Math.max(...amounts)];
  const half = Math.max((high - low) * 0.6, 0.5);
  const middle = (low + high) / 2;
  return [Math.max(0, middle - half), middle + half];
}

/** Below the axis: its ticks and its name. */
const rowsBelow = 52;
const rowHeight = 20;

function seenRows(points: readonly MapPoint[], x: Scale, bottom: number): readonly SeenRow[] {
  const shiny: readonly Surface[] = ["gloss", "satin", "matte", "dry"];
  return [...surfaces]
    .sort((a, b) => shiny.indexOf(a) - shiny.indexOf(b))
    .flatMap((surface) => {
      const seen = points.filter((point) => point.surface.includes(surface));
      if (seen.length === 0) return [];
      const ratios = seen.map(({ ratio }) => x(ratio));
      return [{ surface, from: Math.min(...ratios), to: Math.max(...ratios) }];
    })
    .map((row, i) => ({ ...row, y: bottom + rowsBelow + i * rowHeight }));
}

function placeMarks(
  points: readonly Place[],
  { plot, mark, mostMarks }: MapFrame,
): MapView["marks"] {
  const chosen = chooseScattered(points, mostMarks);
  const inPlot = chosen.map((i) => {
    const { x = 0, y = 0 } = points[i] ?? {};
    return { x: x - plot.left, y: y - plot.top };
  });
  const room = { width: plot.right - plot.left, height: plot.bottom - plot.top };
  const box = { width: mark.width + 2, height: mark.height + 2 };
  const places = placeBoxes(inPlot, box, room);
  const placeOf = new Map(chosen.map((point, i) => [point, places[i]]));
  return points.map((point, i) => {
    const place = placeOf.get(i);
    return { point, place: place ? { x: place.x + plot.left, y: place.y + plot.top } : null };
  });
}

const regionLetters: Readonly<Record<RatioRegion, number>> = {
  matte: 5,
  "semi-matte": 10,
  bright: 5,
};
const letterWidth = 7.5;

/** Names above the plot: a narrow zone's is a line lower, so that it runs into no other. */
function nameZones(x: Scale, { plot }: MapFrame): readonly Zone[] {
  const [first, second] = ratioLines;
  if (!first || !second) return [];
  const [low, high] = [x(first.silicaToAlumina), x(second.silicaToAlumina)];
  const middle = first.between[1];
  const isTight = high - low < regionLetters[middle] * letterWidth + 16;
  const left = first.between[0];
  const isSlim = low - plot.left < regionLetters[left] * letterWidth + 8;
  return [
    {
      region: left,
      x: isSlim ? low - 6 : (plot.left + low) / 2,
      anchor: isSlim ? "end" : "middle",
      tier: 0,
    },
    { region: middle, x: (low + high) / 2, anchor: "middle", tier: isTight ? 1 : 0 },
    { region: second.between[1], x: high + 6, anchor: "start", tier: 0 },
  ];
}
