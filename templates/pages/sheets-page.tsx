/** Sheets of a set, to be printed before glazing: labels, blank notes, a list for the shelf. */
import type { VNode } from "preact";
import { QrCode } from "../drawing/qr-code.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { WrittenCode } from "../parts/written-code.tsx";
import { pageTitle } from "../words/english/turning.ts";
import { aboutSheets, type SheetKind, sheetNames, tileAddressWords } from "../words/site/sheets.ts";

export interface SheetsPageProps {
  readonly frame: Frame;
  readonly what: SheetKind;
  readonly set: { readonly name: string; readonly url: string };
  readonly jars: readonly { readonly jar: string; readonly glaze: string }[];
  readonly codes: readonly SheetCode[];
  readonly turn: Turn;
}

export interface SheetCode {
  readonly code: string;
  /** The whole address of its page, which a QR code holds; null where the studio gives none. */
  readonly address: string | null;
}

export function SheetsPage(props: SheetsPageProps): VNode {
  const { frame, what, set, codes, turn } = props;
  const title = pageTitle(`${sheetNames[what]}: ${set.name}`, turn.here, turn.pages);
  return (
    <Document
      styles="sheets"
      frame={frame}
      title={title}
      summary={aboutSheets[what]}
      section="sets"
      kind="entry sheets"
      scripts={["assets/printing.js"]}
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{aboutSheets[what]}</p>
        <p class="quiet">
          {what === "labels" && `${tileAddressWords(codes)} `}
          Codes of the set <a href={frame.root + set.url}>{set.name}</a>.
        </p>
        <p class="print-place" data-print="Print these sheets" />
      </header>
      {sheetsOf(props)}
      <TurnPages root={frame.root} turn={turn} many="codes" />
    </Document>
  );
}

function sheetsOf({ what, codes, jars }: SheetsPageProps): VNode {
  if (what === "labels") return <Labels codes={codes} />;
  if (what === "shelf") return <ShelfList codes={codes} />;
  return <NotesSheets codes={codes} jars={jars} />;
}

function Labels({ codes }: Pick<SheetsPageProps, "codes">): VNode {
  return (
    <ul class="labels">
      {codes.map(({ code, address }) => (
        <li>
          {address !== null && <QrCode text={address} label={`QR code of ${code}`} />}
          <WrittenCode code={code} />
        </li>
      ))}
    </ul>
  );
}

function ShelfList({ codes }: Pick<SheetsPageProps, "codes">): VNode {
  return (
    <table class="shelf-list">
      <thead>
        <tr>
          <th scope="col">Code</th>
          <th scope="col">Maker</th>
          <th scope="col">Shelf</th>
          <th scope="col">May run</th>
          <th scope="col">Remarks</th>
        </tr>
      </thead>
      <tbody>
        {codes.map(({ code }) => (
          <tr>
            <th scope="row">
              <WrittenCode code={code} />
            </th>
            <td />
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The fields of a record in their order, with room to write. */
function NotesSheets({ codes, jars }: Pick<SheetsPageProps, "codes" | "jars">): VNode {
  const named = jars.map(({ jar, glaze }) => `${jar} ${glaze}`).join(" · ");
  return (
    <ol class="notes-sheets">
      {codes.map(({ code }) => (
        <li>
          <h2>
            <WrittenCode code={code} />
          </h2>
          <p class="write-on">Maker, day</p>
          <p class="write-on">Clay, shape, texture</p>
          <p>Layers, the first at the top: jar, coats, how, where; wax, stencils, firings too</p>
          <div class="rows" />
          <p class="write-on">Last firing, shelf</p>
          <p class="write-on">Surface: gloss satin matte dry</p>
          <p class="write-on">Faults, or none; ran … mm</p>
          <p class="write-on">Again: yes, changed, no</p>
          <p class="write-on tall">Next time</p>
          {named && <p class="jars">Jars: {named}</p>}
        </li>
      ))}
    </ol>
  );
}
