/** A set: a class, a term, a series of tests. */
import type { VNode } from "preact";
import type { CatalogueSet } from "../../src/catalogue/sets.ts";
import { BlendLayout, type BlendLayoutProps } from "../mixing/blend-layout.tsx";
import { type AskedTable, AskedTables } from "../parts/asked.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Quotation } from "../parts/notes.tsx";
import { SetSquare, type SetSquareView } from "../parts/set-square.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { article, count, formatDay, formatDays } from "../words/english/numbers.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

export interface SetPageProps {
  readonly frame: Frame;
  readonly set: {
    readonly name: string;
    readonly sentence: string;
    readonly notes: string;
    readonly teacher: string | null;
  };
  /** The first of its tiles, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  readonly wall: string | null;
  readonly control: TileEntry | null;
  /** The blends that its tiles show. */
  readonly blends: readonly SetBlend[];
  /** Its glazes laid over each other one by one; null where they were not. */
  readonly square: SetSquareView | null;
  /** What differs among its tiles while the rest is the same. */
  readonly asked: readonly AskedTable[];
  /** Sheets to print for its codes; empty where it has none. */
  readonly sheets: readonly { readonly name: string; readonly url: string }[];
}

/** A blend that a set's tiles show. */
export interface SetBlend {
  readonly name: string;
  readonly url: string;
  /** Null where there is no room for it beside the others. */
  readonly layout: Omit<BlendLayoutProps, "root"> | null;
}

export function SetPage(props: SetPageProps): VNode {
  const { frame, set, turn, control, blends } = props;
  const { sentence } = set;
  return (
    <Document
      styles="set"
      frame={frame}
      title={set.name}
      summary={sentence}
      section="sets"
      kind="entry"
    >
      <header class="opening">
        <h1>{set.name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <Quotation notes={set.notes} by={set.teacher ?? undefined} />
      {control && (
        <p class="measure">
          A twin of <a href={frame.root + control.url}>{control.id}</a> ({control.names}) goes into
          every load: how it looks shows what the kiln did.
        </p>
      )}
      {blends.map(({ name, url, layout }) => (
        <section>
          <h2>{name}</h2>
          {layout && <BlendLayout root={frame.root} {...layout} />}
          <p class="measure">
            <a href={frame.root + url}>
              {layout ? "Each with its formula" : "Laid out in order, each with its formula"}
            </a>
          </p>
        </section>
      ))}
      <Sheets root={frame.root} sheets={props.sheets} />
      {props.square && <SetSquare root={frame.root} square={props.square} />}
      <AskedTables root={frame.root} tables={props.asked} />
      {turn.total === 0 && <p class="empty">No tile of this set is here yet.</p>}
      <PartLine root={frame.root} turn={turn} many="tiles" wall={props.wall} />
      <TileGroups root={frame.root} groups={props.groups} first />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
    </Document>
  );
}

/** `A class, 29 tiles, led by Marit S., 29 September to 8 December 2026.` */
export function setSentence({ kind, tiles, teacher, begins, ends }: CatalogueSet): string {
  const what = kind ?? "set";
  const told = [
    `${article(what)} ${what}`,
    count(tiles.length, "tile"),
    teacher && `led by ${teacher.name}`,
    daysWords(begins, ends),
  ];
  return `${told.filter(Boolean).join(", ")}.`;
}

function daysWords(begins: string | null, ends: string | null): string {
  if (begins && ends) return formatDays(begins, ends);
  return begins ? `from ${formatDay(begins)}` : ends ? `until ${formatDay(ends)}` : "";
}

function Sheets({ root, sheets }: Pick<SetPageProps, "sheets"> & { readonly root: string }) {
  if (sheets.length === 0) return null;
  return (
    <p class="quiet measure screen">
      To print:{" "}
      {sheets.map(({ name, url }, i) => (
        <>
          {i > 0 && ", "}
          <a href={root + url}>{name.toLowerCase()}</a>
        </>
      ))}
      .
    </p>
  );
}
