/** A colour difference in figures, for the pages that show one. */
export { roundDifference } from "../../colour/difference.ts";
