/** From a spreadsheet and the photographs beside it to the tiles in its rows. */
import { isPicture } from "../reader/found-files.ts";
import { renderRecord } from "../reader/render-record.ts";
import { idKey } from "../terms/ids.ts";
import type { Claim, ClaimedPicture } from "./claim.ts";
import { type Column, matchColumns } from "./columns.ts";
import { waysToRead } from "./find-claims.ts";
import { baseOf, type HandedFile, type HandIn, nameOf, type Refusal } from "./hand-in.ts";
import { readSheet, type SheetRow } from "./sheet.ts";
import type { LayersRead, ReadLayers } from "./sheet-layers.ts";
import { numberedLayers, type RowValues, recordOf, valuesOf } from "./sheet-record.ts";

/** How a column was understood: shown before anything is asked. */
export interface MatchedColumn {
  readonly name: string;
  readonly column: Column;
  /** False where no row has anything in it. */
  readonly isFilled: boolean;
}

export interface SheetClaims {
  readonly what: string;
  readonly columns: readonly MatchedColumn[];
  readonly claims: readonly Claim[];
  readonly refusals: readonly Refusal[];
}

/** What the rows of spreadsheets are read with. */
export interface SheetReading {
  /** A sum of a text in letters and digits: what a row without a code is known by. */
  readonly sumOf: (text: string) => string;
  readonly readLayers: ReadLayers;
}

/** The tiles in a spreadsheet's rows. */
export function findSheetClaims(
  handIn: HandIn,
  file: HandedFile,
  { sumOf, readLayers }: SheetReading,
): SheetClaims {
  const what = nameOf(handIn, file.path);
  const sheet = readSheet(file.read());
  if (!sheet.ok) return { what, columns: [], claims: [], refusals: [{ what, why: sheet.why }] };
  const { names, rows } = sheet;
  const columns = matchColumns(names);
  const pictures = handIn.files.filter(({ path }) => isPicture(baseOf(path)));
  const nameless = makeNamer(sumOf);
  const read = rows.map((row) => readRow({ what, row, columns, pictures, nameless, readLayers }));
  return {
    what,
    columns: names.map((name, i) => ({
      name,
      column: columns[i] ?? { holds: "nothing known" },
      isFilled: rows.some(({ cells }) => (cells[i] ?? "") !== ""),
    })),
    claims: read.flatMap((each) => ("stem" in each ? [each] : [])),
    refusals: read.flatMap((each) => ("why" in each ? [each] : [])),
  };
}

/** A word for each row without a code: the same for the same row, another for a second such row. */
function makeNamer(sumOf: (text: string) => string): (cells: readonly string[]) => string {
  const counts = new Map<string, number>();
  return (cells) => {
    const text = JSON.stringify(cells.filter((cell) => cell !== ""));
    const nth = counts.get(text) ?? 0;
    counts.set(text, nth + 1);
    return `no-code-${sumOf(JSON.stringify([text, nth])).slice(0, 8)}`;
  };
}

interface RowToRead {
  readonly what: string;
  readonly row: SheetRow;
  readonly columns: readonly Column[];
  readonly pictures: readonly HandedFile[];
  readonly nameless: (cells: readonly string[]) => string;
  readonly readLayers: ReadLayers;
}

function readRow(toRead: RowToRead): Claim | Refusal {
  const { what, row, columns, pictures, nameless, readLayers } = toRead;
  const from = `${what}, row ${row.number}`;
  const values = valuesOf(row, columns);
  const read = layersOf(values, readLayers);
  if (!read.ok) return { what: from, why: read.why };
  const code = values.fields.get("code");
  const shown = picturesOf(values, code, pictures);
  if ("missing" in shown)
    return {
      what: from,
      why: `There is no photograph “${shown.missing}” beside the spreadsheet. Put it there, or take its name out of the row.`,
    };
  const notes = values.fields.get("notes");
  return {
    from,
    stem: (code ?? nameless(row.cells)).normalize("NFC"),
    set: values.fields.get("set") ?? null,
    text: `${renderRecord(recordOf(values, read.layers))}${notes === undefined ? "" : `${notes}\n`}`,
    pictures: shown.pictures,
  };
}

/** From the one column in short form, or from those with numbers; never from both. */
function layersOf(values: RowValues, readLayers: ReadLayers): LayersRead {
  const line = values.fields.get("layers");
  if (line === undefined) return { ok: true, layers: numberedLayers(values) };
  if (values.layers.length === 0) return readLayers(line, values.fields.get("set") ?? null);
  return {
    ok: false,
    why: "It has layers in one column and in columns with numbers. Leave one of the two empty.",
  };
}

/** The photographs that a row names, or else those that are named after its code. */
function picturesOf(
  { fields }: RowValues,
  code: string | undefined,
  pictures: readonly HandedFile[],
): { readonly pictures: readonly ClaimedPicture[] } | { readonly missing: string } {
  const found: ClaimedPicture[] = [];
  for (const [field, role] of [
    ["photo", "result"],
    ["before", "before"],
  ] as const) {
    const name = fields.get(field);
    if (name === undefined) continue;
    const file = pictures.find(({ path }) => idKey(baseOf(path)) === idKey(baseOf(name)));
    if (!file) return { missing: name };
    const ending = file.path.slice(file.path.lastIndexOf("."));
    found.push({ role, suffix: role === "before" ? `.before${ending}` : ending, file });
  }
  if (code === undefined) return { pictures: found };
  const named = pictures.flatMap((file): ClaimedPicture[] => {
    const way = waysToRead(baseOf(file.path)).find(({ isOf }) => isOf(code));
    const isFound = found.some((each) => each.file === file || each.role === way?.role);
    return way && !isFound ? [{ role: way.role, suffix: way.suffix, file }] : [];
  });
  return { pictures: [...found, ...named] };
}
