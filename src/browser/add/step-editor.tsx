/** One step, while it is written: how many coats, how, where; moved, or taken out again. */
import type { VNode } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { covers, dryings, shelves, thicknesses, ways } from "../../terms/choices.ts";
import { AreasField } from "./areas.tsx";
import { GlazeCare } from "./glaze-care.tsx";
import { GlazeSearch } from "./glaze-search.tsx";
import { Choice, Field, Findings, findingsAt, words } from "./parts.tsx";
import { nameOf, rowWords } from "./stack.tsx";
import { type DraftCoat, type DraftFiring, type DraftMark, toTileStep } from "./steps.ts";
import type { FormStore } from "./store.ts";

interface EditorProps<Step> {
  readonly form: FormStore;
  readonly step: Step;
}

/** The step that is open. */
export function StepEditor({ form }: { readonly form: FormStore }): VNode | null {
  const { draft, open } = form.state;
  const at = draft.layers.findIndex(({ key }) => key === open);
  const step = draft.layers[at];
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [open]);
  if (!step) return null;
  return (
    <section class="form-editor" aria-labelledby="form-step">
      <h3 id="form-step" tabIndex={-1} ref={heading}>
        {`${at + 1}. ${rowWords(toTileStep(step, at), form.site).what}`}
      </h3>
      <Findings of={findingsAt(form.state, "layers", at)} />
      {step.step === "coat" && <CoatEditor form={form} step={step} />}
      {step.step === "fired" && <FiringEditor form={form} step={step} />}
      {(step.step === "resist" || step.step === "remove") && <MarkEditor form={form} step={step} />}
      <p class="form-moves">
        <button type="button" disabled={at === 0} onClick={() => form.move(step.key, -1)}>
          Earlier
        </button>
        <button
          type="button"
          disabled={at === draft.layers.length - 1}
          onClick={() => form.move(step.key, 1)}
        >
          Later
        </button>
        <button type="button" onClick={() => form.takeOut(step.key)}>
          Take out
        </button>
      </p>
    </section>
  );
}

/** So many coats have a button of their own. */
const fewCoats = ["1", "2", "3", "4"];

/** Ways that cover a part of the tile, where coats tell nothing. */
const spread = ["dot", "drip", "pen", "spatter", "sponge-stamp", "stencil", "trail"];

function CoatEditor({ form, step }: EditorProps<DraftCoat>): VNode {
  const put = (part: Partial<DraftCoat>) => form.put({ ...step, ...part });
  return (
    <>
      <GlazeCare form={form} id={step.glaze} />
      <Choice
        label="Coats"
        options={words(fewCoats)}
        value={step.coats}
        choose={(coats) => put({ coats })}
      />
      <Choice label="How" options={words(ways)} value={step.by} choose={(by) => put({ by })} />
      {(spread.includes(step.by) || step.cover !== "") && (
        <Choice
          label="How much it covers"
          options={words(covers)}
          value={step.cover}
          choose={(cover) => put({ cover })}
        />
      )}
      <AreasField where={step.where} put={(where) => put({ where })} open={false} />
      <MoreOfCoat form={form} step={step} />
    </>
  );
}

function MoreOfCoat({ form, step }: EditorProps<DraftCoat>): VNode {
  const put = (part: Partial<DraftCoat>) => form.put({ ...step, ...part });
  return (
    <details>
      <summary>More about it</summary>
      <Choice
        label="How thick"
        options={words(thicknesses)}
        value={step.thickness}
        choose={(thickness) => put({ thickness })}
      />
      <Choice
        label="What lay beneath was"
        options={words(dryings)}
        value={step.dried}
        choose={(dried) => put({ dried })}
      />
      <FiguresOfCoat step={step} put={put} />
      <Field
        label="Which part exactly, in your own words"
        value={step.detail}
        type={(detail) => put({ detail })}
      />
      <Fade form={form} step={step} />
      <Ticks form={form} step={step} />
    </details>
  );
}

interface FiguresProps {
  readonly step: DraftCoat;
  readonly put: (part: Partial<DraftCoat>) => void;
}

function FiguresOfCoat({ step, put }: FiguresProps): VNode {
  return (
    <>
      <Field
        label="Coats, where there were more"
        kind="decimal"
        value={step.coats}
        type={(coats) => put({ coats })}
      />
      <Field
        label="Seconds in the glaze"
        kind="decimal"
        value={step.seconds}
        type={(seconds) => put({ seconds })}
      />
      <Field
        label="Specific gravity, such as 1.45"
        kind="decimal"
        value={step.gravity}
        type={(gravity) => put({ gravity })}
      />
    </>
  );
}

/** A repair, and glazes that it laps over although their areas differ. */
function Ticks({ form, step }: EditorProps<DraftCoat>): VNode {
  const put = (part: Partial<DraftCoat>) => form.put({ ...step, ...part });
  const over = (id: string) => step.over.filter((each) => each !== id);
  return (
    <fieldset class="form-choice">
      <legend>It is also</legend>
      <label class="form-tick">
        <input
          type="checkbox"
          checked={step.touchUp}
          onChange={() => put({ touchUp: !step.touchUp })}
        />
        a touch-up
      </label>
      {step.over.map((id) => (
        <label key={id} class="form-tick">
          <input type="checkbox" checked onChange={() => put({ over: over(id) })} />
          over {nameOf(id, form.site)}
        </label>
      ))}
    </fieldset>
  );
}

/** Two glazes that run into each other. */
function Fade({ form, step }: EditorProps<DraftCoat>): VNode {
  const put = (part: Partial<DraftCoat>) => form.put({ ...step, ...part });
  if (step.fadesTo === "")
    return (
      <GlazeSearch
        form={form}
        label="Fades into"
        take={(fadesTo) => put({ fadesTo })}
        few={false}
      />
    );
  return (
    <>
      <p>
        Fades into {nameOf(step.fadesTo, form.site)}{" "}
        <button type="button" onClick={() => put({ fadesTo: "", along: "" })}>
          It does not
        </button>
      </p>
      <GlazeCare form={form} id={step.fadesTo} />
      <Field
        label="Which way, such as rim to centre"
        value={step.along}
        type={(along) => put({ along })}
      />
    </>
  );
}

function MarkEditor({ form, step }: EditorProps<DraftMark>): VNode {
  const put = (part: Partial<DraftMark>) => form.put({ ...step, ...part });
  return (
    <>
      <AreasField where={step.where} put={(where) => put({ where })} open />
      <Field
        label="Which part exactly, in your own words"
        value={step.detail}
        type={(detail) => put({ detail })}
      />
    </>
  );
}

function FiringEditor({ form, step }: EditorProps<DraftFiring>): VNode {
  const loads = form.site.firings.map(({ id, kind, on, cone }) => ({
    value: id,
    name: [id, kind, on, cone && `cone ${cone}`].filter(Boolean).join(", "),
  }));
  const isLoad = loads.some(({ value }) => value === step.what);
  const kind = form.site.firings.find(({ id }) => id === step.what)?.kind ?? step.what;
  return (
    <>
      <details open={isLoad}>
        <summary>Which load, if you know</summary>
        <Choice
          label="Load"
          options={loads.filter(({ name }) => name.includes(kind))}
          value={step.what}
          choose={(load) => form.put({ ...step, what: load || kind })}
        />
      </details>
      <Choice
        label="Shelf"
        options={words(shelves)}
        value={step.shelf}
        choose={(shelf) => form.put({ ...step, shelf })}
      />
    </>
  );
}
