/** How far the reckoning of heat work can be trusted, for the pages that show it. */
export { heatWorkCaveat } from "../../firing/heat.ts";
