import type { FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";
import { storyOf } from "../kiln-story.ts";

export const witnessContradicts: FiringRule = {
  of: "firing",
  name: "witness-contradicts",
  severity: "warning",
  explains: "Of the witness cones in one pack, a hotter one has not bent further than a cooler.",
  find: (_, firing, extra) =>
    (storyOf(extra, firing)?.accounts.contradictions ?? []).map(({ shelf, message, hint }) => ({
      path: ["witness", shelf],
      message: withoutFullStop(message),
      hint,
    })),
};
