/** Weighing out, for the pages that tell how. */
export { dryGrams, usualLossPerCent, waterPerGram } from "../../chemistry/weighing.ts";
