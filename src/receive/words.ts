/** A plan of receiving in plain words, a line for each thing that will be done or not. */

import { count, listed } from "../../templates/words/english/numbers.ts";
import { stepWords } from "../../templates/words/tile/steps.ts";
import type { Trace } from "../photos/traces/trace.ts";
import type { Archive } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import type { FieldDifference } from "./compare-fields.ts";
import { baseOf, type Refusal } from "./hand-in.ts";
import type { Addition, AlreadyHere, NewTile } from "./outcomes.ts";
import type { SettledPicture } from "./settled.ts";
import type { SheetClaims } from "./sheet-claims.ts";

/** How the columns of a spreadsheet were understood. */
export function tellSheet({ what, columns }: Pick<SheetClaims, "what" | "columns">): string[] {
  if (columns.length === 0) return [];
  const told = columns.flatMap(({ name, column, isFilled }) => {
    const called = name === "" ? "a column without a name" : `“${name}”`;
    if (column.holds === "field") return `  ${called} is ${column.field}`;
    if (column.holds === "layer") return `  ${called} is ${column.part} ${column.nth}`;
    if (!isFilled) return [];
    return column.holds === "the same again"
      ? `  ${called} is left out: another column holds the same already`
      : `  ${called} is left out: Tilebook knows no such column`;
  });
  return [`The columns of ${what}:`, ...told, ""];
}

/**
 * The tiles that are new.
 *
 * @param archive as it would be with them
 */
export function tellNewTiles(tiles: readonly NewTile[], archive: Archive): string[] {
  if (tiles.length === 0) return [];
  return [
    `${count(tiles.length, "new tile")}:`,
    ...tiles.flatMap((tile) => tellNew(tile, archive)),
    "",
  ];
}

function tellNew(tile: NewTile, { tiles, glazes }: Archive): string[] {
  const read = findById(tiles, tile.code);
  const nameOf = (id: string) => findById(glazes, id)?.record.name ?? id;
  const layers = (read?.steps ?? []).map((step) => stepWords(step, nameOf));
  const where = tile.set === null ? "into no set" : `into ${tile.set}`;
  const why = tile.isWithoutCode ? ["It came without a code."] : tile.why;
  return [
    `  ${tile.code}, ${where}, from ${tile.from}`,
    ...why.map((words) => `    ${words}`),
    `    ${layers.join("; ") || "no layers"}`,
    ...tile.pictures.map((picture) => `    ${tellPicture(picture, nameIn(tile, picture))}`),
  ];
}

function nameIn({ files, pictures }: NewTile, picture: SettledPicture): string {
  return baseOf(files[pictures.indexOf(picture) + 1]?.path ?? picture.name);
}

const roles: Readonly<Record<SettledPicture["role"], string>> = {
  back: "photograph of the back",
  before: "photograph before firing",
  detail: "photograph of a detail",
  result: "photograph",
};

const gone: Readonly<Record<Trace, string>> = {
  device: "device",
  notes: "notes",
  owner: "owner",
  place: "place",
  serial: "serial number",
};

function tellPicture({ role, removed }: SettledPicture, name: string): string {
  const without =
    removed.length > 0 ? `, without the ${listed(removed.map((trace) => gone[trace]))} in it` : "";
  return `${roles[role]} ${name}${without}`;
}

/** What a tile of the archive would gain. */
export function tellAddition(addition: Addition): string[] {
  const { tile, from, fields, notes, pictures, refused } = addition;
  const added = [
    ...fields.map((field) => `  + ${pathWords(field)}: ${valueWords(field)}`),
    ...notes.split("\n").flatMap((line) => (line === "" ? [] : `  + notes: ${line}`)),
    ...pictures.map(({ file, picture }) => `  + ${tellPicture(picture, baseOf(file.path))}`),
  ];
  return [
    `${tile} is in the archive. From ${from}:`,
    ...(added.length > 0 ? added : ["  nothing is new"]),
    ...refused.map((why) => `  not taken: ${why}`),
  ];
}

/** What of a tile of the archive would change. */
export function tellChanges({ tile, changes }: Addition): string[] {
  return [
    `What was handed in and the archive do not agree about ${tile}:`,
    ...changes.map(
      (change) =>
        `  ${pathWords(change)}: the archive says ${change.was}, what was handed in says ${valueWords(change)}`,
    ),
  ];
}

/** `result › faults`; of several, their number as people count: `later 2 › on`. */
function pathWords({ path }: FieldDifference): string {
  const words: string[] = [];
  for (const step of path) {
    if (typeof step === "string") words.push(step);
    else if (step > 0 || path[0] === "later") words.push(`${words.pop()} ${step + 1}`);
  }
  return words.join(" › ");
}

function valueWords({ value }: FieldDifference): string {
  return typeof value === "string" ? value : value.join(", ");
}

/** What is here already. */
export function tellHere(here: readonly AlreadyHere[]): string[] {
  if (here.length === 0) return [];
  return ["Already here:", ...here.map(({ from, as }) => `  ${from} is ${as}`), ""];
}

/** What is not taken. */
export function tellRefusals(refusals: readonly Refusal[]): string[] {
  if (refusals.length === 0) return [];
  return ["Not taken:", ...refusals.flatMap(({ what, why }) => [`  ${what}`, `    ${why}`]), ""];
}
