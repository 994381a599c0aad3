import type { ArchiveRule } from "../check.ts";

export const unusablePicture: ArchiveRule = {
  of: "archive",
  name: "unusable-picture",
  severity: "error",
  explains:
    "A photograph is JPEG, PNG, WebP, AVIF, TIFF or HEIC by its content, whole, and not too large to open.",
  find: (_, { pictures }) =>
    [...pictures].flatMap(([file, inspection]) =>
      "fault" in inspection
        ? {
            file,
            path: [],
            message: inspection.fault.message,
            hint: inspection.fault.hint,
          }
        : [],
    ),
};
