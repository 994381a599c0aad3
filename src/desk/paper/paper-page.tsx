/** Typing up paper: a row a tile, by keyboard alone. */
import type { VNode } from "preact";
import { Hatch } from "../../../templates/drawing/hatch.tsx";
import { count } from "../../../templates/words/english/numbers.ts";
import { type Filed, findById } from "../../records/archive.ts";
import { freeCodes, whyTaken } from "../../records/next-code.ts";
import type { SetRecord } from "../../records/set.ts";
import { compareIds } from "../../terms/ids.ts";
import type { DeskPage } from "../page.ts";
import type { DeskArchive } from "../types.ts";
import { actions } from "./actions.ts";

/** Stands in the address for the tiles of no set: no id begins so. */
const noSet = "~";

export const paperPage: DeskPage = {
  name: "paper",
  title: "Type up paper",
  purpose:
    "Sheets of paper become records: a row a tile, its layers on one line, by keyboard alone.",
  script: "paper",
  actions,
  render(archive, of) {
    if (of === undefined) return <ChooseSet archive={archive} />;
    if (of === noSet) return <Rows archive={archive} set={undefined} />;
    const set = findById(archive.archive.sets, of);
    return set && <Rows archive={archive} set={set} />;
  },
};

function ChooseSet({ archive }: { readonly archive: DeskArchive }): VNode {
  const sets = [...archive.archive.sets.values()].sort((a, b) => compareIds(a.id, b.id));
  return (
    <>
      <header class="opening">
        <h1>Whose sheets are typed up?</h1>
      </header>
      <ul class="to-do">
        {sets.map((set) => (
          <li>
            <a href={`/desk/paper/${encodeURIComponent(set.id)}`}>{set.record.name}</a>
            <p class="quiet">{count(freeOf(archive, set).length, "code")} without a record</p>
          </li>
        ))}
        <li>
          <a href={`/desk/paper/${noSet}`}>Tiles in no set</a>
        </li>
      </ul>
    </>
  );
}

function freeOf({ archive, recordFiles }: DeskArchive, set: Filed<SetRecord>): readonly string[] {
  return freeCodes(set.record, whyTaken(archive, recordFiles, set.id));
}

interface RowsProps {
  readonly archive: DeskArchive;
  readonly set: Filed<SetRecord> | undefined;
}

function Rows({ archive, set }: RowsProps): VNode {
  const codes = set ? freeOf(archive, set) : [];
  return (
    <>
      <Hatch />
      <header class="opening">
        <h1>{set?.record.name ?? "Tiles in no set"}</h1>
        <p class="lede">
          Enter goes on, and at the end of a row writes it. Up and down lead to other rows. Escape
          empties a row that is not written, and brings it back.
        </p>
      </header>
      <noscript>
        <p>
          This page needs JavaScript, which is switched off in this browser. The command “new tile”
          does the same in a terminal.
        </p>
      </noscript>
      <form class="typing" data-set={set?.id ?? ""} data-codes={JSON.stringify(codes)} hidden>
        <p>
          <label>
            Glazed on{" "}
            <input type="text" name="glazed" placeholder="2026-10-14" autocomplete="off" />
          </label>
          <span class="quiet">for all rows below; leave it empty where the sheets do not say</span>
        </p>
        <ol class="rows" />
      </form>
      <Help archive={archive} set={set} />
    </>
  );
}

const examples = [
  ["7 x2; 3 x1 top", "two coats of jar 7, then one of jar 3 at the top"],
  ["soot thin by dip 3s", "a glaze by its name, or as many letters as no other begins with"],
  ["wax motif; wipe raised; fired bisque", "a resist, what was taken off, a firing"],
  ["7 to 3", "two glazes that fade"],
  ['7 rim "two fingers wide"', "own words between quotes"],
  ["like EV-101", "the layers of another tile, to be changed"],
] as const;

function Help({ archive, set }: RowsProps): VNode {
  const jars = Object.entries(set?.record.jars ?? {});
  const nameOf = (id: string) => findById(archive.archive.glazes, id)?.record.name ?? id;
  return (
    <section class="how" aria-labelledby="how">
      <h2 id="how">How layers are written</h2>
      <dl>
        {examples.map(([line, means]) => (
          <div>
            <dt class="code">{line}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
      {jars.length > 0 && (
        <>
          <h2>The jars</h2>
          <ul class="jars">
            {jars.map(([number, glaze]) => (
              <li>
                <span class="code">{number}</span> {nameOf(glaze)}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
