/** Raw materials: those in the glazes here, and all that a recipe may name without a record. */
import type { VNode } from "preact";
import type { CarriedLine } from "../../src/catalogue/mixing/materials.ts";
import type { Caution } from "../../src/chemistry/cautions/cautions.ts";
import { Hazards } from "../mixing/hazards.tsx";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import { makeUpOfMaterial, sourceOfFigures } from "../words/mixing/material.ts";
import { IndexLine, type ListLine } from "./list-page.tsx";

export interface MaterialsPageProps {
  readonly frame: Frame;
  /** Those with pages of their own. */
  readonly lines: readonly ListLine[];
  readonly carried: readonly CarriedLine[];
}

export function MaterialsPage({ frame, lines, carried }: MaterialsPageProps): VNode {
  const sentence =
    lines.length > 0
      ? "What the glazes mixed here are made from, and what a recipe may name without a record."
      : "No glaze here is mixed from raw materials yet. A recipe may name any of these.";
  return (
    <Document frame={frame} title="Materials" summary={sentence} section="glazes" kind="entry">
      <header class="opening">
        <h1>Materials</h1>
        <p class="lede">{sentence}</p>
      </header>
      {lines.length > 0 && (
        <section>
          <h2>In this archive</h2>
          <ul class="index">
            {lines.map((line) => (
              <IndexLine root={frame.root} line={line} />
            ))}
          </ul>
        </section>
      )}
      <AllCarried frame={frame} carried={carried} />
    </Document>
  );
}

type CarriedProps = Pick<MaterialsPageProps, "carried" | "frame">;

function AllCarried({ frame, carried }: CarriedProps): VNode {
  const roles = [...new Set(carried.map(({ material }) => material.role))];
  return (
    <section id="carried">
      <h2>Built in: no record needed</h2>
      <p class="measure">
        A recipe may name any of these by the word in small type or by what it is also called. The
        figures are those of a pure mineral, of one published sample, or of a type of frit: not
        those of the bag on your shelf. A record in recipes/materials with the same id and your
        supplier's own analysis is used instead, in every recipe.
      </p>
      <Hazards root={frame.root} hazards={dustOf(carried)} />
      {roles.map((role) => (
        <>
          <h3 class="role">{role}</h3>
          <ul class="carried">
            {carried
              .filter(({ material }) => material.role === role)
              .map((line) => (
                <Carried root={frame.root} line={line} />
              ))}
          </ul>
        </>
      ))}
    </section>
  );
}

/** The dust of silica is told once for all of them. */
function dustOf(carried: readonly CarriedLine[]): readonly Caution[] {
  const dust = carried.flatMap(({ hazards }) => hazards.filter(isDust));
  return dust.slice(0, 1);
}

function isDust({ code }: Caution): boolean {
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
