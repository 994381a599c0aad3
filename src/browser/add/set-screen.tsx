/** Which set a tile is for: its defaults and its jars come with it. */
import type { VNode } from "preact";
import type { FormSet } from "../../publish/add-file.ts";
import { lastSet } from "./keep.ts";
import type { FormStore } from "./store.ts";

export function SetScreen({ form }: { readonly form: FormStore }): VNode {
  const { sets } = form.site;
  const now = new Date().toISOString().slice(0, 10);
  const last = lastSet();
  const running = sets.filter((set) => isRunning(set, now) || set.id === last);
  const others = sets.filter((set) => !running.includes(set));
  const inOrder = [...running].sort((a, b) => Number(b.id === last) - Number(a.id === last));
  return (
    <>
      <Sets form={form} sets={inOrder} />
      <button type="button" class="form-row" onClick={() => form.chooseSet("")}>
        <span>No set</span>
        <small>a tile of your own</small>
      </button>
      {others.length > 0 && (
        <details open={running.length === 0}>
          <summary>Other sets</summary>
          <Sets form={form} sets={others} />
        </details>
      )}
    </>
  );
}

function isRunning({ begins = "", ends = "9999" }: FormSet, now: string): boolean {
  return begins <= now && now <= ends;
}

function Sets({ form, sets }: { readonly form: FormStore; readonly sets: readonly FormSet[] }) {
  return (
    <>
      {sets.map((set) => (
        <button
          type="button"
          key={set.id}
          class="form-row"
          aria-pressed={form.state.draft.set === set.id}
          onClick={() => form.chooseSet(set.id)}
        >
          <span>{set.name}</span>
          <small>{set.jars.length > 0 ? `${set.jars.length} jars are out` : ""}</small>
        </button>
      ))}
    </>
  );
}
