/** The form: a head that says where one is, one question, and at the thumb what comes next. */
import { render, type VNode } from "preact";
import { useEffect, useRef } from "preact/hooks";
import {
  handedIn,
  handInNames,
  questions,
  screenNames,
  stillToDo,
} from "../../../templates/words/add/form.ts";
import type { FormSite } from "../../publish/add-file.ts";
import { AddStep } from "./add-step.tsx";
import { stemOf } from "./draft.ts";
import { handIn } from "./end.ts";
import { EndScreen, isReady } from "./end-screen.tsx";
import { PhotoScreen } from "./photo-screen.tsx";
import { SetScreen } from "./set-screen.tsx";
import { Stack } from "./stack.tsx";
import { StepEditor } from "./step-editor.tsx";
import { FormStore, screens } from "./store.ts";
import { TileScreen } from "./tile-screen.tsx";

/** Draws the form into its place, now and after every change. */
export function startForm(place: HTMLElement, site: FormSite, root: string): void {
  const form = new FormStore(site, root, () => render(<App form={form} />, place));
  place.replaceChildren();
  render(<App form={form} />, place);
  // Once the form is there to be seen.
  requestAnimationFrame(() => setTimeout(() => void form.start()));
}

interface Props {
  readonly form: FormStore;
}

function App({ form }: Props): VNode {
  const { screen, told, restored, draft } = form.state;
  const heading = useRef<HTMLHeadingElement>(null);
  const isFirst = useRef(true);
  useEffect(() => {
    if (!isFirst.current) {
      window.scrollTo(0, 0);
      heading.current?.focus();
    }
    isFirst.current = false;
  }, [screen]);
  return (
    <>
      <Places form={form} />
      {restored && draft.handed === "" && <Restored form={form} />}
      <h2 tabIndex={-1} ref={heading}>
        {screen === "end" && draft.handed !== "" ? whatWasDone(draft.handed) : questions[screen]}
      </h2>
      <div class="form-screen">
        <Body form={form} />
      </div>
      <p role="status" class="form-told">
        {told}
      </p>
      <Bar form={form} />
    </>
  );
}

function whatWasDone(handed: string): string {
  return handed === handedIn.opened ? stillToDo : "Handed in";
}

function Body({ form }: Props): VNode {
  const { screen, open } = form.state;
  if (screen === "set") return <SetScreen form={form} />;
  if (screen === "tile") return <TileScreen form={form} />;
  if (screen === "photo") return <PhotoScreen form={form} />;
  if (screen === "end") return <EndScreen form={form} />;
  return (
    <>
      <Stack form={form} />
      {open === null ? <AddStep form={form} /> : <StepEditor form={form} />}
    </>
  );
}

/** The screens in their order; all but the first wait for a set. */
function Places({ form }: Props): VNode {
  const { screen, draft } = form.state;
  return (
    <nav class="form-places" aria-label="Parts of the form">
      <ol>
        {screens.map((each) => (
          <li key={each}>
            <button
              type="button"
              class="plain"
              aria-current={each === screen ? "step" : undefined}
              disabled={draft.set === null && each !== "set"}
              onClick={() => form.go(each)}
            >
              {screenNames[each]}
            </button>
          </li>
        ))}
      </ol>
      {draft.set !== null && stemOf(draft) !== "" && <p class="code">{stemOf(draft)}</p>}
    </nav>
  );
}

/** Whoever opens the form sees at once that somebody's tile is in it. */
function Restored({ form }: Props): VNode {
  const begun = new Date(form.state.draft.begun);
  const day = begun.toLocaleDateString("en-GB", { day: "numeric", month: "long" });
  const time = begun.toLocaleTimeString("en", {
    hour: "2-digit",
    minute: "2-digit",
    hour12: false,
  });
  return (
    <p class="form-restored">
      {`This tile was begun on ${day} at ${time} and not handed in. Not yours?`}{" "}
      <button type="button" onClick={() => void form.clear()}>
        Clear it
      </button>
    </p>
  );
}

interface Action {
  readonly name: string;
  readonly act: () => void;
  readonly disabled?: boolean;
}

/** What comes next, in reach of a thumb; the main action is the last. */
function Bar({ form }: Props): VNode | null {
  const actions = actionsOf(form);
  if (actions.length === 0) return null;
  return (
    <p class="form-bar">
      {actions.map(({ name, act, disabled = false }, i) => (
        <button
          type="button"
          key={name}
          class={i === actions.length - 1 ? "main" : ""}
          disabled={disabled}
          onClick={act}
        >
          {name}
        </button>
      ))}
    </p>
  );
}

function actionsOf(form: FormStore): readonly Action[] {
  const { screen, open, draft, photo } = form.state;
  const to = (name: string, where: (typeof screens)[number]): Action => ({
    name,
    act: () => form.go(where),
  });
  if (screen === "set") return draft.set === null ? [] : [to("On to the tile", "tile")];
  if (screen === "tile") return [to("Back", "set"), to("On to the layers", "layers")];
  if (screen === "layers")
    return open === null
      ? [to("Back", "tile"), to("That was all", "photo")]
      : [to("That was all", "photo"), { name: "Next step", act: () => form.show({ open: null }) }];
  if (screen === "photo")
    return [to("Back", "layers"), to(photo ? "On" : "Without a photograph", "end")];
  return endActions(form);
}

function endActions(form: FormStore): readonly Action[] {
  if (form.state.draft.handed !== "")
    return [
      { name: "Another like this", act: () => form.another() },
      { name: "Finish and clear", act: () => void form.clear() },
    ];
  const hand = async () => {
    const done = await handIn(form);
    if (done !== undefined) form.handedIn(done);
  };
  return [
    { name: "Back", act: () => form.go("photo") },
    {
      name: handInNames[form.site.handingIn.by],
      act: () => void hand(),
      disabled: !isReady(form),
    },
  ];
}
