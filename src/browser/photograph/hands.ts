/** Moves a photograph in its window by finger, mouse, wheel and keys. */
import { type Fit, panBy, wholePicture, type Zoom, zoomAt } from "./zoom.ts";

const step = 1.4;
const nudge = 80;

export class Hands {
  private zoom: Zoom = wholePicture;
  private readonly fingers = new Map<number, PointerEvent>();

  /**
   * @param moved told of every move, for photographs that move in step
   * @param isInPage for a photograph among other things: the wheel scrolls the page past it, and enlarges
   * only with Ctrl held
   */
  constructor(
    private readonly frame: HTMLElement,
    private readonly picture: HTMLImageElement,
    private readonly moved: (zoom: Zoom) => void = () => {},
    private readonly isInPage = false,
  ) {
    frame.addEventListener("wheel", (event) => this.turn(event), { passive: false });
    frame.addEventListener("pointerdown", (event) => this.touch(event));
    frame.addEventListener("pointermove", (event) => this.move(event));
    frame.addEventListener("pointerup", (event) => this.lift(event));
    frame.addEventListener("pointercancel", (event) => this.lift(event));
    frame.addEventListener("dblclick", (event) => {
      if (this.zoom.scale > 1) this.reset();
      else this.take(zoomAt(this.zoom, 3, this.place(event), this.fit()));
    });
  }

  get isEnlarged(): boolean {
    return this.zoom.scale > 1;
  }

  enlarge(): void {
    this.take(zoomAt(this.zoom, step, { x: 0, y: 0 }, this.fit()));
  }

  reduce(): void {
    this.take(zoomAt(this.zoom, 1 / step, { x: 0, y: 0 }, this.fit()));
  }

  reset(): void {
    this.take(wholePicture);
  }

  /** Moves the window over the photograph: 1 to the right or down, -1 to the left or up. */
  look(right: number, down: number): void {
    this.take(panBy(this.zoom, -right * nudge, -down * nudge, this.fit()));
  }

  private take(zoom: Zoom): void {
    this.follow(zoom);
    this.moved(zoom);
  }

  /** Lies as another photograph does. */
  follow(zoom: Zoom): void {
    this.zoom = zoom;
    this.picture.style.transform = `translate(${zoom.x}px, ${zoom.y}px) scale(${zoom.scale})`;
    this.frame.classList.toggle("enlarged", zoom.scale > 1);
  }

  private fit(): Fit {
    return {
      picture: { width: this.picture.offsetWidth, height: this.picture.offsetHeight },
      frame: { width: this.frame.clientWidth, height: this.frame.clientHeight },
    };
  }

  /** A point of the screen, measured from the middle of the window. */
  private place({ clientX, clientY }: { clientX: number; clientY: number }) {
    const { left, top, width, height } = this.frame.getBoundingClientRect();
    return { x: clientX - left - width / 2, y: clientY - top - height / 2 };
  }

  private turn(event: WheelEvent): void {
    if (this.isInPage && !event.ctrlKey) return;
    event.preventDefault();
    const factor = Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.002));
    this.take(zoomAt(this.zoom, factor, this.place(event), this.fit()));
  }

  private touch(event: PointerEvent): void {
    this.frame.setPointerCapture(event.pointerId);
    this.fingers.set(event.pointerId, event);
  }

  private lift(event: PointerEvent): void {
    this.fingers.delete(event.pointerId);
  }

  private move(event: PointerEvent): void {
    const before = this.fingers.get(event.pointerId);
    if (!before) return;
    const other = [...this.fingers.values()].find(({ pointerId }) => pointerId !== event.pointerId);
    this.fingers.set(event.pointerId, event);
    const [dx, dy] = [event.clientX - before.clientX, event.clientY - before.clientY];
    if (!other) {
      this.take(panBy(this.zoom, dx, dy, this.fit()));
      return;
    }
    const factor = distance(event, other) / Math.max(1, distance(before, other));
    const between = this.place({
      clientX: (event.clientX + other.clientX) / 2,
      clientY: (event.clientY + other.clientY) / 2,
    });
    const moved = panBy(this.zoom, dx / 2, dy / 2, this.fit());
    this.take(zoomAt(moved, factor, between, this.fit()));
  }
}

function distance(a: PointerEvent, b: PointerEvent): number {
  return Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
}
