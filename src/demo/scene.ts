import type { Form } from "./forms.ts";
import { type Grid, makeGrid } from "./grid.ts";
import type { ViewAxes } from "./horizon-light.ts";
import { between, makeChance } from "./random.ts";
import type { StudioHand } from "./studio-hand.ts";
import type { PicturePart, TilePlan } from "./tile-plan.ts";
import { addScaled, cross, dot, normalize, type Vec3 } from "./vector.ts";

/** What a point of the picture shows. */
export const GROUND = 0;
export const TILE = 1;
export const CARD = 2;
export const LABEL = 3;

/** What the camera sees at each point of the picture, before any light. */
export interface View {
  readonly width: number;
  readonly height: number;
  /** Millimetres of a picture point at the piece. */
  readonly pixel: number;
  readonly axes: ViewAxes;
  readonly eye: Vec3;
  readonly what: Uint8Array;
  /** Height towards the camera, in millimetres. */
  readonly depth: Grid;
  /** World normal. */
  readonly normal: readonly [Grid, Grid, Grid];
  /** Chart place on the piece; place on the ground, card or label otherwise; in millimetres. */
  readonly place: readonly [Grid, Grid];
  /** Directions in which the chart runs over the piece (unit, in the skin), world frame. */
  readonly tangent: readonly [Grid, Grid, Grid];
}

interface Flatling {
  readonly what: number;
  readonly centre: readonly [number, number];
  readonly half: readonly [number, number];
  readonly thickness: number;
  readonly turn: number;
}

interface Stand {
  readonly form: Form;
  readonly turn: number;
  readonly flatlings: readonly Flatling[];
}

/** Where the grey card lies in a picture whose record does not place it. */
export const CARD_IN_PICTURE: PicturePart = { left: 6, top: 90, right: 15, bottom: 95.5 };

/** The white border of the card, as a share of its grey part's size. */
export const CARD_BORDER = 1.24;

/** Half the label's width and height, in millimetres. */
export const LABEL_HALF = [12, 3.4] as const;

/** Looks at the piece, its grey card and its label on the ground with a hand's camera. */
export function viewScene(
  form: Form,
  hand: StudioHand,
  plan: Pick<TilePlan, "code" | "card">,
  width: number,
): View {
  const height = Math.round((width * 4) / 3);
  const chance = makeChance(`stand ${plan.code}`);
  const tilt = form.stands ? 59 + (hand.cameraTilt - 12) * 0.7 : hand.cameraTilt;
  const camera = placeCamera(form, hand, tilt, width, height, chance);
  const stand: Stand = {
    form,
    turn: (between(chance, -2.2, 2.2) * Math.PI) / 180,
    flatlings: layFlatlings(camera, plan.card ?? CARD_IN_PICTURE, chance),
  };
  const view = emptyView(width, height, camera);
  // Of a pot the far wall is seen beside the near rim, so that nothing is known from the point beside.
  const hollow = form.stands && !form.plane;
  for (let row = 0; row < height; row++) {
    let nearby: number | undefined;
    for (let column = 0; column < width; column++) {
      const along = tracePoint(view, stand, camera, column, row, nearby);
      nearby = hollow ? undefined : along;
    }
  }
  return view;
}

interface Camera {
  readonly axes: ViewAxes;
  readonly eye: Vec3;
  readonly pixel: number;
  readonly distance: number;
  readonly middle: readonly [number, number];
}

function placeCamera(
  form: Form,
  hand: StudioHand,
  tilt: number,
  width: number,
  height: number,
  chance: () => number,
): Camera {
  const radians = (tilt * Math.PI) / 180;
  const toCamera: Vec3 = [0, -Math.sin(radians), Math.cos(radians)];
  const right: Vec3 = [1, 0, 0];
  const up = cross(toCamera, right);
  const pixel = form.frame / width;
  const target: Vec3 = addScaled(form.centre, up, form.stands ? -6.2 : -5.5);
  const shifted = addScaled(target, right, between(chance, -0.8, 0.8));
  return {
    axes: { right, up, toCamera },
    eye: addScaled(shifted, toCamera, hand.cameraDistance),
    pixel,
    distance: hand.cameraDistance,
    middle: [width / 2, height / 2],
  };
}

function rayThrough(camera: Camera, column: number, row: number): Vec3 {
  const x = (column + 0.5 - camera.middle[0]) * camera.pixel;
  const y = (camera.middle[1] - row - 0.5) * camera.pixel;
  const { right, up, toCamera } = camera.axes;
  return normalize(
    addScaled(addScaled(addScaled([0, 0, 0], right, x), up, y), toCamera, -camera.distance),
  );
}

/** The card and the label, laid where the picture wants them on the ground. */
function layFlatlings(camera: Camera, card: PicturePart, chance: () => number): Flatling[] {
  const groundAt = (across: number, down: number): readonly [number, number] => {
    const ray = rayThrough(camera, across * 2 * camera.middle[0], down * 2 * camera.middle[1]);
    const p = addScaled(camera.eye, ray, -camera.eye[2] / ray[2]);
    return [p[0], p[1]];
  };
  const { left, top, right, bottom } = card;
  const middle = groundAt((left + right) / 200, (top + bottom) / 200);
  const low = groundAt(left / 100, bottom / 100);
  const half = [(middle[0] - low[0]) * CARD_BORDER, (middle[1] - low[1]) * CARD_BORDER] as const;
  const label = groundAt(between(chance, 0.77, 0.79), between(chance, 0.925, 0.932));
  return [
    { what: CARD, centre: middle, half, thickness: 0.5, turn: between(chance, -0.015, 0.015) },
    {
      what: LABEL,
      centre: label,
      half: [LABEL_HALF[0], LABEL_HALF[1] / camera.axes.toCamera[2]],
      thickness: 0.22,
      turn: between(chance, -0.04, 0.04),
    },
  ];
}

function emptyView(width: number, height: number, camera: Camera): View {
  const grid = () => makeGrid(width, height);
  return {
    width,
    height,
    pixel: camera.pixel,
    axes: camera.axes,
    eye: camera.eye,
    what: new Uint8Array(width * height),
    depth: grid(),
    normal: [grid(), grid(), grid()],
    place: [grid(), grid()],
    tangent: [grid(), grid(), grid()],
  };
}

/**
 * Sees what lies at a point of the picture.
 *
 * @param nearby how far away the point beside it lies on the piece, if it does
 * @returns how far away this one lies on the piece, if it does
 */
function tracePoint(
  view: View,
  stand: Stand,
  camera: Camera,
  column: number,
  row: number,
  nearby: number | undefined,
): number | undefined {
  const at = row * view.width + column;
  const ray = rayThrough(camera, column, row);
  const along = hitPiece(stand, camera.eye, ray, nearby);
  if (along !== undefined) {
    const [x, y, z] = addScaled(camera.eye, ray, along);
    const [px, py] = turned(x, y, stand.turn);
    recordPiece(view, stand, at, [px, py, z]);
    return along;
  }
  for (const thing of stand.flatlings) {
    const p = addScaled(camera.eye, ray, (thing.thickness - camera.eye[2]) / ray[2]);
    const [x, y] = turned(p[0] - thing.centre[0], p[1] - thing.centre[1], thing.turn);
    if (Math.abs(x) > thing.half[0] || Math.abs(y) > thing.half[1]) continue;
    recordLevel(view, at, thing.what, p, x / thing.half[0], y / thing.half[1]);
    return undefined;
  }
  const p = addScaled(camera.eye, ray, -camera.eye[2] / ray[2]);
  recordLevel(view, at, GROUND, p, p[0], p[1]);
  return undefined;
}

function turned(x: number, y: number, angle: number): readonly [number, number] {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return [x * c + y * s, y * c - x * s];
}

/** Millimetres before what lies nearby, from where a ray is followed if nothing is close there. */
const BEFORE = 3;

/** How far along a ray the piece lies. */
function hitPiece(
  stand: Stand,
  eye: Vec3,
  ray: Vec3,
  nearby: number | undefined,
): number | undefined {
  const { form, turn } = stand;
  const [ex, ey] = turned(eye[0], eye[1], turn);
  const [rx, ry] = turned(ray[0], ray[1], turn);
  const reach = form.reach;
  let near = (reach[2] - eye[2]) / ray[2];
  let far = (-0.05 - eye[2]) / ray[2];
  for (const [from, along, half] of [
    [ex, rx, reach[0]],
    [ey, ry, reach[1]],
  ] as const) {
    const a = (-half - from) / along;
    const b = (half - from) / along;
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  const distanceAt = (t: number) => form.distance(ex + rx * t, ey + ry * t, eye[2] + ray[2] * t);
  let along = near;
  if (nearby !== undefined && nearby - BEFORE > near && distanceAt(nearby - BEFORE) > BEFORE / 4)
    along = nearby - BEFORE;
  for (let step = 0; step < 90 && along < far; step++) {
    const distance = distanceAt(along);
    if (distance < 0.012) return along;
    along += distance * 0.96;
  }
  return undefined;
}

function recordPiece(view: View, stand: Stand, at: number, p: Vec3): void {
  const { form, turn } = stand;
  const normal = solidNormal(form, p);
  const [u, v] = form.chartPlace(p, normal);
  const axis = form.chartAxes(p, normal)[0];
  const tangent = normalize(addScaled(axis, normal, -dot(axis, normal)));
  const [wx, wy] = turned(p[0], p[1], -turn);
  const [nx, ny] = turned(normal[0], normal[1], -turn);
  const [tx, ty] = turned(tangent[0], tangent[1], -turn);
  view.what[at] = TILE;
  view.depth.data[at] = dot([wx, wy, p[2]], view.axes.toCamera);
  setVector(view.normal, at, nx, ny, normal[2]);
  setVector(view.tangent, at, tx, ty, tangent[2]);
  view.place[0].data[at] = u;
  view.place[1].data[at] = v;
}

function solidNormal(form: Form, p: Vec3): Vec3 {
  const e = 0.03;
  const [x, y, z] = p;
  const a = form.distance(x + e, y - e, z - e);
  const b = form.distance(x - e, y - e, z + e);
  const c = form.distance(x - e, y + e, z - e);
  const d = form.distance(x + e, y + e, z + e);
  return normalize([a - b - c + d, -a - b + c + d, -a + b - c + d]);
}

function recordLevel(view: View, at: number, what: number, p: Vec3, u: number, v: number): void {
  view.what[at] = what;
  view.depth.data[at] = dot(p, view.axes.toCamera);
  setVector(view.normal, at, 0, 0, 1);
  view.place[0].data[at] = u;
  view.place[1].data[at] = v;
}

function setVector(
  planes: readonly [Grid, Grid, Grid],
  at: number,
  x: number,
  y: number,
  z: number,
) {
  planes[0].data[at] = x;
  planes[1].data[at] = y;
  planes[2].data[at] = z;
}
