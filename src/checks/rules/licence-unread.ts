import { isLicenceUnread } from "../../terms/licences.ts";
import type { ArchiveRule } from "../check.ts";

export const licenceUnread: ArchiveRule = {
  of: "archive",
  name: "licence-unread",
  severity: "warning",
  explains: "A licence is named with its version, so that nobody has to guess which one is meant.",
  find: ({ studio: { licence } }) => {
    if (licence === undefined || !isLicenceUnread(licence)) return [];
    return [
      {
        file: "studio.yaml",
        path: ["licence"],
        message: `“${licence}” does not say for certain which licence is meant, so pages and data show it as it is written and lead to none`,
        hint: "Write one licence with its version, such as “licence: CC BY 4.0”, or its web address. Only the studio can say which it chose.",
      },
    ];
  },
};
