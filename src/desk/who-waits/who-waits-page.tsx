/** Who waits: for the teacher alone, since it names makers; made to be printed. */
import type { VNode } from "preact";
import { count } from "../../../templates/words/english/numbers.ts";
import { findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import type { DeskPage } from "../page.ts";
import type { DeskArchive } from "../types.ts";
import { type WaitingGroup, type WaitingTile, waitingByMaker, waitingBySet } from "./groups.ts";

export const whoWaitsPage: DeskPage = {
  name: "who-waits",
  title: "Who waits",
  purpose:
    "Tiles to be fired, photographed or written down, by maker and by set, and codes without a record: a list to print.",
  script: "who-waits",
  render(archive, of) {
    if (of === undefined) return <EverySet archive={archive} />;
    const set = findById(archive.archive.sets, of);
    return set && <OneSet archive={archive} id={set.id} name={set.record.name} />;
  },
};

function EverySet({ archive }: { readonly archive: DeskArchive }): VNode {
  const sets = waitingBySet(archive);
  const makers = waitingByMaker(archive, [...archive.archive.tiles.values()]);
  return (
    <>
      <Opening title="Who waits" isEmpty={sets.length === 0} />
      <Groups title="Set by set" groups={sets} isOfSets={true} />
      <Groups title="Maker by maker" groups={makers} />
    </>
  );
}

interface OneSetProps {
  readonly archive: DeskArchive;
  readonly id: string;
  readonly name: string;
}

function OneSet({ archive, id, name }: OneSetProps): VNode {
  const tiles = [...archive.archive.tiles.values()];
  const own = tiles.filter(({ set }) => set !== null && idKey(set) === idKey(id));
  const makers = waitingByMaker(archive, own);
  const whole = waitingBySet(archive).find((group) => group.id === id);
  return (
    <>
      <Opening title={`${name}: who waits`} isEmpty={whole === undefined} />
      <Groups title="Maker by maker" groups={makers} />
      {whole && whole.withoutRecord.length > 0 && (
        <section aria-labelledby="free">
          <h2 id="free">{count(whole.withoutRecord.length, "code")} without a record</h2>
          <p class="codes code">{whole.withoutRecord.join(", ")}</p>
        </section>
      )}
    </>
  );
}

function Opening(props: { readonly title: string; readonly isEmpty: boolean }): VNode {
  return (
    <header class="opening">
      <h1>{props.title}</h1>
      <p class="lede">
        {props.isEmpty
          ? "No tile waits for anything."
          : "This list names makers: it is for whoever runs the kiln, and not for the wall."}
      </p>
      <div class="print-place" data-print="Print this list" />
    </header>
  );
}

interface GroupsProps {
  readonly title: string;
  readonly groups: readonly WaitingGroup[];
  readonly isOfSets?: boolean;
}

function Groups({ title, groups, isOfSets = false }: GroupsProps): VNode | null {
  if (groups.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul class="groups">
        {groups.map((group) => (
          <li>
            <h3>
              {isOfSets && group.id !== "" ? (
                <a href={`/desk/who-waits/${encodeURIComponent(group.id)}`}>{group.name}</a>
              ) : (
                group.name
              )}
              {!isOfSets && group.id !== "" && (
                <span class="code">{group.name === "" ? group.id : ` ${group.id}`}</span>
              )}
            </h3>
            <dl>
              <Waiting words="To be fired" tiles={group.firing} />
              <Waiting words="Without a photograph" tiles={group.photograph} />
              <Waiting words="Without a result" tiles={group.result} />
              <Waiting
                words="Codes without a record"
                tiles={group.withoutRecord.map((code) => ({ code, page: null }))}
              />
            </dl>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Waiting(props: {
  readonly words: string;
  readonly tiles: readonly WaitingTile[];
}): VNode | null {
  const { words, tiles } = props;
  if (tiles.length === 0) return null;
  return (
    <div>
      <dt>
        {words}: {tiles.length}
      </dt>
      <dd class="codes">
        {tiles.map(({ code, page }, i) => (
          <>
            {i > 0 && " "}
            <span class="code">{page === null ? code : <a href={page}>{code}</a>}</span>
          </>
        ))}
      </dd>
    </div>
  );
}
