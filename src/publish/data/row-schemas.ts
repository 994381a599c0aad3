/** What a row of each JSON file is, by the file's name. */
import * as rows from "./rows.ts";

export const rowSchemas = {
  tiles: rows.tileRow,
  glazes: rows.glazeRow,
  firings: rows.firingRow,
  clays: rows.clayRow,
  materials: rows.materialRow,
  sets: rows.setRow,
  grid: rows.pairRow,
};
