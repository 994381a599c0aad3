import type { SetRule } from "../check.ts";

export const linkOfListedSet: SetRule = {
  of: "set",
  name: "link-of-listed-set",
  severity: "error",
  explains: "Only a set that is not listed has a link of its own.",
  find: (_, { record }) =>
    record.listed !== false && record.link !== undefined
      ? [
          {
            path: ["link"],
            message: "This set has a link of its own, and yet everyone would see it on the site",
            hint: "Write “listed: no” if only those with the link may see it, or take “link:” out.",
          },
        ]
      : [],
};
