import { idKey } from "../../terms/ids.ts";
import type { GlazeRule } from "../check.ts";

export const glazeWithoutChemistry: GlazeRule = {
  of: "glaze",
  name: "glaze-without-chemistry",
  severity: "warning",
  explains:
    "A glaze that was mixed in the studio has a recipe that its chemistry can be worked out from.",
  find: (_, { id, record }, { withoutChemistry }) => {
    const reason = withoutChemistry.get(idKey(id));
    if (record.bought !== undefined || reason === undefined) return [];
    return [
      {
        path: [record.blend === undefined ? "ingredients" : "blend"],
        message: `${record.name} has no chemistry: ${reason}`,
        hint: "Its page is published all the same, without analysis or unity formula.",
      },
    ];
  },
};
