/** How far the reckoning of heat work can be trusted, for the pages that show it. */
import { heatWorkError } from "../../firing/heat.ts";

export const heatWorkCaveat: string = heatWorkError.words;
