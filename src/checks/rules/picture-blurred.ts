import { pictureWarning } from "../picture-warning.ts";

export const pictureBlurred = pictureWarning(
  "picture-blurred",
  "Some edge in a photograph is sharp.",
);
