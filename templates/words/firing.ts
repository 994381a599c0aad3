/** One kiln load in words. */
import type { FiringRecord, Segment, Witness } from "../../src/records/firing.ts";
import { formatDay, listed } from "./numbers.ts";
import { firingName } from "./steps.ts";

/** `Glaze firing of The Wardrobe, electric, in oxidation, aimed at cone 6, on 18 October 2026.` */
export function loadSentence(record: FiringRecord): string {
  const { kind, kiln, heatedBy, atmosphere, cone, on } = record;
  const told = [
    kiln ? `${firingName(kind)} of ${kiln}` : firingName(kind),
    heatedBy,
    atmosphere && (atmosphere === "neutral" ? "in a neutral fire" : `in ${atmosphere}`),
    cone && `aimed at cone ${cone}`,
    on ? `on ${formatDay(on)}` : "still to come",
  ];
  return `${told.filter(Boolean).join(", ")}.`;
}

/** What a shelf's witness said: `cone 5½`, or how far each cone had bent. */
export function witnessWords(witness: Witness): string {
  if (witness.read === "cone") return `cone ${witness.cone}`;
  return listed([...witness.bends].map(([cone, bend]) => `${cone} ${bend}`));
}

/** `to 1215 °C at 60 °C an hour, held 15 minutes`; the units are those that it was written in. */
export function segmentWords({ to, rate, hold }: Segment, unit: "C" | "F"): string {
  const speed =
    rate === undefined
      ? "as fast as it will go"
      : `at ${Math.abs(rate)} °${unit} an hour${rate < 0 ? ", cooling" : ""}`;
  return `To ${to} °${unit}, ${speed}${hold ? `, held ${hold} minutes` : ""}`;
}
