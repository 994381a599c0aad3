/** A raw material: what it is made of, what to mind, which glazes hold it. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";
import type { CatalogueMaterial } from "../../src/catalogue/mixing/materials.ts";
import type { CarriedMaterial } from "../../src/chemistry/minerals/mineral.ts";
import { presentOxides } from "../../src/terms/oxides.ts";
import { Hazards } from "../mixing/hazards.tsx";
import { Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import { Quotation } from "../parts/notes.tsx";
import { RecordFoot, type RecordFootProps } from "../parts/record-foot.tsx";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { count } from "../words/english/numbers.ts";
import { asAnalysed, asPrice } from "../words/mixing/chemistry.ts";
import { originWords, sourceOfFigures, writeOverWords } from "../words/mixing/material.ts";

export interface MaterialPageProps {
  readonly frame: Frame;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  readonly material: Omit<CatalogueMaterial, "glazes" | "id">;
  readonly sentence: string;
  /** The first glazes that hold it, each with what may never be left out, and how the list goes on. */
  readonly glazes: readonly (Link & { readonly loud: string | null })[];
  readonly turn: Turn;
}

export function MaterialPage(props: MaterialPageProps): VNode {
  const { frame, material, sentence, glazes, turn } = props;
  const { carried, formula, name, price } = material;
  return (
    <Document
      styles="material"
      frame={frame}
      title={name}
      summary={sentence}
      section="glazes"
      kind="entry"
    >
      <header class="opening">
        <h1>{name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <div class="columns">
        <div>
          <Definitions
            of={[
              ["Formula", formula === null ? null : <Formula of={formula} />],
              ["Also called", carried?.tradeNames.join(", ")],
              ["A kilogram costs", price === null ? null : asPrice(price)],
            ]}
          />
          <MadeOf {...props} />
          {material.remarks.map((remark) => (
            <p class="measure">{remark}.</p>
          ))}
          {carried && <Carried of={carried} />}
          <Quotation notes={material.notes} />
        </div>
        <div>
          <Minding frame={frame} cautions={material.warnings} />
          <Hazards root={frame.root} hazards={material.hazards} />
          <h2>Glazes with it</h2>
          {glazes.length === 0 && <p class="empty">No glaze here contains it.</p>}
          <ul class="names-list">
            {glazes.map((glaze) => (
              <li>
                <a href={frame.root + glaze.url}>
                  {glaze.name}
                  {glaze.loud && <span class="loud-words"> {glaze.loud}</span>}
                </a>
              </li>
            ))}
          </ul>
          <TurnPages root={frame.root} turn={turn} many="glazes" />
        </div>
      </div>
      <RecordFoot of={props.foot} />
    </Document>
  );
}

/** Where it comes from, and how many glazes hold it. */
export function materialSentence(material: CatalogueMaterial): string {
  return `${originWords(material)}. In ${count(material.glazes.length, "glaze")} here.`;
}

/** Where carried figures come from, and how to have better ones. */
function Carried({ of }: { readonly of: CarriedMaterial }): VNode {
  return (
    <>
      {of.note && <p class="measure">Note: {of.note}.</p>}
      <p class="quiet measure">{writeOverWords(of)}</p>
      <p class="quiet source">Source: {sourceOfFigures(of)}.</p>
    </>
  );
}

/** What a hundred parts of it come to in the fire. */
function MadeOf({ material: { analysis, whyNoAnalysis } }: MaterialPageProps): VNode {
  if (!analysis) return <p class="measure">{whyNoAnalysis}</p>;
  return (
    <table>
      <caption>Of a hundred parts by weight, raw</caption>
      <tbody>
        {presentOxides(analysis.oxides).map(([oxide, weight]) => (
          <tr>
            <th scope="row">
              <Formula of={oxide} />
            </th>
            <td>{asAnalysed(weight)}</td>
          </tr>
        ))}
        {analysis.fluorine > 0 && (
          <tr>
            <th scope="row">fluorine, of which some stays</th>
            <td>{asAnalysed(analysis.fluorine)}</td>
          </tr>
        )}
        <tr>
          <th scope="row">{analysis.loss < 0 ? "taken up in firing" : "lost in firing"}</th>
          <td>{asAnalysed(Math.abs(analysis.loss))}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Minding(props: { readonly frame: Frame; readonly cautions: readonly string[] }): VNode {
  return (
    <section class="cautions" aria-label="Cautions">
      {props.cautions.map((words) => (
        <div class="caution">
          <p>
            <b>Caution</b> {words}
          </p>
        </div>
      ))}
      <p class="quiet">
        Dry, it is dust. Go by the safety sheet that came with the sack:{" "}
        <a href={`${props.frame.root}care.html#metals`}>care</a>.
      </p>
    </section>
  );
}
