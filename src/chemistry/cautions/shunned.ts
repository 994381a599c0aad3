import type { Analysis } from "../analysis.ts";
import { materialHazards, oxideHazards } from "./hazards.ts";

/**
 * Whether Tilebook never brings a material into a recipe of its own accord: whatever holds lead
 * or cadmium, hexavalent chromium, and salt.
 */
export function isShunned(material: string, analysis: Analysis): boolean {
  const holdsWhatIsLoud = oxideHazards.some(
    ({ oxide, isAlwaysLoud }) => isAlwaysLoud && (analysis.oxides[oxide] ?? 0) > 0,
  );
  const isNamed = materialHazards.some(
    (hazard) => hazard.isShunned && hazard.material === material,
  );
  return holdsWhatIsLoud || isNamed;
}
