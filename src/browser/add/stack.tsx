/** The layers as they grow: drawn, and said in words beside the drawing; a touch opens a step. */
import type { VNode } from "preact";
import { DrawingKey } from "../../../templates/drawing/drawing-key.tsx";
import { coatsHigh, LaneDrawing } from "../../../templates/drawing/layer-drawing.tsx";
import { type LayerView, layerView, type Paint } from "../../../templates/drawing/layer-view.ts";
import { nothingYet } from "../../../templates/words/add/form.ts";
import {
  coatWords,
  firingName,
  markPlace,
  markWords,
  shelfWords,
} from "../../../templates/words/tile/steps.ts";
import type { FormSite } from "../../publish/add-file.ts";
import type { TileStep } from "../../records/archive.ts";
import { findRestart } from "../../records/coat-stack.ts";
import type { Draft } from "./draft.ts";
import { findingsAt } from "./parts.tsx";
import { type DraftStep, toTileStep } from "./steps.ts";
import type { FormStore } from "./store.ts";

export function Stack({ form }: { readonly form: FormStore }): VNode {
  const { draft } = form.state;
  const view = viewOf(draft, form);
  return (
    <ol class="coat-stack form-stack">
      <li class="clay">
        <LaneDrawing view={view} at={-1} />
        <div class="words">
          <span class="how">{draft.layers.length === 0 ? nothingYet : "the clay"}</span>
        </div>
      </li>
      {draft.layers.map((step, at) => (
        <Row key={step.key} form={form} step={step} at={at} view={view} />
      ))}
    </ol>
  );
}

/** Where the colours of the drawing come from. */
export function StackKey({ form }: { readonly form: FormStore }): VNode {
  return <DrawingKey view={viewOf(form.state.draft, form)} />;
}

function Row(props: {
  readonly form: FormStore;
  readonly step: DraftStep;
  readonly at: number;
  readonly view: LayerView;
}): VNode {
  const { form, step, at, view } = props;
  const lane = view.lanes[at];
  const { what, how } = rowWords(toTileStep(step, at), form.site);
  const worst = findingsAt(form.state, "layers", at).map(({ severity }) => severity);
  const flag = worst.includes("error") ? "put right" : worst.length > 0 ? "mind" : "";
  return (
    <li class={`${step.step} high-${lane ? coatsHigh(lane) : 1}`}>
      <LaneDrawing view={view} at={at} />
      <div class="words">
        <button
          type="button"
          class="form-step"
          aria-expanded={form.state.open === step.key}
          onClick={() => form.show({ screen: "layers", open: step.key, told: "" })}
        >
          <span class="what">{what}</span> <span class="how">{how}</span>
          {flag && <span class="form-flag">{flag}</span>}
        </button>
      </div>
    </li>
  );
}

/** A step's name, and how it was done. */
export function rowWords(step: TileStep, site: FormSite): { what: string; how: string } {
  if (step.step === "coat")
    return {
      what: step.glazes.map((id) => nameOf(id, site)).join(" fading to "),
      how: coatWords(step),
    };
  if (step.step === "fired")
    return {
      what: firingName(step.kind),
      how: [step.firing, step.shelf && shelfWords(step.shelf)].filter(Boolean).join(", "),
    };
  return { what: markWords(step), how: markPlace(step) };
}

export function nameOf(id: string, { glazes }: FormSite): string {
  return glazes.find((glaze) => glaze.id === id)?.name ?? id;
}

function viewOf(draft: Draft, { site, set }: Pick<FormStore, "set" | "site">): LayerView {
  const steps = draft.layers.map(toTileStep);
  const clay = site.clays.find(({ id }) => id === (draft.clay || set?.gives.clay));
  return layerView({
    texture: draft.texture || set?.gives.texture || "smooth",
    clay: clay ? (clay.colour ?? clay.name) : null,
    steps: steps.map((step) =>
      step.step === "fired"
        ? { ...step, cone: site.firings.find(({ id }) => id === step.firing)?.cone ?? null }
        : step,
    ),
    restart: findRestart(steps),
    paintOf: (id) => paintOf(id, site),
  });
}

function paintOf(id: string, { glazes }: FormSite): Paint {
  const glaze = glazes.find((each) => each.id === id);
  return {
    name: glaze?.name ?? id,
    kind: glaze?.kind ?? "glaze",
    colour: glaze?.hex ?? null,
    measured: glaze?.hex === undefined ? null : { clay: null, cone: null },
  };
}
