/**
 * How a photograph lies in its window: enlarged `scale` times, its middle moved by `x` and `y`
 * pixels from the window's middle. Every move keeps the photograph from leaving the window.
 */
export interface Zoom {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The photograph as it fits into its window, and the window. */
export interface Fit {
  readonly picture: Size;
  readonly frame: Size;
}

export const wholePicture: Zoom = { scale: 1, x: 0, y: 0 };

export const closest = 8;

/** Enlarges by a factor while a point of the window, measured from its middle, stays where it is. */
export function zoomAt(zoom: Zoom, factor: number, at: { x: number; y: number }, fit: Fit): Zoom {
  const scale = Math.min(closest, Math.max(1, zoom.scale * factor));
  const ratio = scale / zoom.scale;
  return keepInside(
    { scale, x: at.x - (at.x - zoom.x) * ratio, y: at.y - (at.y - zoom.y) * ratio },
    fit,
  );
}

export function panBy(zoom: Zoom, dx: number, dy: number, fit: Fit): Zoom {
  return keepInside({ ...zoom, x: zoom.x + dx, y: zoom.y + dy }, fit);
}

function keepInside({ scale, x, y }: Zoom, { picture, frame }: Fit): Zoom {
  const spareX = Math.max(0, (picture.width * scale - frame.width) / 2);
  const spareY = Math.max(0, (picture.height * scale - frame.height) / 2);
  return { scale, x: clamp(x, spareX), y: clamp(y, spareY) };
}

function clamp(value: number, limit: number): number {
  return Math.min(limit, Math.max(-limit, value));
}
