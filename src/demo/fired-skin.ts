import { bareSkin, sowClaySpecks, toastFoot } from "./bare-clay.ts";
import type { Chart } from "./chart.ts";
import { makeClayRelief } from "./clay-relief.ts";
import { growEffects } from "./effects.ts";
import { finishSurface } from "./finish-surface.ts";
import { glazeClay } from "./glazing.ts";
import { meltGlaze } from "./melt.ts";
import { paintCoats } from "./paint-coats.ts";
import type { Skin } from "./skin.ts";
import { spoilCoats } from "./spoil-coats.ts";
import { showFaults } from "./surface-faults.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Makes, glazes and fires a tile: the skin that its record describes. */
export function fireTile(chart: Chart, plan: TilePlan): Skin {
  const relief = makeClayRelief(chart, plan);
  const glazed = glazeClay(chart, plan, relief);
  const coatings = meltGlaze(chart, plan, relief.height, glazed);
  spoilCoats(chart, plan, coatings);
  const skin = bareSkin(chart, plan, relief, glazed.scratches);
  toastFoot(chart, skin, coatings);
  paintCoats(plan, skin, coatings, sowClaySpecks(chart, plan.clay, plan.code));
  finishSurface(plan, skin, relief, coatings);
  growEffects(plan, skin, coatings);
  showFaults(plan, skin, coatings);
  return skin;
}
