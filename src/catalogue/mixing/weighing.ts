/** Weighing out, for the pages that tell how. */
export { dryGrams, usualDryDensity } from "../../chemistry/weighing.ts";
