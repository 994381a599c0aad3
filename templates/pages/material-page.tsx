/** A raw material: what it is made of, what to mind, which glazes hold it. */
import type { VNode } from "preact";
import type { CatalogueMaterial } from "../../src/catalogue/types.ts";
import { Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import { Quotation } from "../parts/notes.tsx";
import { count } from "../words/numbers.ts";

export interface MaterialPageProps {
  readonly frame: Frame;
  readonly material: CatalogueMaterial;
  readonly notesHtml: string;
}

export function MaterialPage({ frame, material, notesHtml }: MaterialPageProps): VNode {
  const { record, builtIn, glazes, name } = material;
  const origin = builtIn
    ? "A theoretical mineral: the formula of the pure substance, which no sack holds exactly"
    : "A raw material with a record of its own";
  const sentence = `${origin}. In ${count(glazes.length, "glaze")} here.`;
  return (
    <Document frame={frame} title={name} summary={sentence} section="glazes" kind="entry">
      <header class="opening">
        <h1>{name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <div class="columns">
        <div>
          {record.formula && <Definitions of={[["Formula", <Formula of={record.formula} />]]} />}
          {record.analysis && <Analysis analysis={record.analysis} />}
          <Quotation html={notesHtml} />
        </div>
        <div>
          <Minding frame={frame} cautions={record.cautions ?? []} />
          <h2>Glazes with it</h2>
          {glazes.length === 0 && <p class="empty">No glaze here holds it.</p>}
          <ul class="names-list">
            {glazes.map((glaze) => (
              <li>
                <a href={frame.root + glaze.url}>{glaze.name}</a>
              </li>
            ))}
          </ul>
        </div>
      </div>
    </Document>
  );
}

function Analysis({ analysis }: { readonly analysis: Readonly<Record<string, number>> }): VNode {
  return (
    <table>
      <caption>Analysis, per cent by weight</caption>
      <tbody>
        {Object.entries(analysis).map(([oxide, weight]) => (
          <tr>
            <th scope="row">{oxide === "loss" ? "lost in firing" : <Formula of={oxide} />}</th>
            <td>{weight}</td>
          </tr>
        ))}
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
        Dry, it is dust. The safety sheet of the product in the sack decides:{" "}
        <a href={`${props.frame.root}care.html#metals`}>care</a>.
      </p>
    </section>
  );
}
