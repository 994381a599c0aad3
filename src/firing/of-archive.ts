/** What every kiln load of an archive amounts to. */
import type { Archive } from "../records/archive.ts";
import { type FiringHeat, heatOf } from "./of-record.ts";

/** The heat of every firing by `idKey` of its id. Every log is parsed here, once. */
export function heatOfFirings({ firings }: Archive): ReadonlyMap<string, FiringHeat> {
  return new Map(
    [...firings].map(([key, { record, log }]) => [key, heatOf(record, log?.text)] as const),
  );
}
