/** The sets of expansion factors, for the pages that tell what each was made for. */
export { expansionSets } from "../../chemistry/expansion/expansion.ts";
export type { ExpansionSet } from "../../chemistry/expansion/expansion-set.ts";
