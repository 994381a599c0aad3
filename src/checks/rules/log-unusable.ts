import { idKey } from "../../terms/ids.ts";
import type { FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";

export const logUnusable: FiringRule = {
  of: "firing",
  name: "log-unusable",
  severity: "error",
  explains: "Time and temperature can be read from a firing's log, and nothing in it is a guess.",
  find: (_, { id, log }, { heats }) => {
    const notes = heats.get(idKey(id))?.log?.notes ?? [];
    return notes
      .filter(({ severity }) => severity === "error")
      .map(
        ({ line = 1, message, hint = "Export the log again, or take it out of the record." }) => ({
          ...(log && { file: log.file }),
          path: [],
          line,
          message: withoutFullStop(message),
          hint,
        }),
      );
  },
};
