/** The tile itself: its code, who glazed it, and of clay, texture and shape what its set does not say. */
import type { VNode } from "preact";
import { faultOfKey, keyHelp } from "../../../templates/words/add/form.ts";
import type { FormSet, FormSite } from "../../publish/add-file.ts";
import { shapes, textures } from "../../terms/choices.ts";
import { type DraftText, faultOfCode } from "./draft.ts";
import { Choice, Field, Findings, findingsAt, words } from "./parts.tsx";
import type { FormStore } from "./store.ts";

export function TileScreen({ form }: { readonly form: FormStore }): VNode {
  const { draft } = form.state;
  return (
    <>
      <Code form={form} />
      {form.set?.gives.maker === true ? (
        <p class="quiet">The set says who glazed it.</p>
      ) : (
        <Field
          label="Who glazed it"
          help={keyHelp}
          value={draft.maker}
          type={(maker) => form.change({ maker })}
          fault={isKey(draft.maker) ? undefined : faultOfKey}
        />
      )}
      <Rest form={form} />
    </>
  );
}

/** A key, or nothing: whether it is anybody's is known to the teacher alone. */
export function isKey(typed: string): boolean {
  return /^$|^[\p{L}\p{N}][\p{L}\p{M}\p{N}._-]{0,39}$/u.test(typed.trim());
}

function Code({ form }: { readonly form: FormStore }): VNode {
  const { draft } = form.state;
  const hasNone = draft.noCode !== "" && draft.code === "";
  return (
    <div class="form-code">
      <Field
        label="Code on its back"
        value={draft.code}
        type={(code) => form.change({ code, noCode: "" })}
        fault={faultOfCode(draft, form.site, form.taken)}
      />
      <button type="button" aria-pressed={hasNone} onClick={() => form.haveCode(hasNone)}>
        No code yet
      </button>
      <Findings of={findingsAt(form.state).filter(({ path }) => path.length === 0)} />
    </div>
  );
}

/** What the set says, and what it leaves open. */
function Rest({ form }: { readonly form: FormStore }): VNode {
  const { draft } = form.state;
  const { gives = {} } = form.set ?? {};
  const put = (name: DraftText) => (value: string) => form.change({ [name]: value });
  const fields = {
    glazed: <Field label="Glazed on" kind="date" value={draft.glazed} type={put("glazed")} />,
    clay: <Clays form={form} choose={put("clay")} />,
  };
  const isGiven = (name: keyof typeof fields) => gives[name] !== undefined;
  const [open, given] = [(["glazed", "clay"] as const).filter((name) => !isGiven(name)), isGiven];
  return (
    <>
      {open.map((name) => fields[name])}
      <Findings of={[...findingsAt(form.state, "glazed"), ...findingsAt(form.state, "clay")]} />
      <Given site={form.site} set={form.set} />
      <details>
        <summary>{shapeWords(form)}</summary>
        {given("glazed") && fields.glazed}
        {given("clay") && fields.clay}
        <Choice
          label="Texture"
          options={words(textures)}
          value={draft.texture}
          choose={put("texture")}
        />
        <Choice label="Shape" options={words(shapes)} value={draft.shape} choose={put("shape")} />
      </details>
    </>
  );
}

/** `A smooth tile, flat: change`. */
function shapeWords({ state: { draft }, set }: FormStore): string {
  const texture = draft.texture || set?.gives.texture || "smooth";
  const shape = draft.shape || set?.gives.shape || "flat";
  return `It is ${texture.replaceAll("-", " ")} and ${shape}. Not so?`;
}

function Clays({
  form,
  choose,
}: {
  readonly form: FormStore;
  readonly choose: (clay: string) => void;
}) {
  const options = form.site.clays.map(({ id, name }) => ({ value: id, name }));
  return <Choice label="Clay" options={options} value={form.state.draft.clay} choose={choose} />;
}

/** What holds for every tile of the set, so that nobody writes it again. */
function Given({
  site,
  set,
}: {
  readonly site: FormSite;
  readonly set: FormSet | undefined;
}): VNode | null {
  const { clay, glazed, formed, angle, "clay-batch": batch } = set?.gives ?? {};
  const told = [
    clay && (site.clays.find(({ id }) => id === clay)?.name ?? clay),
    batch && `batch ${batch}`,
    angle && `${angle}° in the kiln`,
    formed && `formed on ${formed}`,
    glazed && `glazed on ${glazed}`,
  ].filter(Boolean);
  if (!set || told.length === 0) return null;
  return <p class="quiet">{`For every tile of ${set.name}: ${told.join(", ")}.`}</p>;
}
