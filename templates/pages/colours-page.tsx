/** The plate of colours: every measured tile by hue and lightness, as a table that stays one on any screen. */
import type { VNode } from "preact";
import type { ColourPlate } from "../../src/catalogue/colours/colour-plate.ts";
import type { ColourTrust } from "../../src/catalogue/colours/trust.ts";
import type { ColourName } from "../../src/colour/name.ts";
import { ColourSwatch } from "../parts/colour-swatch.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { trustSentence } from "../words/colour/measured.ts";
import {
  bandWords,
  plateCounts,
  plateEmpty,
  plateFoot,
  plateSentence,
  shownWords,
} from "../words/colour/plate.ts";
import { capital, count, listed } from "../words/english/numbers.ts";

/** A tile on the plate. */
export interface PlateMark {
  readonly id: string;
  readonly url: string;
  /** Its glazes by name, top coat first. */
  readonly names: string;
  /** That colour of it that stands here, and what it is called in this row. */
  readonly hex: string;
  readonly name: ColourName;
}

export interface MarkedRow {
  readonly names: ColourPlate["rows"][number]["names"];
  readonly cells: readonly {
    readonly tiles: number;
    readonly marks: readonly PlateMark[];
    readonly centre: string | null;
  }[];
}

export interface ColoursPageProps {
  readonly frame: Frame;
  readonly plate: ColourPlate;
  /** The rows of the plate, with the tiles that are shown. */
  readonly rows: readonly MarkedRow[];
  readonly trust: ColourTrust | null;
}

export function ColoursPage({ frame, plate, rows, trust }: ColoursPageProps): VNode {
  const isEmpty = plate.measured === 0;
  return (
    <Document
      styles="colours"
      frame={frame}
      title="Colours"
      summary={plateSentence}
      section="colours"
      kind="colour-plate"
    >
      <header class="opening">
        <h1>Colours</h1>
        <p class="lede">{isEmpty ? plateEmpty : plateSentence}</p>
        <p class="quiet plate-counts">{plateCounts(plate)}</p>
      </header>
      {!isEmpty && <Plate root={frame.root} rows={rows} />}
      {!isEmpty && (
        <p class="quiet measure plate-foot">
          {plateFoot} {trustSentence(trust)}
        </p>
      )}
    </Document>
  );
}

interface PlateProps {
  readonly root: string;
  readonly rows: readonly MarkedRow[];
}

function Plate({ root, rows }: PlateProps): VNode {
  return (
    <table class="plate-table" aria-label="Tiles by hue and lightness">
      <thead>
        <tr>
          {bandWords.map((word) => (
            <th scope="col">{capital(word)}</th>
          ))}
        </tr>
      </thead>
      {rows.map((row) => (
        <tbody>
          <tr class="hue">
            <th scope="rowgroup" colSpan={bandWords.length}>
              <RowName root={root} names={row.names} />
            </th>
          </tr>
          <tr>
            {row.cells.map((cell, band) => (
              <td>
                <PlateCellMarks
                  root={root}
                  cell={cell}
                  words={`${bandWords[band]} ${listed(
                    row.names.map(({ name }) => name),
                    "or",
                  )}`}
                />
              </td>
            ))}
          </tr>
        </tbody>
      ))}
    </table>
  );
}

/** Each name leads to all tiles of that name on the wall. */
function RowName({ root, names }: { readonly root: string } & Pick<MarkedRow, "names">): VNode {
  return (
    <>
      {names.map(({ name, tiles }) => (
        <a href={`${root}index.html?colour=${name}`}>
          {capital(name)} <small>{count(tiles, "tile")}</small>
        </a>
      ))}
    </>
  );
}

function PlateCellMarks(props: {
  readonly root: string;
  readonly cell: MarkedRow["cells"][number];
  /** `deep blue` */
  readonly words: string;
}): VNode | null {
  const { root, cell, words } = props;
  const { tiles, marks, centre } = cell;
  if (marks.length === 0 || centre === null) return null;
  return (
    <>
      <ul>
        {marks.map((mark) => (
          <li>
            <Mark root={root} mark={mark} />
          </li>
        ))}
      </ul>
      {marks.length < tiles && <p class="shown">{shownWords(marks.length, tiles)}</p>}
      {tiles > 1 && (
        <a class="near-this screen" href={`${root}index.html?near=${centre.slice(1)}`}>
          <ColourSwatch hex={centre} />
          <span>
            nearest to this<span class="unseen">: {words}</span>
          </span>
        </a>
      )}
    </>
  );
}

function Mark({ root, mark }: { readonly root: string; readonly mark: PlateMark }): VNode {
  const { id, url, names, hex, name } = mark;
  const told = [name, names];
  return (
    <a
      class="plate-mark"
      href={root + url}
      aria-label={`${id}: ${told.filter(Boolean).join(", ")}`}
    >
      <ColourSwatch hex={hex} />
      <span class="code">{id}</span>
    </a>
  );
}
