/** One kiln load in words. */
import type { FiringFacts } from "../../../src/catalogue/kilns/firings.ts";
import type { Witness } from "../../../src/records/firing.ts";
import { compareCones } from "../../../src/terms/cones.ts";
import { formatDay, listed } from "../english/numbers.ts";
import { firingName } from "../tile/steps.ts";

/** `Glaze firing of The Wardrobe, electric, in oxidation, aimed at cone 6, on 18 October 2026.` */
export function loadSentence(firing: FiringFacts): string {
  const { kind, kilnName, heatedBy, atmosphere, cone, on } = firing;
  const told = [
    kilnName ? `${firingName(kind)} of ${kilnName}` : firingName(kind),
    heatedBy,
    atmosphere && (atmosphere === "neutral" ? "in a neutral atmosphere" : `in ${atmosphere}`),
    cone && `aimed at cone ${cone}`,
    on ? `on ${formatDay(on)}` : "still to come",
  ];
  return `${told.filter(Boolean).join(", ")}.`;
}

/** What a photograph shows of tiles that were in another glaze firing since. */
export function firedAgainSentence(codes: readonly string[]): string | null {
  if (codes.length === 0) return null;
  const were = codes.length === 1 ? "was" : "were";
  return `${listed(codes)} ${were} fired again since: the photograph shows what came of that.`;
}

/** What a shelf's witness said: `cone 5½`, or how far each cone had bent. */
export function witnessWords(witness: Witness): string {
  if (witness.read === "cone") return `cone ${witness.cone}`;
  const fromCool = [...witness.bends].sort(([a], [b]) => compareCones(a, b));
  return listed(fromCool.map(([cone, bend]) => `${cone} ${bend}`));
}
