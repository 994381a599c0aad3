/** Raw materials that a recipe may name without a record, each with what it is taken to be. */
import type { VNode } from "preact";
import type { CarriedLine } from "../../src/catalogue/mixing/materials.ts";
import type { Caution } from "../../src/chemistry/cautions/cautions.ts";
import { Hazards } from "../mixing/hazards.tsx";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";
import { makeUpOfMaterial, sourceOfFigures } from "../words/mixing/material.ts";

export interface CarriedPageProps {
  readonly frame: Frame;
  /** Those of this page, by what they do in a glaze. */
  readonly groups: readonly { readonly title: string; readonly items: readonly CarriedLine[] }[];
  readonly turn: Turn;
  /** What is told once for all of them. */
  readonly dust: readonly Caution[];
}

/** Of the materials that have pages of their own. */
export function materialsSentence(materials: number): string {
  return materials > 0
    ? "What the glazes mixed here are made from."
    : "No glaze here is mixed from raw materials yet.";
}

const sentence =
  "A recipe may name any of these by the word in small type or by what it is also called. The figures are those of a pure mineral, of one published sample, or of a type of frit: not those of the bag on your shelf. A record in recipes/materials with the same id and your supplier's own analysis is used instead, in every recipe.";

export function CarriedPage({ frame, groups, turn, dust }: CarriedPageProps): VNode {
  const title = pageTitle("Built in: no record needed", turn.here, turn.pages);
  return (
    <Document
      styles="carried"
      frame={frame}
      title={title}
      summary={sentence}
      section="glazes"
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="measure">{sentence}</p>
        <p class="quiet">
          <a href={`${frame.root}materials/index.html`}>Materials in the glazes here</a>
        </p>
      </header>
      <Hazards root={frame.root} hazards={dust} />
      {groups.map(({ title: role, items }) => (
        <section>
          <h2 class="role">{role}</h2>
          <ul class="carried">
            {items.map((line) => (
              <Carried root={frame.root} line={line} />
            ))}
          </ul>
        </section>
      ))}
      <TurnPages root={frame.root} turn={turn} many="materials" />
    </Document>
  );
}

export function isDust({ code }: Caution): boolean {
  return code === "silica-dust";
}

function Carried({ root, line }: { readonly root: string; readonly line: CarriedLine }): VNode {
  const { material, instead, hazards } = line;
  const { id, name, tradeNames, formula, note } = material;
  return (
    <li id={id}>
      <p>
        <b>{name}</b> <span class="code">{id}</span>
        {tradeNames.length > 0 && <span class="quiet"> also {tradeNames.join(", ")}</span>}
      </p>
      {instead && (
        <p>
          Not used here: the archive has its own, <a href={root + instead.url}>{instead.name}</a>.
        </p>
      )}
      <p>
        {formula !== null && (
          <>
            <Formula of={formula} />:{" "}
          </>
        )}
        {makeUpOfMaterial(line).map(([of, amount], i) => (
          <>
            {i > 0 && ", "}
            <Formula of={of} /> {amount}
          </>
        ))}
      </p>
      {note && <p class="quiet">Note: {note}.</p>}
      {hazards
        .filter((caution) => !isDust(caution))
        .map(({ message, isLoud }) => (
          <p class={isLoud ? "loud-words" : "quiet"}>Caution: {message}.</p>
        ))}
      <p class="quiet source">
        {material.basis === "typical" ? "Typical. " : "Theoretical mineral. "}Source:{" "}
        {sourceOfFigures(material)}.
      </p>
    </li>
  );
}
