/** A glaze by a few letters of its name or its id. */
import type { VNode } from "preact";
import { useState } from "preact/hooks";
import type { FormGlaze } from "../../publish/add-file.ts";
import { Field } from "./parts.tsx";
import type { FormStore } from "./store.ts";

/** As many as a phone shows above its keyboard. */
const mostFound = 8;

export function GlazeSearch(props: {
  readonly form: FormStore;
  readonly label: string;
  readonly take: (id: string) => void;
  /** Whether the first few are shown before anything is typed. */
  readonly few: boolean;
}): VNode {
  const { form, label, take, few } = props;
  const [typed, type] = useState("");
  const wanted = plain(typed);
  const found = wanted === "" && !few ? [] : findGlazes(form.site.glazes, wanted);
  return (
    <div class="form-search">
      <Field label={label} help="Type a few letters." value={typed} type={type} />
      <ul aria-label="Glazes found">
        {found.slice(0, mostFound).map(({ id, name, stocked }) => (
          <li key={id}>
            <button
              type="button"
              onClick={() => {
                type("");
                take(id);
              }}
            >
              {name}
              {stocked === false && <small> not in stock</small>}
            </button>
          </li>
        ))}
      </ul>
      {wanted !== "" && found.length === 0 && (
        <p class="form-fault">
          No glaze is called that here. Look at the jar again, or ask which record it has.
        </p>
      )}
    </div>
  );
}

/** Those whose names begin with what is typed first, then those that hold it; what is in stock before the rest. */
export function findGlazes(glazes: readonly FormGlaze[], wanted: string): readonly FormGlaze[] {
  const place = ({ id, name, stocked }: FormGlaze) => {
    const at = [plain(name), plain(id)].map((each) => each.indexOf(wanted));
    if (at.every((found) => found < 0)) return -1;
    return (at.includes(0) ? 0 : 1) + (stocked === false ? 2 : 0);
  };
  return glazes
    .map((glaze) => ({ glaze, at: place(glaze) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ glaze }) => glaze);
}

/** Without case and marks, so that “café” is found by “cafe”. */
function plain(text: string): string {
  return text.trim().normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}
