import { idKey } from "../../terms/ids.ts";
import type { FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";

export const scheduleFault: FiringRule = {
  of: "firing",
  name: "schedule-fault",
  severity: "error",
  explains:
    "A kiln can follow the schedule: each rate leads to its temperature, and what only makes sense in °F says so.",
  find: (_, { id }, { heats }) =>
    (heats.get(idKey(id))?.schedule?.faults ?? []).map(({ segment, field, message, hint }) => ({
      path: ["schedule", segment, field],
      message: withoutFullStop(message),
      hint,
    })),
};
