/** Every tile in all that was handed in. */
import type { Claim } from "./claim.ts";
import { findClaims, type Known } from "./find-claims.ts";
import { baseOf, type HandIn, type Refusal } from "./hand-in.ts";
import { findSheetClaims, type SheetClaims, type SheetReading } from "./sheet-claims.ts";

export interface AllClaims {
  readonly claims: readonly Claim[];
  readonly refusals: readonly Refusal[];
  /** The spreadsheets among them, with what their columns were taken for. */
  readonly sheets: readonly SheetClaims[];
}

export function findAllClaims(
  handIns: readonly HandIn[],
  known: Known,
  reading: SheetReading,
): AllClaims {
  const all = handIns.map((handIn) => claimsOf(handIn, known, reading));
  return {
    claims: all.flatMap(({ claims }) => claims),
    refusals: all.flatMap(({ refusals }) => refusals),
    sheets: all.flatMap(({ sheets }) => sheets),
  };
}

function claimsOf(handIn: HandIn, known: Known, reading: SheetReading): AllClaims {
  const sheets = handIn.files
    .filter(({ path }) => /\.(csv|tsv)$/iu.test(baseOf(path)))
    .map((file) => findSheetClaims(handIn, file, reading));
  const used = new Set(
    sheets.flatMap(({ claims }) => claims.flatMap(({ pictures }) => pictures.map((p) => p.file))),
  );
  // What a row has is no other tile's.
  const rest = { ...handIn, files: handIn.files.filter((file) => !used.has(file)) };
  const found = findClaims(rest, known);
  const isEmpty = handIn.name !== "" && handIn.files.length === 0;
  return {
    claims: [...sheets.flatMap(({ claims }) => claims), ...found.claims],
    refusals: [
      ...sheets.flatMap(({ refusals }) => refusals),
      ...found.refusals,
      ...(isEmpty ? [{ what: handIn.name, why: "There is no tile in it." }] : []),
    ],
    sheets,
  };
}
