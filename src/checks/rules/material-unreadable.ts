import { analyseMaterial } from "../../chemistry/materials.ts";
import type { MaterialRule } from "../check.ts";

export const materialUnreadable: MaterialRule = {
  of: "material",
  name: "material-unreadable",
  severity: "error",
  explains:
    "The formula or analysis of a material can be read, whether a glaze holds it yet or not: without it no caution could be told.",
  find: (_, { id, record }) => {
    const field = record.formula !== undefined ? "formula" : "analysis";
    if (record[field] === undefined) return [];
    const found = analyseMaterial({ id, ...record });
    if (found.ok) return [];
    return found.reasons.map(({ message, hint }) => ({ path: [field], message, hint }));
  },
};
