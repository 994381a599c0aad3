/** The page on which a kiln is loaded: a firing, its shelves, and what is to be minded. */
import type { VNode } from "preact";
import { count, formatDay } from "../../../templates/words/english/numbers.ts";
import { kilnsOf, newestFirst } from "../../loads/kiln-habits.ts";
import { codesOn, shelvesOf } from "../../loads/shelves.ts";
import { type Firing, findById } from "../../records/archive.ts";
import { atmospheres, heatSources, kindsOfFiring, shelves } from "../../terms/choices.ts";
import type { DeskPage } from "../page.ts";
import { today } from "../today.ts";
import type { DeskArchive } from "../types.ts";
import { tryAction, writeAction } from "./actions.ts";
import { viewLoad } from "./view.ts";

export const loadPage: DeskPage = {
  name: "load",
  title: "Loading a kiln",
  purpose:
    "Tick tiles onto the shelves of a firing, see at once what must not go in, and write its load list.",
  script: "load",
  render(desk, of) {
    const firing = of === undefined ? undefined : findById(desk.archive.firings, of);
    if (of !== undefined && !firing) return undefined;
    return <LoadPage desk={desk} firing={firing} />;
  },
  actions: { try: tryAction, write: writeAction },
};

function LoadPage(props: {
  readonly desk: DeskArchive;
  readonly firing: Firing | undefined;
}): VNode {
  const { desk, firing } = props;
  const view = viewLoad(desk, firing, today());
  return (
    <>
      <header class="opening">
        <h1>{firing ? `What goes into ${firing.id}?` : "What goes into the kiln?"}</h1>
        <p class="lede">{firing ? firingWords(firing) : "Begin a firing, or go on with one:"}</p>
        {!firing && <Firings desk={desk} />}
        <noscript>
          <p>
            Ticking tiles needs JavaScript, which is switched off in this browser. A load list can
            be written by hand: “tiles:” in the firing’s record.
          </p>
        </noscript>
      </header>
      <form class="load" data-view={JSON.stringify(view)} hidden>
        {!firing && <Begin desk={desk} />}
        <Board />
        <Writing />
      </form>
      <Cautions />
    </>
  );
}

/** `Glaze firing to cone 6 in Big electric, 20 October 2026. 12 tiles are on its list.` */
function firingWords({ record, ...firing }: Firing): string {
  const { kind, cone, kiln, on } = record;
  const what = `${kind === "bisque" ? "A bisque" : `A ${kind} firing`}${cone === undefined ? ", no cone written down" : ` to cone ${cone}`}`;
  const where = kiln === undefined ? "" : ` in ${kiln}`;
  const when = on === undefined ? ", still to come" : `, lit on ${formatDay(on)}`;
  const tiles = codesOn(shelvesOf({ record, ...firing })).length;
  return `${what}${where}${when}. ${tiles === 1 ? "One tile is" : `${tiles} tiles are`} on its list.`;
}

/** So many firings that were lit are offered besides those to come. */
const mostFirings = 4;

function Firings({ desk }: { readonly desk: DeskArchive }): VNode | null {
  const all = newestFirst(desk.archive);
  const open = all.filter(({ record }) => record.on === undefined);
  const lit = all.filter(({ record }) => record.on !== undefined).slice(0, mostFirings);
  if (open.length + lit.length === 0) return null;
  return (
    <ul class="choices-of-firings">
      {[...open, ...lit].map((firing) => (
        <li>
          <a href={`/desk/load/${encodeURIComponent(firing.id)}`}>{firing.id}</a>{" "}
          <span class="quiet">
            {firing.record.kind}
            {firing.record.cone !== undefined && `, cone ${firing.record.cone}`}
            {firing.record.on === undefined ? ", to come" : `, ${formatDay(firing.record.on)}`},{" "}
            {count(codesOn(shelvesOf(firing)).length, "tile")}
          </span>
        </li>
      ))}
    </ul>
  );
}

function Begin({ desk }: { readonly desk: DeskArchive }): VNode {
  return (
    <section class="begin" aria-labelledby="begin-head">
      <h2 id="begin-head">A new firing</h2>
      <p class="last-time" hidden>
        <button type="button">Take these</button> <span />
      </p>
      <div class="large-fields">
        <Choice name="kind" label="Kind" values={kindsOfFiring} chosen="glaze" />
        <label>
          Kiln
          <input type="text" name="kiln" list="kilns" autocomplete="off" maxLength={100} />
          <datalist id="kilns">
            {kilnsOf(desk.archive).map((kiln) => (
              <option value={kiln} />
            ))}
          </datalist>
        </label>
        <label>
          Cone you aim at
          <input type="text" name="cone" autocomplete="off" maxLength={10} />
        </label>
        <Choice name="atmosphere" label="Atmosphere" values={["", ...atmospheres]} />
        <Choice name="heatedBy" label="Heated by" values={["", ...heatSources]} />
        <label>
          Lit on
          <input type="date" name="on" />
          <span class="quiet">Leave it empty while the firing is still to come.</span>
        </label>
        <label>
          Its id
          <input type="text" name="id" autocomplete="off" maxLength={60} />
          <span class="quiet">The name of its file: letters, digits and “-”.</span>
        </label>
      </div>
    </section>
  );
}

function Choice(props: {
  readonly name: string;
  readonly label: string;
  readonly values: readonly string[];
  readonly chosen?: string;
}): VNode {
  return (
    <label>
      {props.label}
      <select name={props.name}>
        {props.values.map((value) => (
          <option value={value} selected={value === props.chosen}>
            {value === "" ? "not written down" : value}
          </option>
        ))}
      </select>
    </label>
  );
}

function Board(): VNode {
  return (
    <section class="loading" aria-labelledby="shelves-head">
      <div class="shelves">
        <h2 id="shelves-head">Shelf</h2>
        <fieldset class="shelf-choice" data-usual={JSON.stringify(shelves)}>
          <legend class="unseen">The shelf that you fill</legend>
        </fieldset>
        <p class="own-shelf">
          <label>
            Another shelf <input type="text" name="own-shelf" maxLength={60} autocomplete="off" />
          </label>
          <button type="button">Add it</button>
        </p>
        <p class="by-code">
          <label>
            Put on by code <input type="text" name="code" maxLength={100} autocomplete="off" />
          </label>
          <button type="button">Put it on</button>
          <span class="quiet">A code, or a range such as TB-101..TB-109; Enter puts it on.</span>
        </p>
        <div class="loaded" aria-live="polite" />
      </div>
      <div class="waiting">
        <h2 id="waiting-head">Waiting for this kind of firing</h2>
        <div class="to-load" />
      </div>
    </section>
  );
}

function Writing(): VNode {
  return (
    <>
      <section class="load-whole" aria-label="The load as a whole">
        <ul class="of-load" />
        <label class="history" hidden>
          <input type="checkbox" name="history" /> It has been fired like this already. Write the
          list as it was; then write at once what came of each tile, or the build stops.
        </label>
      </section>
      <section class="load-sum" aria-label="Writing it down">
        <p class="sum" role="status" />
        <button type="submit">Write the load list</button>
        <div class="told" role="status">
          <p />
        </div>
        <p class="trouble" role="alert" />
      </section>
    </>
  );
}

/** What stands on the page whatever is in the load: nothing here is a promise. */
function Cautions(): VNode {
  return (
    <section class="cautions" aria-label="Cautions">
      <div class="caution">
        <p>
          <b>Before firing</b> All of this rests on what is written in the records. Where it warns
          of nothing, a load can still run, stick or burst: look at each tile as you put it in. Dry
          the work through; put wash or a plate under whatever may run. Wear gloves for sharp edges
          and a fitting mask where you scrape wash or sand shelves. Air the room.
        </p>
        <p class="quiet">
          Go by the kiln’s manual, local rules and whoever is in charge of the kiln.{" "}
          <a href="/care.html#kilns">Kilns</a> and <a href="/care.html#fumes">fumes</a> in full.
        </p>
      </div>
    </section>
  );
}
