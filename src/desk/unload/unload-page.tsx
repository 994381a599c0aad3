/** The page on which a kiln is unloaded: one tile after the other, by touch or by keys alone. */
import type { VNode } from "preact";
import { count, formatDay, spoken } from "../../../templates/words/english/numbers.ts";
import { newestFirst } from "../../loads/kiln-habits.ts";
import { type Firing, findById } from "../../records/archive.ts";
import { agains, effects, fates, faults, surfaces } from "../../terms/choices.ts";
import type { DeskPage } from "../page.ts";
import { today } from "../today.ts";
import type { DeskArchive } from "../types.ts";
import { litAction, outcomeAction, undoAction } from "./actions.ts";
import { photographAction } from "./photograph.ts";
import { viewUnload } from "./view.ts";
import { againWords, fateWords } from "./words.ts";

export const unloadPage: DeskPage = {
  name: "unload",
  title: "Unloading",
  purpose: "Take a kiln out tile by tile, and write down at once what came of each.",
  script: "unload",
  render(desk, of) {
    if (of === undefined) return <ChooseFiring desk={desk} />;
    const firing = findById(desk.archive.firings, of);
    return firing && <UnloadPage desk={desk} firing={firing} />;
  },
  actions: { lit: litAction, outcome: outcomeAction, undo: undoAction },
  pictures: { photograph: photographAction },
};

/** So many firings are offered: whoever unloads an older one finds it by its address. */
const mostFirings = 12;

function ChooseFiring({ desk }: { readonly desk: DeskArchive }): VNode {
  const firings = newestFirst(desk.archive).slice(0, mostFirings);
  return (
    <header class="opening">
      <h1>Which kiln do you unload?</h1>
      {firings.length === 0 && <p class="empty">There is no firing yet. Load one first.</p>}
      <ul class="choices-of-firings">
        {firings.map((firing) => (
          <li>
            <a href={`/desk/unload/${encodeURIComponent(firing.id)}`}>{firing.id}</a>
            <span class="quiet">{lackWords(desk, firing)}</span>
          </li>
        ))}
      </ul>
    </header>
  );
}

/** `glaze, cone 6, 15 November 2026: 14 tiles, 3 without a result` */
function lackWords(desk: DeskArchive, firing: Firing): string {
  const { tiles } = viewUnload(desk, firing);
  const { kind, cone, on } = firing.record;
  const lacking = tiles.filter(({ missing }) => missing.result).length;
  const bare = tiles.filter(({ missing }) => missing.photograph).length;
  const facts = [
    kind,
    cone !== undefined && `cone ${cone}`,
    on === undefined ? "no day yet" : formatDay(on),
  ];
  const lacks = [
    count(tiles.length, "tile"),
    lacking > 0 && `${lacking} without a result`,
    bare > 0 && `${bare} without a photograph`,
  ];
  return `${facts.filter(Boolean).join(", ")}: ${lacks.filter(Boolean).join(", ")}`;
}

function UnloadPage(props: { readonly desk: DeskArchive; readonly firing: Firing }): VNode {
  const { desk, firing } = props;
  const view = viewUnload(desk, firing);
  return (
    <>
      <header class="opening">
        <h1>{`What came out of ${firing.id}?`}</h1>
        <p class="progress" role="status" />
        <p>
          <a href={`/desk/photographs/${encodeURIComponent(firing.id)}`}>
            Name a camera’s photographs of this load, all at once
          </a>
        </p>
        <noscript>
          <p>
            Writing results here needs JavaScript, which is switched off in this browser. A result
            can be written by hand: “result:” in the tile’s record.
          </p>
        </noscript>
      </header>
      <form class="lit" hidden>
        <label>
          When was this kiln lit? <input type="date" name="on" max={today()} />
        </label>
        <button type="submit">Write the day</button>
      </form>
      <form class="unload-form" data-view={JSON.stringify(view)} hidden>
        <TileHead />
        <Unclear />
        <div class="of-result">
          <Group name="surface" title="Surface" values={surfaces} keys="1234" />
          <Group name="faults" title="Faults" values={["none"]} keys="0" opens="f" more={faults} />
          <Group name="again" title="Would you do it again?" values={agains} keys="ycn" />
          <Measured />
          <Group name="effects" title="Effects" values={[]} keys="" opens="e" more={effects} />
        </div>
        <Group name="fate" title="Came back whole?" values={[]} keys="" opens="x" more={fates} />
        <Ways />
      </form>
    </>
  );
}

function TileHead(): VNode {
  return (
    <section class="tile-out" aria-label="The tile">
      <p class="code" aria-live="polite" />
      <p class="where" />
      <p class="made" />
      <p class="lacks quiet" />
      <label class="take-photograph">
        <kbd>p</kbd> Take its photograph{" "}
        <input type="file" name="photograph" accept="image/*" capture="environment" />
      </label>
    </section>
  );
}

function Unclear(): VNode {
  return (
    <fieldset class="unclear" hidden>
      <legend>Its record has a result that names no firing. Of which one is that?</legend>
      <div class="choices" />
    </fieldset>
  );
}

interface GroupProps {
  readonly name: string;
  readonly title: string;
  /** Those that are always there. */
  readonly values: readonly string[];
  /** A key for each of them. */
  readonly keys: string;
  /** The key that opens the rest. */
  readonly opens?: string;
  readonly more?: readonly string[];
}

function Group({ name, title, values, keys, opens, more = [] }: GroupProps): VNode {
  return (
    <fieldset class={`choice-group ${name}`} data-field={name}>
      <legend>{title}</legend>
      <div class="choices">
        {values.map((value, at) => (
          <Choice value={value} label={labelOf(name, value)} letter={keys.charAt(at)} />
        ))}
        {opens && (
          <button type="button" class="opens" aria-expanded="false" data-key={opens}>
            <kbd>{opens}</kbd> <span>{openWords[name]}</span>
          </button>
        )}
      </div>
      {opens && (
        <div class="choices more" hidden>
          {more.map((value, at) => (
            <Choice
              value={value}
              label={labelOf(name, value)}
              letter={String.fromCharCode("a".charCodeAt(0) + at)}
            />
          ))}
        </div>
      )}
    </fieldset>
  );
}

const openWords: Readonly<Record<string, string>> = {
  faults: "a fault…",
  effects: "an effect…",
  fate: "no…",
};

function labelOf(name: string, value: string): string {
  if (name === "again") return againWords[value as keyof typeof againWords];
  if (name === "fate") return fateWords[value as keyof typeof fateWords];
  return value === "none" ? "none seen" : spoken(value);
}

function Choice(props: {
  readonly value: string;
  readonly label: string;
  readonly letter: string;
}): VNode {
  return (
    <button type="button" aria-pressed="false" data-value={props.value} data-key={props.letter}>
      <kbd>{props.letter}</kbd> {props.label}
    </button>
  );
}

function Measured(): VNode {
  return (
    <div class="measured-run">
      <label>
        <kbd>r</kbd> Run, in mm{" "}
        <input type="text" inputMode="decimal" name="run" maxLength={7} autocomplete="off" />
      </label>
      <label class="line">
        <kbd>t</kbd> Next time{" "}
        <input type="text" name="nextTime" maxLength={1000} autocomplete="off" />
      </label>
    </div>
  );
}

function Ways(): VNode {
  return (
    <div class="unload-ways">
      <p class="told" role="status" />
      <p class="trouble" role="alert" />
      <div>
        <button type="button" class="undo" data-key="u" disabled>
          <kbd>u</kbd> Undo
        </button>
        <button type="button" class="back" data-key="b">
          <kbd>b</kbd> Back
        </button>
        <button type="button" class="skip-tile" data-key="s">
          <kbd>s</kbd> Skip
        </button>
        <button type="submit">
          <kbd>Enter</kbd> Write, next
        </button>
      </div>
    </div>
  );
}
