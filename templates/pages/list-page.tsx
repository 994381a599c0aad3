/** A page that lists all records of one kind: glazes, clays, cones, firings, sets. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame, Section } from "../parts/frame.ts";

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
  readonly groups: readonly { readonly title: string; readonly lines: readonly ListLine[] }[];
  /** What would fill the list, where it is empty. */
  readonly empty: string;
}

export function ListPage(props: ListPageProps): VNode {
  const { frame, title, sentence, section, groups, empty } = props;
  const filled = groups.filter((group) => group.lines.length > 0);
  return (
    <Document frame={frame} title={title} summary={sentence} section={section} kind="entry">
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{filled.length > 0 ? sentence : empty}</p>
      </header>
      {filled.map((group) => (
        <section>
          {group.title && <h2>{group.title}</h2>}
          <ul class="index">
            {group.lines.map((line) => (
              <IndexLine root={frame.root} line={line} />
            ))}
          </ul>
        </section>
      ))}
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
