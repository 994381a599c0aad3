/** The book of a set: a sheet a tile, with a cover and contents, to be printed or read through. */
import type { VNode } from "preact";
import { LayerDrawing } from "../drawing/layer-drawing.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { renderNotes } from "../parts/markdown.ts";
import { Caution } from "../parts/notes.tsx";
import { Photograph, SmallPhotograph } from "../parts/photograph.tsx";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { photographAlt } from "../words/site/book.ts";
import type { Block, Leaf, LeafHead } from "./book-leaf.ts";

export interface BookPageProps {
  readonly frame: Frame;
  readonly title: string;
  readonly sentence: string;
  readonly set: { readonly name: string; readonly url: string };
  readonly leaves: readonly Leaf[];
  readonly turn: Turn;
}

export function BookPage({ frame, title, sentence, set, leaves, turn }: BookPageProps): VNode {
  const { root } = frame;
  return (
    <Document
      styles="book"
      frame={frame}
      title={title}
      summary={sentence}
      section="sets"
      kind="entry book"
      scripts={["assets/printing.js"]}
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="quiet">
          {sentence} Of the set <a href={root + set.url}>{set.name}</a>.
        </p>
        <p class="print-place" data-print="Print this book" />
      </header>
      {leaves.map((leaf) => (
        <section class="leaf" id={`p-${leaf.number}`}>
          <Head root={root} head={leaf.head} />
          {together(leaf.blocks).map((blocks) => (
            <Blocks root={root} blocks={blocks} />
          ))}
          {leaf.head.what !== "cover" && <p class="leaf-number code">{leaf.number}</p>}
        </section>
      ))}
      <TurnPages root={root} turn={turn} many="sheets" />
    </Document>
  );
}

function Head({ root, head }: { readonly root: string; readonly head: LeafHead }): VNode {
  if (head.what === "title") return <h2>{head.title}</h2>;
  if (head.what === "cover")
    return (
      <>
        <h2 class="book-title">{head.title}</h2>
        <ul class="cover-tiles">
          {head.tiles.map(
            ({ picture }) =>
              picture && (
                <li>
                  <SmallPhotograph root={root} picture={picture} turn="soon" />
                </li>
              ),
          )}
        </ul>
      </>
    );
  return <TileHead root={root} {...head} />;
}

function TileHead(props: Extract<LeafHead, { what: "tile" }> & { readonly root: string }): VNode {
  const { root, code, url, names, sentence, picture, view, key, steps } = props;
  return (
    <div class={picture ? "leaf-head" : "leaf-head bare"}>
      {picture && (
        <Photograph
          root={root}
          picture={picture}
          sizes="(min-width: 40rem) 21rem, 90vw"
          alt={picture.alt ?? photographAlt(code, names)}
          turn="soon"
        />
      )}
      <div>
        <p class="code plate-number">
          <a href={root + url}>{code}</a>
        </p>
        <h2>{names}</h2>
        <p class="quiet">{sentence}</p>
        <LayerDrawing view={view} large />
        {steps.length > 0 && (
          <ol class="leaf-steps">
            {steps.map((words) => (
              <li>{words}</li>
            ))}
          </ol>
        )}
        {key && <p class="quiet">{key}</p>}
      </div>
    </div>
  );
}

/** Blocks of one kind in a row are one list, or one quotation. */
function together(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const runs: Block[][] = [];
  for (const block of blocks) {
    const last = runs.at(-1);
    if (last?.[0]?.what === block.what) last.push(block);
    else runs.push([block]);
  }
  return runs;
}

function Blocks(props: { readonly root: string; readonly blocks: readonly Block[] }): VNode | null {
  const { root, blocks } = props;
  const [first] = blocks;
  if (first?.what === "step")
    return (
      <ol class="leaf-steps" start={first.nth}>
        {blocks.map((block) => block.what === "step" && <li>{block.words}</li>)}
      </ol>
    );
  if (first?.what === "said") return <Said blocks={blocks} by={first.by} />;
  if (first?.what === "line")
    return (
      <ol class="contents">
        {blocks.map((block) => block.what === "line" && <Line root={root} {...block.line} />)}
      </ol>
    );
  return (
    <>
      {blocks.map((block) => {
        if (block.what === "caution") return <Caution note={block.note} />;
        if (block.what !== "fact") return null;
        return (
          <p class="leaf-fact">
            {block.name && <b>{block.name}</b>} {block.words}
          </p>
        );
      })}
    </>
  );
}

function Said({ blocks, by }: { readonly blocks: readonly Block[]; readonly by: string | null }) {
  const words = blocks.flatMap((block) => (block.what === "said" ? block.words : []));
  const html = renderNotes(words.join("\n\n"));
  return (
    <figure class="quotation">
      <blockquote dangerouslySetInnerHTML={{ __html: html }} />
      {by && <figcaption>{by}</figcaption>}
    </figure>
  );
}

function Line(props: Extract<Block, { what: "line" }>["line"] & { readonly root: string }): VNode {
  const { root, code, names, page, url } = props;
  return (
    <li>
      <a href={root + url}>
        <span class="code">{code}</span> {names}
      </a>
      <span class="code">{page}</span>
    </li>
  );
}
