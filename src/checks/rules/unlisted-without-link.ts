import type { SetRule } from "../check.ts";
import { writeLink } from "../write-link.ts";

export const unlistedWithoutLink: SetRule = {
  of: "set",
  name: "unlisted-without-link",
  severity: "error",
  explains: "An unlisted set has a link of its own that nobody can guess.",
  find: (_, { file, record }) =>
    record.listed === false && record.link === undefined
      ? [
          {
            path: ["listed"],
            message: "This set is to be reached only by its link, and has none",
            hint: "Write a random “link:” into it. Its address changes this once: up to now it was worked out from names that anyone may know.",
            mend: writeLink(file),
          },
        ]
      : [],
};
