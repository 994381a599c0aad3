import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import type { TileStep } from "../../../src/records/archive.ts";
import { findRestart } from "../../../src/records/coat-stack.ts";
import { ways } from "../../../src/terms/choices.ts";
import { LaneDrawing, LayerDrawing } from "../../../templates/drawing/layer-drawing.tsx";
import { type LayerView, layerView, type Paint } from "../../../templates/drawing/layer-view.ts";
import { coat, fired, removed, resist } from "../../checks/support.ts";
import { withCones } from "../support/layers.ts";

const glaze: Paint = { name: "Soot", kind: "glaze", colour: "#445566", measured: null };

function viewOf(steps: readonly TileStep[], paint: Paint = glaze, texture = "smooth"): LayerView {
  return layerView({
    texture,
    clay: "buff",
    steps: withCones(steps),
    restart: findRestart(steps),
    paintOf: () => paint,
  });
}

const small = (view: LayerView) => renderToString(<LayerDrawing view={view} />);
const large = (view: LayerView) =>
  [-1, ...view.lanes.keys()]
    .map((at) => renderToString(<LaneDrawing view={view} at={at} />))
    .join();

/** Without its colours: what a copy in black and white still shows. */
const inInk = (markup: string) => markup.replace(/fill="[^"]*"|stroke="[^"]*"/gu, "");

/** Every number of a drawing's paths and shifts. */
const numbersIn = (markup: string) =>
  [...markup.matchAll(/ d="([^"]*)"/gu)]
    .flatMap(([, drawn = ""]) => drawn.match(/-?(?:\d+(?:\.\d+)?|\.\d+)|NaN|Infinity/gu) ?? [])
    .map(Number);

const everything: readonly TileStep[] = [
  coat("washed off"),
  removed("all"),
  fired(null, "bisque"),
  resist("wax", ["motif"]),
  ...ways.map((way) => coat("a", { by: way, where: ["left"] })),
  coat(["plum", "sky"], { coats: 2 }),
  removed("wipe", ["raised"]),
  removed("sgraffito", ["centre"]),
  coat("a", { touchUp: true, where: ["rim"] }),
  coat("a", { by: "trail", cover: "sparse" }),
  fired("g-1"),
];

describe("the layer drawing", () => {
  test("stays within its line however many layers there are", () => {
    const coats = Array.from({ length: 12 }, () => coat("a", { coats: 5 }));
    const edges = [...small(viewOf(coats)).matchAll(/M0 [\d.]+V(-?[\d.]+)/gu)].map(([, y]) =>
      Number(y),
    );
    expect(edges.length).toBe(13);
    expect(edges).toEqual([...edges].sort((a, b) => a - b));
    expect(edges[0]).toBeGreaterThanOrEqual(-1);
    expect(edges.at(-1)).toBeLessThan(24);
  });

  test("is drawn of finite numbers, small and large, whatever was done", () => {
    for (const markup of [small(viewOf(everything)), large(viewOf(everything))]) {
      expect(numbersIn(markup).length).toBeGreaterThan(100);
      expect(numbersIn(markup).every(Number.isFinite)).toBe(true);
    }
  });

  test("tells ways of going on apart by their edges, without any colour", () => {
    const told = ["brush", "dip", "pour", "spray", "sponge", "stencil", "trail", "dot", "spatter"];
    const edges = ways
      .filter((way) => told.includes(way))
      .map((way) => inInk(small(viewOf([coat("a", { by: way })]))));
    expect(new Set(edges).size).toBe(told.length);
  });

  test("tells textures of the clay apart by its upper edge", () => {
    const textures = ["smooth", "carved", "combed", "impressed", "pierced", "rolled", "stamped"];
    const edges = [...textures, "scratched with a fork"].map((texture) =>
      inInk(small(viewOf([], glaze, texture))),
    );
    expect(new Set(edges).size).toBe(textures.length + 1);
  });

  test("tells underglaze, slip and wash from glaze without any colour", () => {
    const kinds = ["glaze", "oxide-wash", "slip", "underglaze"] as const;
    const drawn = kinds.map((kind) => inInk(small(viewOf([coat("a")], { ...glaze, kind }))));
    expect(new Set(drawn).size).toBe(kinds.length);
  });

  test("draws a rule where an underglaze was fired before its glaze, and none where it was not", () => {
    const rules = (steps: readonly TileStep[]) =>
      / class="rule" d="([^"]*)"/u.exec(small(viewOf(steps)))?.[1]?.match(/M0 /gu)?.length ?? 0;
    const unfired = rules([coat("under"), coat("over"), fired("g-1")]);
    const firedFirst = rules([coat("under"), fired("b-1"), coat("over"), fired("g-1")]);
    expect(firedFirst).toBe(unfired + 1);
  });

  test("fills a layer with the colour its glaze measured alone, and hatches one that has none", () => {
    expect(small(viewOf([coat("a")]))).toContain('fill="#445566"');
    const unmeasured = { ...glaze, colour: null };
    expect(small(viewOf([coat("a")], unmeasured))).toContain('fill="url(#hatch)"');
    expect(small(viewOf([coat("a", { by: "dot" })], unmeasured))).toContain('stroke="url(#hatch)"');
  });

  test("is kept from screen readers, who are told the same in words", () => {
    expect(small(viewOf(everything))).toContain('aria-hidden="true"');
    expect(large(viewOf(everything)).match(/<svg/gu)?.length).toBe(
      large(viewOf(everything)).match(/aria-hidden="true"/gu)?.length,
    );
  });
});
