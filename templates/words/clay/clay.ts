/** What a clay is, in words and figures. */

import type { CatalogueClay } from "../../../src/catalogue/clays.ts";
import { capital } from "../english/numbers.ts";
import { coneRangeWords } from "../firing/cones.ts";

/** `Warm buff, for cones 5–7.` */
export function claySentence({ colour, cones, reclaim }: CatalogueClay): string {
  const told = [
    colour,
    cones && `for ${coneRangeWords(cones)}`,
    reclaim && "reclaimed: fire it as low as the studio’s lowest-firing clay",
  ];
  return `${capital(told.filter(Boolean).join(", ") || "Nothing more is recorded of this clay")}.`;
}

export function clayFacts({
  expansion,
  absorption,
}: CatalogueClay): readonly (readonly [string, string])[] {
  const range = expansion?.between ? `, between ${expansion.between.join(" and ")} °C` : "";
  return [
    ["Expansion", expansion ? `${expansion.mean} × 10⁻⁶/°C${range}` : ""],
    ["Absorption", absorption === null ? "" : `${absorption} %`],
  ];
}
