/** The tile as it will be handed in, what is still wrong with it, and what was done with it. */
import type { VNode } from "preact";
import {
  clearHelp,
  handedIn,
  handInHelp,
  notesHelp,
  notesOfPractice,
  whileChecking,
  withoutChecks,
} from "../../../templates/words/add/form.ts";
import { faultOfCode, stemOf } from "./draft.ts";
import { Findings } from "./parts.tsx";
import { Shown } from "./photo-screen.tsx";
import { Stack, StackKey } from "./stack.tsx";
import { StillToDo } from "./still-to-do.tsx";
import type { FormStore } from "./store.ts";
import { isKey } from "./tile-screen.tsx";

export function EndScreen({ form }: { readonly form: FormStore }): VNode {
  const { draft, photo } = form.state;
  if (draft.handed !== "") return <Done form={form} />;
  const { by, words } = form.site.handingIn;
  return (
    <>
      <p class="form-what">
        <b class="code">{stemOf(draft)}</b> {form.set?.name ?? ""}
      </p>
      <Stack form={form} />
      <StackKey form={form} />
      {photo && <Shown photo={photo} />}
      <label class="form-field">
        <span>Notes</span>
        <small>{notesHelp}</small>
        <textarea
          rows={3}
          value={draft.notes}
          onInput={(event) => form.change({ notes: event.currentTarget.value })}
        />
      </label>
      <Wrong form={form} />
      <p class="quiet">{handInHelp[by]}</p>
      {words !== undefined && <p class="form-own">{words}</p>}
    </>
  );
}

/** Everything that is to be mended or minded, in one place. */
function Wrong({ form }: { readonly form: FormStore }): VNode {
  const { examined } = form.state;
  if (examined === "unavailable") return <p class="form-fault">{withoutChecks}</p>;
  if (examined === null) return <p class="quiet">{whileChecking}</p>;
  const own = faultsOf(form);
  return (
    <>
      {own.map((fault) => (
        <p class="form-fault" key={fault}>
          {fault}
        </p>
      ))}
      <Findings of={examined.findings} />
      {examined.findings.some(({ severity }) => severity === "warning") && (
        <p class="quiet">{notesOfPractice}</p>
      )}
    </>
  );
}

function faultsOf(form: FormStore): readonly string[] {
  const { draft } = form.state;
  const code = faultOfCode(draft, form.site, form.taken);
  return [
    ...(draft.set === null ? ["Say first which set it is for."] : []),
    ...(code === undefined ? [] : [code]),
    ...(isKey(draft.maker) ? [] : ["The key of who glazed it is no key."]),
  ];
}

/** Whether nothing keeps the tile from being handed in. */
export function isReady(form: FormStore): boolean {
  const { examined } = form.state;
  if (examined === null || examined === "unavailable") return false;
  return (
    faultsOf(form).length === 0 && examined.findings.every(({ severity }) => severity !== "error")
  );
}

function Done({ form }: { readonly form: FormStore }): VNode {
  return (
    <>
      <p class="form-what" role="status">
        {form.state.draft.handed}
      </p>
      {form.state.draft.handed === handedIn.opened && <StillToDo form={form} />}
      <p class="quiet">{clearHelp}</p>
      <p>
        <button type="button" onClick={() => form.change({ handed: "" })}>
          Change it, or hand it in again
        </button>
      </p>
    </>
  );
}
