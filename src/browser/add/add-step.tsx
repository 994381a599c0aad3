/** What went on next: a jar, another glaze, a resist, something taken off, a firing between. */
import type { VNode } from "preact";
import { useState } from "preact/hooks";
import { firingName, markWords } from "../../../templates/words/tile/steps.ts";
import { kindsOfFiring, removals, resists } from "../../terms/choices.ts";
import { GlazeSearch } from "./glaze-search.tsx";
import { Field } from "./parts.tsx";
import { nameOf } from "./stack.tsx";
import { newCoat, newFiring, newMark, toTileStep } from "./steps.ts";
import type { FormStore } from "./store.ts";

export function AddStep({ form }: { readonly form: FormStore }): VNode {
  const none = form.state.draft.layers.length === 0;
  const jars = form.set?.jars ?? [];
  return (
    <section class="form-add">
      <h3>{none ? "What went on first?" : "What went on next?"}</h3>
      {jars.length > 0 && (
        <div class="form-jars">
          {jars.map(([jar, glaze]) => (
            <button type="button" key={jar} onClick={() => form.add((key) => newCoat(key, glaze))}>
              <span class="jar">{jar}</span> {nameOf(glaze, form.site)}
            </button>
          ))}
        </div>
      )}
      <GlazeSearch
        form={form}
        label={jars.length > 0 ? "Another glaze" : "Glaze"}
        take={(id) => form.add((key) => newCoat(key, id))}
        few={jars.length === 0}
      />
      <Marks form={form} step="resist" label="Keeps glaze off" whats={resists} />
      <Marks form={form} step="remove" label="Taken off" whats={removals} />
      <Firings form={form} />
      {none && <LikeTile form={form} />}
    </section>
  );
}

function Marks(props: {
  readonly form: FormStore;
  readonly step: "resist" | "remove";
  readonly label: string;
  readonly whats: readonly string[];
}): VNode {
  const { form, step, label, whats } = props;
  return (
    <fieldset class="form-choice">
      <legend>{label}</legend>
      {whats.map((what) => (
        <button
          type="button"
          key={what}
          onClick={() => form.add((key) => newMark(key, step, what))}
        >
          {markName(step, what)}
        </button>
      ))}
    </fieldset>
  );
}

function markName(step: "resist" | "remove", what: string): string {
  const made = toTileStep(newMark(0, step, what), 0);
  return made.step === "resist" || made.step === "remove"
    ? markWords(made).replace(" resist", "")
    : what;
}

function Firings({ form }: { readonly form: FormStore }): VNode {
  return (
    <fieldset class="form-choice">
      <legend>Fired before the next layer</legend>
      {kindsOfFiring.map((kind) => (
        <button type="button" key={kind} onClick={() => form.add((key) => newFiring(key, kind))}>
          {firingName(kind)}
        </button>
      ))}
    </fieldset>
  );
}

function LikeTile({ form }: { readonly form: FormStore }): VNode {
  const [code, type] = useState("");
  return (
    <details>
      <summary>Like another tile</summary>
      <Field label="Its code" value={code} type={type} />
      <button type="button" onClick={() => void form.likeTile(code.trim())}>
        Copy its layers
      </button>
    </details>
  );
}
