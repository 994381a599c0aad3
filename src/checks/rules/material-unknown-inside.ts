import { findCarriedMaterial } from "../../chemistry/minerals/minerals.ts";
import type { MaterialRule } from "../check.ts";

export const materialUnknownInside: MaterialRule = {
  of: "material",
  name: "material-unknown-inside",
  severity: "warning",
  explains: "A material has a formula or an analysis, or no glaze made of it can be worked out.",
  find: (_, { id, record }) =>
    record.formula !== undefined || record.analysis !== undefined || findCarriedMaterial(id)
      ? []
      : [
          {
            path: [],
            message: `${record.name} has no formula and no analysis`,
            hint: "Add “analysis:” from its supplier's sheet, or “formula:”; until then glazes made of it have no chemistry.",
          },
        ],
};
