/** One material at a time, large: what the scale must read, and the bucket as it is then. */
import type { ScaleReading } from "../../chemistry/scale-readings.ts";
import { element } from "../parts/element.ts";

/** A material as its row of the sheet has it. */
export interface Material {
  readonly name: string;
  readonly isAddition: boolean;
  /** The bucket once it is in. */
  readonly drawing: SVGElement | null;
}

export interface OneAtATime {
  readonly node: HTMLElement;
  /** Shows a place: how many materials are in, of how many; undefined readings are no batch. */
  readonly show: (at: number, readings: readonly ScaleReading[] | undefined) => void;
}

/** @param go asked for another place */
export function makeOneAtATime(
  materials: readonly Material[],
  go: (at: number) => void,
): OneAtATime {
  let at = 0;
  const move = (to: number) => go(Math.min(materials.length, Math.max(0, to)));
  const bucket = element("div", { class: "pail-now" });
  const told = element("div", { class: "now-told", "aria-live": "polite" });
  const back = element("button", { type: "button" }, "Back");
  const next = element("button", { type: "button", class: "next-material" });
  const again = element("button", { type: "button", class: "plain" }, "Start again");
  const node = element(
    "div",
    { class: "at-the-scale", role: "group", "aria-label": "At the scale" },
    told,
    bucket,
    element("p", { class: "scale-steps" }, back, next),
    element("p", {}, again),
  );
  back.addEventListener("click", () => move(at - 1));
  next.addEventListener("click", () => move(at + 1));
  again.addEventListener("click", () => move(0));
  node.addEventListener("keydown", ({ key }) => {
    if (key === "ArrowRight") move(at + 1);
    if (key === "ArrowLeft") move(at - 1);
  });
  return {
    node,
    show: (to, readings) => {
      at = to;
      node.hidden = readings === undefined;
      if (readings === undefined) return;
      const isDone = at === materials.length;
      told.replaceChildren(...tellNow(materials, readings, at));
      const drawing = materials[Math.min(at, materials.length - 1)]?.drawing?.cloneNode(true);
      bucket.replaceChildren(...(drawing ? [drawing] : []));
      back.disabled = at === 0;
      again.hidden = at === 0;
      next.disabled = isDone;
      next.textContent = isDone ? "All in" : `It reads ${readings[at]?.reading ?? ""}: next`;
    },
  };
}

function tellNow(
  materials: readonly Material[],
  readings: readonly ScaleReading[],
  at: number,
): readonly HTMLElement[] {
  const [material, reading] = [materials[at], readings[at]];
  if (!material || !reading)
    return [
      element("p", { class: "scale-reading" }, readings.at(-1)?.reading ?? ""),
      element("p", { class: "now-name" }, "Everything is in"),
      element("p", { class: "adds" }, "Write the glaze and the date on the bucket."),
    ];
  const count = `${at + 1} of ${materials.length}`;
  const kind = material.isAddition ? ", addition" : "";
  return [
    element(
      "p",
      { class: "scale-reading" },
      reading.reading,
      element("span", { class: "unit" }, " g"),
    ),
    element("p", { class: "now-name" }, material.name),
    element("p", { class: "adds" }, `+ ${reading.amount} g · ${count}${kind}`),
  ];
}
