/** Laboratory results as rows of data files. */
import type { LeachTest } from "../../records/leach-test.ts";
import type { TileRow } from "./rows.ts";

export function toLeachTests(tests: readonly LeachTest[]): TileRow["leachTests"] {
  return tests.map(({ on, laboratory, method, ware, fired, found, report }) => ({
    on,
    laboratory,
    method,
    ware,
    fired,
    found: found.map(({ element, amount, below, unit }) => ({
      element,
      amount: amount ?? null,
      below: below ?? null,
      unit,
    })),
    report: report ?? null,
  }));
}
