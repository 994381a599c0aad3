/** The firing curves of several tiles over each other, each told by its own kind of line. */
import type { Subject, SubjectCurve } from "../../publish/beside-file.ts";
import { element } from "../parts/element.ts";

const svg = "http://www.w3.org/2000/svg";
const [width, height] = [1000, 300];

/** A curve, and the tiles that had it. */
interface Shared {
  readonly curve: SubjectCurve;
  readonly ids: readonly string[];
}

/** Tiles of one load have one curve. */
export function shareCurves(
  subjects: readonly Pick<Subject, "curves" | "id">[],
): readonly Shared[] {
  const found = new Map<string, Shared>();
  for (const { id, curves } of subjects)
    for (const curve of curves) {
      const known = found.get(curve.firing);
      found.set(curve.firing, { curve, ids: [...(known?.ids ?? []), id] });
    }
  return [...found.values()];
}

/** The drawing, and a list that says which line is whose. */
export function drawCurves(shared: readonly Shared[], root: string): HTMLElement {
  const all = shared.flatMap(({ curve }) => curve.points);
  const longest = Math.max(1, ...all.map(([minutes]) => minutes));
  const hottest = Math.max(1, ...all.map(([, celsius]) => celsius));
  const drawing = make("svg", {
    viewBox: `0 0 ${width} ${height}`,
    preserveAspectRatio: "none",
    "aria-hidden": "true",
    class: "curves",
  });
  drawing.append(make("path", { class: "base", d: `M0 ${height}H${width}` }));
  for (const [i, { curve }] of shared.entries()) {
    const d = curve.points.map(([minutes, celsius], n) => {
      const x = (minutes / longest) * width;
      const y = height - (celsius / hottest) * (height - 8);
      return `${n === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`;
    });
    drawing.append(make("path", { class: `curve line-${i % 4}`, d: d.join("") }));
  }
  const key = shared.map(({ curve, ids }, i) => keyLine(curve, ids, i, root));
  return element("figure", { class: "beside-curves" }, drawing, element("ul", {}, ...key));
}

function keyLine(
  curve: SubjectCurve,
  ids: readonly string[],
  i: number,
  root: string,
): HTMLElement {
  const sample = make("svg", { viewBox: "0 0 48 8", class: "sample", "aria-hidden": "true" });
  sample.append(make("path", { class: `curve line-${i % 4}`, d: "M0 4H48" }));
  const peak = Math.max(...curve.points.map(([, celsius]) => celsius));
  const hours = Math.round((curve.points.at(-1)?.[0] ?? 0) / 60);
  const isUntimed = curve.points.some(([, , untimed]) => untimed === 1);
  const told = ` ${ids.join(", ")}: hottest ${peak}\u00a0°C, ${hours}\u00a0hours${isUntimed ? ", not all of it timed" : ""}`;
  const link = element("a", { href: root + curve.url, class: "code" }, curve.firing);
  return element("li", {}, sample, link, told);
}

function make(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS(svg, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}
