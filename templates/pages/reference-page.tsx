/** How to write a record: every field of every kind, from the words beside its schema. */
import type { VNode } from "preact";
import type { ReferencePage as Reference, ReferenceField } from "../../src/records/reference.ts";
import { Document } from "../parts/document.tsx";
import { Explained } from "../parts/explained.tsx";
import type { Frame } from "../parts/frame.ts";
import { capital } from "../words/english/numbers.ts";

export interface ReferencePageProps {
  readonly frame: Frame;
  readonly reference: readonly Reference[];
}

const sentence = "Every field that a record may have, what it means, and what may stand in it.";

export function ReferencePage({ frame, reference }: ReferencePageProps): VNode {
  return (
    <Document
      styles="reference"
      frame={frame}
      title="How to write a record"
      summary={sentence}
      kind="entry reference"
    >
      <header class="opening">
        <h1>How to write a record</h1>
        <p class="lede">{sentence}</p>
        <p class="measure">
          A record is a text file. What stands between the two lines of dashes are its fields; what
          stands below them is yours to write as you like. Leave out what you do not know.
        </p>
      </header>
      <nav class="way-line" aria-label="On this page">
        <ul>
          {reference.map(({ kind }) => (
            <li>
              <a href={`#${kind}`}>{capital(kind)}</a>
            </li>
          ))}
        </ul>
      </nav>
      {reference.map((page) => (
        <KindOfRecord page={page} />
      ))}
    </Document>
  );
}

function KindOfRecord({ page }: { readonly page: Reference }): VNode {
  return (
    <section id={page.kind}>
      <h2>{capital(page.kind)}</h2>
      <p class="measure">
        {page.sentence} <span class="code">{page.file}</span>
      </p>
      <dl class="fields">
        {page.fields.map((field) => (
          <Field field={field} />
        ))}
      </dl>
    </section>
  );
}

function Field({ field }: { readonly field: ReferenceField }): VNode {
  return (
    <div>
      <dt>
        <span class="code">{field.name}</span>
        {field.required && <span class="quiet"> must be there</span>}
      </dt>
      <dd>
        <Explained words={field.explanation} />
        {field.choices.length > 0 && (
          <p class="choices">
            {field.ownWords ? "Own words, or one of: " : "One of: "}
            {field.choices.join(", ")}
          </p>
        )}
      </dd>
    </div>
  );
}
