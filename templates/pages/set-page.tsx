/** A set: a class, a term, a series of tests. */
import type { VNode } from "preact";
import type { CatalogueSet } from "../../src/catalogue/sets.ts";
import { setCollection } from "../linked/things.ts";
import { trailTo } from "../linked/trail.ts";
import { BlendLayout, type BlendLayoutProps } from "../mixing/blend-layout.tsx";
import { type AskedTable, AskedTables } from "../parts/asked.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import { type LessonList, Lessons } from "../parts/found-out.tsx";
import type { Frame } from "../parts/frame.ts";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { Quotation } from "../parts/notes.tsx";
import { RecordFoot, type RecordFootProps } from "../parts/record-foot.tsx";
import { SetSquare, type SetSquareView } from "../parts/set-square.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { article, count, formatDay, formatDays } from "../words/english/numbers.ts";
import { foundOutTitle } from "../words/tile/found-out.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

export interface SetPageProps {
  readonly frame: Frame;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  readonly set: {
    readonly id: string;
    readonly name: string;
    readonly sentence: string;
    readonly notes: string;
    readonly teacher: string | null;
  };
  /** The first of its tiles, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  readonly wall: string | null;
  /** The first photograph of its tiles. */
  readonly lead: LeadPicture | null;
  readonly control: TileEntry | null;
  /** The blends that its tiles show. */
  readonly blends: readonly SetBlend[];
  /** Its glazes laid over each other one by one; null where they were not. */
  readonly square: SetSquareView | null;
  /** What differs among its tiles while the rest is the same. */
  readonly asked: readonly AskedTable[];
  /** What its makers found out; null where nobody has said anything yet. */
  readonly foundOut: {
    readonly sentence: string;
    readonly lessons: readonly LessonList[];
    /** The page that has all of it; null where this is all. */
    readonly all: { readonly url: string; readonly lines: number } | null;
  } | null;
  /** Where its glazes are on the grid; null where none lies on another. */
  readonly grid: { readonly cone: string; readonly url: string } | null;
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
      lead={props.lead}
      linked={[
        setCollection(frame, { ...set, tiles: turn.total }, props.lead),
        trailTo(frame, "sets", set.name),
      ]}
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
      <SetBlends root={frame.root} blends={blends} />
      <Sheets root={frame.root} sheets={props.sheets} />
      <ElsewhereHere root={frame.root} {...props} />
      {frame.form !== null && (
        <p class="quiet measure screen">
          <a href={`${frame.root}${frame.form}?set=${encodeURIComponent(set.id)}`}>
            Add a tile to this set
          </a>
        </p>
      )}
      {props.square && <SetSquare root={frame.root} square={props.square} />}
      <AskedTables root={frame.root} tables={props.asked} />
      {props.foundOut && <FoundOut root={frame.root} found={props.foundOut} />}
      {turn.total === 0 && <p class="empty">No tile of this set is here yet.</p>}
      <PartLine root={frame.root} turn={turn} many="tiles" wall={props.wall} />
      <TileGroups root={frame.root} groups={props.groups} first />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
      <RecordFoot of={props.foot} />
    </Document>
  );
}

function SetBlends(props: { readonly root: string; readonly blends: readonly SetBlend[] }): VNode {
  const { root, blends } = props;
  return (
    <>
      {blends.map(({ name, url, layout }) => (
        <section>
          <h2>{name}</h2>
          {layout && <BlendLayout root={root} {...layout} />}
          <p class="measure">
            <a href={root + url}>
              {layout ? "Each with its formula" : "Laid out in order, each with its formula"}
            </a>
          </p>
        </section>
      ))}
    </>
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

/** The same tiles where they can be narrowed down, and where its glazes meet. */
function ElsewhereHere({ root, wall, grid, turn }: SetPageProps & { readonly root: string }) {
  if (turn.total === 0) return null;
  return (
    <p class="quiet measure screen">
      Narrow its tiles down <a href={`${root}index.html?${wall}`}>on the wall</a>
      {grid && (
        <>
          {" "}
          or see <a href={root + grid.url}>the grid of glazes at cone {grid.cone}</a>
        </>
      )}
      .
    </p>
  );
}

function FoundOut(props: {
  readonly root: string;
  readonly found: NonNullable<SetPageProps["foundOut"]>;
}): VNode {
  const { root, found } = props;
  return (
    <section class="found-by-set">
      <h2>{foundOutTitle}</h2>
      <p class="measure">{found.sentence}</p>
      <Lessons root={root} lessons={found.lessons} />
      {found.all && (
        <p class="measure">
          <a href={root + found.all.url}>All {found.all.lines} lines of what it found out</a>
        </p>
      )}
    </section>
  );
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
