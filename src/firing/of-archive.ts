/** What every kiln load of an archive amounts to. */
import type { Archive, Firing } from "../records/archive.ts";
import { type LogReading, parseLog } from "./log.ts";
import { type FiringHeat, heatOf, unitOf } from "./of-record.ts";

/** The heat of every firing by `idKey` of its id. Every log is parsed here, once. */
export function heatOfFirings({ firings }: Archive): ReadonlyMap<string, FiringHeat> {
  return new Map(
    [...firings].map(([key, { record, log }]) => [key, heatOf(record, readLog(record, log))]),
  );
}

function readLog({ logUnit }: Firing["record"], log: Firing["log"]): LogReading | undefined {
  return log === null ? undefined : parseLog(log.text, unitOf(logUnit));
}
