/** Pieces that the form's screens are put together of: choices by large buttons, fields, what is wrong. */
import type { ComponentChildren, VNode } from "preact";
import type { FormFinding } from "./examined.ts";
import type { FormState } from "./store.ts";

export interface Option {
  readonly value: string;
  readonly name: ComponentChildren;
}

/** One of some values, or none: what is chosen is taken back by a second touch. */
export function Choice(props: {
  readonly label: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly choose: (value: string) => void;
}): VNode {
  const { label, options, value, choose } = props;
  return (
    <fieldset class="form-choice">
      <legend>{label}</legend>
      {options.map((option) => (
        <button
          type="button"
          key={option.value}
          aria-pressed={option.value === value}
          onClick={() => choose(option.value === value ? "" : option.value)}
        >
          {option.name}
        </button>
      ))}
    </fieldset>
  );
}

export function words(values: readonly string[]): readonly Option[] {
  return values.map((value) => ({ value, name: value.replaceAll("-", " ") }));
}

export function Field(props: {
  readonly label: string;
  readonly value: string;
  readonly type: (value: string) => void;
  readonly help?: string;
  readonly fault?: string | undefined;
  readonly kind?: "date" | "text" | "decimal";
}): VNode {
  const { label, value, type, help, fault, kind = "text" } = props;
  const typed = {
    ...(kind === "date"
      ? { type: "date" as const }
      : {
          type: "text" as const,
          inputMode: kind,
          autocapitalize: "off" as const,
          spellcheck: false,
        }),
    value,
    autocomplete: "off" as const,
    "aria-invalid": fault !== undefined,
    onInput: (event: { readonly currentTarget: HTMLInputElement }) =>
      type(event.currentTarget.value),
  };
  return (
    <label class="form-field">
      <span>{label}</span>
      {help && <small>{help}</small>}
      <input {...typed} />
      {fault !== undefined && <span class="form-fault">{fault}</span>}
    </label>
  );
}

/** What the build would tell of a field, errors first. */
export function Findings({ of }: { readonly of: readonly FormFinding[] }): VNode | null {
  if (of.length === 0) return null;
  return (
    <ul class="form-findings">
      {of.map(({ severity, message, hint }) => (
        <li class={severity}>
          <b>{severity === "error" ? "Put right" : "Mind"}</b> {message}. {hint}
        </li>
      ))}
    </ul>
  );
}

/** What was found of a field, and of all that lies in it. */
export function findingsAt(
  { examined }: FormState,
  ...path: readonly (string | number)[]
): readonly FormFinding[] {
  if (examined === null || examined === "unavailable") return [];
  return examined.findings.filter((finding) => path.every((part, i) => finding.path[i] === part));
}
