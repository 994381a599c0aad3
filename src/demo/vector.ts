/** A point, direction or colour. */
export type Vec3 = readonly [number, number, number];

export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** a + b·scale */
export function addScaled(a: Vec3, b: Vec3, scale: number): Vec3 {
  return [a[0] + b[0] * scale, a[1] + b[1] * scale, a[2] + b[2] * scale];
}

export function normalize(a: Vec3): Vec3 {
  const length = Math.hypot(a[0], a[1], a[2]) || 1;
  return [a[0] / length, a[1] / length, a[2] / length];
}

/** The direction `zenith` degrees from straight up, towards `azimuth` degrees (0 is the viewer's right, 90 away from the viewer). */
export function skyDirection(azimuth: number, zenith: number): Vec3 {
  const a = (azimuth * Math.PI) / 180;
  const z = (zenith * Math.PI) / 180;
  return [Math.cos(a) * Math.sin(z), Math.sin(a) * Math.sin(z), Math.cos(z)];
}
