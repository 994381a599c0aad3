/** Firings of a catalogue, as pages are given them, from records as the archive reads them. */

import type { CatalogueFiring } from "../../../src/catalogue/kilns/firings.ts";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { heatOfFirings } from "../../../src/firing/of-archive.ts";
import type { Firing } from "../../../src/records/archive.ts";
import { firingSchema } from "../../../src/records/firing.ts";
import { archive, firing } from "../../checks/support.ts";

export type Fields = Readonly<Record<string, unknown>>;

/** A load as the archive reads it: every scalar is text. */
export function load(id: string, fields: Fields, log?: string): Firing {
  const record = firingSchema.parse({ kind: "glaze", ...fields });
  const file = `tiles/firings/${id}.csv`;
  return { ...firing(id, record), log: log === undefined ? null : { file, text: log } };
}

/** The catalogue of some loads, and of whatever else is given. */
export function catalogueOf(
  firings: readonly Firing[],
  parts: Omit<Parameters<typeof archive>[0], "firings"> = {},
): Catalogue {
  const whole = archive({ ...parts, firings });
  return makeCatalogue(whole, {
    pictures: new Map(),
    chemistry: new Map(),
    heats: heatOfFirings(whole),
    notes: new Map(),
    builtInMaterials: [],
  });
}

export function firingOf(fields: Fields, log?: string): CatalogueFiring {
  const [only] = catalogueOf([load("g-1", fields, log)]).firings;
  if (!only) throw new Error("no firing");
  return only;
}

export const coneSix = [
  { to: "1100", rate: "150" },
  { to: "1210", rate: "60", hold: "15" },
];

/** A climb at 60 °C an hour to a peak, and a fall at 300. */
export function logTo(peak: number): string {
  const steps = Math.round((peak - 20) / 5);
  const rows = [
    ...Array.from({ length: steps + 1 }, (_, i) => [i * 5, 20 + i * 5]),
    ...Array.from({ length: 200 }, (_, i) => [steps * 5 + i + 1, peak - (i + 1) * 5]),
  ];
  return ["minutes,°C", ...rows.map((row) => row.join(","))].join("\n");
}
