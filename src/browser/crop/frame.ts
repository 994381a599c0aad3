/** A frame over the photograph: dragged by mouse and finger, moved and resized by keys. */
import type { Edges } from "../../copystand/types.ts";
import { element } from "../parts/element.ts";
import { type Corner, dragCorner, moveBy, roundTo } from "./edges.ts";

export interface FrameOptions {
  /** What lies in it, in words. */
  readonly label: string;
  readonly kind: "crop" | "grey";
  /** How far a key moves it, and what dragging is rounded to, in per cent. */
  readonly step: number;
  readonly changed: (edges: Edges) => void;
}

const corners: readonly Corner[] = [
  { x: "left", y: "top" },
  { x: "right", y: "top" },
  { x: "left", y: "bottom" },
  { x: "right", y: "bottom" },
];

const arrows: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export class Frame {
  readonly element: HTMLElement;
  private edges: Edges = [25, 25, 75, 75];

  /** @param stage the box that the photograph fills */
  constructor(
    private readonly stage: HTMLElement,
    private readonly options: FrameOptions,
  ) {
    const { kind, label } = options;
    this.element = element(
      "div",
      { class: `frame ${kind}`, role: "application", tabindex: "0", "aria-describedby": "keys" },
      element("span", { class: "frame-label", "aria-hidden": "true" }, label),
    );
    this.element.setAttribute("aria-roledescription", "frame");
    for (const corner of corners) this.element.append(this.makeCorner(corner));
    this.element.addEventListener("pointerdown", (event) => this.drag(event, moveBy));
    this.element.addEventListener("keydown", (event) => this.press(event));
    stage.append(this.element);
  }

  /** Lays the frame; null takes it away. */
  lay(edges: Edges | null): void {
    this.element.hidden = edges === null;
    if (edges === null) return;
    this.edges = edges;
    const [left, top, right, bottom] = edges;
    Object.assign(this.element.style, {
      left: `${left}%`,
      top: `${top}%`,
      width: `${right - left}%`,
      height: `${bottom - top}%`,
    });
    this.element.classList.toggle("high", top < 8);
    this.element.setAttribute(
      "aria-label",
      `${this.options.label}: ${left} to ${right} per cent across, ${top} to ${bottom} per cent down`,
    );
  }

  private makeCorner(corner: Corner): HTMLElement {
    const made = element("span", { class: `corner ${corner.x} ${corner.y}` });
    made.addEventListener("pointerdown", (event) => {
      event.stopPropagation();
      this.drag(event, (edges, across, down) => dragCorner(edges, corner, across, down));
    });
    return made;
  }

  /** Follows a pointer from where it went down until it is lifted. */
  private drag(
    down: PointerEvent,
    change: (edges: Edges, across: number, down: number) => Edges,
  ): void {
    if (down.button !== 0) return;
    down.preventDefault();
    this.element.focus();
    const begun = this.edges;
    const { width, height } = this.stage.getBoundingClientRect();
    const grip = down.currentTarget as HTMLElement;
    const follow = (event: PointerEvent) => {
      if (event.pointerId !== down.pointerId) return;
      const across = ((event.clientX - down.clientX) / width) * 100;
      const deep = ((event.clientY - down.clientY) / height) * 100;
      this.take(roundTo(this.options.step, change(begun, across, deep)));
    };
    const stop = () => {
      grip.removeEventListener("pointermove", follow);
      grip.removeEventListener("pointerup", stop);
      grip.removeEventListener("pointercancel", stop);
    };
    grip.setPointerCapture(down.pointerId);
    grip.addEventListener("pointermove", follow);
    grip.addEventListener("pointerup", stop);
    grip.addEventListener("pointercancel", stop);
  }

  private press(event: KeyboardEvent): void {
    const [across, down] = arrows[event.key] ?? [0, 0];
    if ((across === 0 && down === 0) || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const { step } = this.options;
    const [x, y] = [across * step, down * step];
    const changed = event.shiftKey
      ? dragCorner(this.edges, { x: "right", y: "bottom" }, x, y)
      : moveBy(this.edges, x, y);
    this.take(roundTo(0.1, changed));
  }

  private take(edges: Edges): void {
    this.lay(edges);
    this.options.changed(edges);
  }
}
