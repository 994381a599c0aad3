/** What somebody wrote, set as a quotation, and what a reader should mind. */
import type { VNode } from "preact";
import type { Note } from "../../src/catalogue/findings.ts";
import { renderNotes } from "./markdown.ts";

/** A contributor's own words, as they were written below a record's front matter. */
export function Quotation({
  notes,
  by,
}: {
  readonly notes: string;
  readonly by?: string | null | undefined;
}): VNode | null {
  const html = renderNotes(notes);
  if (html.trim() === "") return null;
  return (
    <figure class="quotation">
      <blockquote dangerouslySetInnerHTML={{ __html: html }} />
      {by && <figcaption>{by}</figcaption>}
    </figure>
  );
}

/** Practice notes and loud cautions that belong to a record. */
export function Cautions({ notes }: { readonly notes: readonly Note[] }): VNode | null {
  if (notes.length === 0) return null;
  return (
    <section class="cautions" aria-label="Cautions">
      {notes.map((note) => (
        <Caution note={note} />
      ))}
    </section>
  );
}

/** One of them. */
export function Caution({ note }: { readonly note: Note }): VNode {
  return (
    <div class={note.severity === "error" ? "caution loud" : "caution"}>
      <p>
        <b>{note.severity === "error" ? "Caution" : "Practice"}</b> {sentence(note.message)}
      </p>
      {note.hint && <p class="quiet">{sentence(note.hint)}</p>}
    </div>
  );
}

function sentence(text: string): string {
  return /[.!?]\)?$/u.test(text) ? text : `${text}.`;
}
