/** A page that lists all records of one kind: glazes, clays, cones, firings, sets. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Section } from "../parts/sections.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface ListLine {
  readonly name: string;
  readonly url: string;
  /** What it is, in a few words. */
  readonly told: string;
  /** In mono where the name is a code or a cone. */
  readonly code?: boolean;
  /** A glaze's measured colour; null where there is none, left out where none is expected. */
  readonly colour?: string | null;
}

export interface ListPageProps {
  readonly frame: Frame;
  readonly title: string;
  readonly sentence: string;
  readonly section?: Section | undefined;
  /** What is listed: `glazes`. */
  readonly many: string;
  /** The lines of this page of the list. */
  readonly groups: readonly { readonly title: string; readonly items: readonly ListLine[] }[];
  readonly turn: Turn;
  /** What would fill the list, where it is empty. */
  readonly empty: string;
  /** Another list that a reader of this one may be looking for. */
  readonly seeAlso?: { readonly url: string; readonly words: string };
}

export function ListPage(props: ListPageProps): VNode {
  const { frame, sentence, section, many, groups, turn, empty } = props;
  const title = pageTitle(props.title, turn.here, turn.pages);
  return (
    <Document
      styles="list"
      frame={frame}
      title={title}
      summary={sentence}
      section={section}
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{turn.total > 0 ? sentence : empty}</p>
        {props.seeAlso && (
          <p class="quiet">
            <a href={frame.root + props.seeAlso.url}>{props.seeAlso.words}</a>
          </p>
        )}
      </header>
      {groups.map((group) => (
        <section>
          {group.title && <h2>{group.title}</h2>}
          <ul class="index">
            {group.items.map((line) => (
              <IndexLine root={frame.root} line={line} />
            ))}
          </ul>
        </section>
      ))}
      <TurnPages root={frame.root} turn={turn} many={many} />
    </Document>
  );
}

export function IndexLine({
  root,
  line,
}: {
  readonly root: string;
  readonly line: ListLine;
}): VNode {
  const { name, url, told, code, colour } = line;
  return (
    <li>
      <a href={root + url}>
        {colour !== undefined && (
          <svg class="dab" viewBox="0 0 24 24" aria-hidden="true">
            <rect width="24" height="24" fill={colour ?? "url(#hatch)"} />
          </svg>
        )}
        <span class={code ? "code" : "name"}>{name}</span>
        <span class="told">{told}</span>
      </a>
    </li>
  );
}
