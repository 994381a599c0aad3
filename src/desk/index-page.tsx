/** The desk's first page: what waits in every set, and where to see to it. */
import type { VNode } from "preact";
import { count, listed } from "../../templates/words/english/numbers.ts";
import { needsBySet, type SetNeeds } from "./needs.ts";
import type { DeskPage } from "./page.ts";
import type { TabletDoor } from "./tablet/tablet.ts";
import { TabletSection } from "./tablet/tablet-section.tsx";
import type { DeskArchive } from "./types.ts";

export function IndexPage(props: {
  readonly archive: DeskArchive;
  readonly pages: readonly DeskPage[];
  /** The door for a tablet; undefined where there is none. */
  readonly tablet: TabletDoor | undefined;
}): VNode {
  const sets = needsBySet(props.archive);
  return (
    <>
      <header class="opening">
        <h1>{headline(sets)}</h1>
      </header>
      {props.pages.length > 0 && (
        <section aria-labelledby="to-do">
          <h2 id="to-do">What can be done here</h2>
          <ul class="to-do">
            {props.pages.map(({ name, title, purpose }) => (
              <li>
                <a href={`/desk/${name}`}>{title}</a>
                <p>{purpose}</p>
              </li>
            ))}
          </ul>
        </section>
      )}
      {props.tablet && <TabletSection {...props.tablet} />}
      <section aria-labelledby="sets">
        <h2 id="sets">Set by set</h2>
        {sets.length === 0 ? (
          <p class="empty">There is no tile and no set yet.</p>
        ) : (
          <Sets sets={sets} />
        )}
      </section>
    </>
  );
}

/** `12 tiles wait for a firing, 5 for their result.` */
function headline(sets: readonly SetNeeds[]): string {
  const sum = (need: "firing" | "photograph" | "result") =>
    sets.reduce((all, each) => all + each[need].length, 0);
  const [firing, photograph, result] = [sum("firing"), sum("photograph"), sum("result")];
  const told = [
    firing > 0 && `${count(firing, "tile")} to be fired`,
    photograph > 0 && `${count(photograph, "tile")} to be photographed`,
    result > 0 && `${count(result, "result")} to be written down`,
  ].filter((words) => words !== false);
  return told.length === 0 ? "No tile waits for anything." : `${capital(listed(told))}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const columns = [
  ["tiles", "Tiles"],
  ["firing", "To be fired"],
  ["photograph", "Without a photograph"],
  ["result", "Without a result"],
  ["withoutRecord", "Codes without a record"],
] as const;

function Sets({ sets }: { readonly sets: readonly SetNeeds[] }): VNode {
  return (
    <table class="of-sets">
      <thead>
        <tr>
          <th scope="col">Set</th>
          {columns.map(([, title]) => (
            <th scope="col">{title}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sets.map((needs) => (
          <tr>
            <th scope="row">{needs.set?.record.name ?? "In no set"}</th>
            {columns.map(([key, title]) => (
              <td data-title={title} class={needs[key].length === 0 ? "figures none" : "figures"}>
                {needs[key].length}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
