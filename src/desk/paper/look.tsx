/** What was understood of a row, in the site's words and as its drawing. */
import { renderToString } from "preact-render-to-string";
import { LayerDrawing } from "../../../templates/drawing/layer-drawing.tsx";
import { layerView, type Paint } from "../../../templates/drawing/layer-view.ts";
import type { ShortStep } from "../../reader/short-form/read-short-form.ts";
import { findById } from "../../records/archive.ts";
import { findRestart } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import type { DeskArchive } from "../types.ts";
import { tellSteps } from "./told.ts";
import type { ReadTile, TypedTile } from "./typed-tile.ts";
import type { LookedAt } from "./types.ts";

export function lookAt(archive: DeskArchive, typed: TypedTile, read: ReadTile): LookedAt {
  const { steps, faults } = read;
  const makers = Object.entries(archive.archive.studio.makers ?? {});
  const maker = makers.find(([key]) => idKey(key) === idKey(typed.maker.trim()))?.[1];
  return {
    words: tellSteps(archive.archive, steps),
    drawing: steps.length === 0 ? "" : draw(archive, typed.set, steps),
    makerName: maker?.name ?? "",
    faults,
  };
}

function draw({ archive }: DeskArchive, set: string | null, steps: readonly ShortStep[]): string {
  const { texture, clay } = findById(archive.sets, set)?.record.defaults ?? {};
  const meant = steps.map(({ meant: step }) =>
    step.step === "fired" ? { ...step, cone: null } : step,
  );
  const view = layerView({
    texture: texture ?? "smooth",
    clay: findById(archive.clays, clay ?? null)?.record.colour ?? null,
    steps: meant,
    restart: findRestart(meant),
    // No colour is measured before a tile is fired: what differs is where each layer lies.
    paintOf: (id): Paint => {
      const glaze = findById(archive.glazes, id)?.record;
      return {
        name: glaze?.name ?? id,
        kind: glaze?.kind ?? "glaze",
        colour: null,
        measured: null,
      };
    },
  });
  return renderToString(<LayerDrawing view={view} />);
}
