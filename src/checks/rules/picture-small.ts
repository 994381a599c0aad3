import { pictureWarning } from "../picture-warning.ts";

export const pictureSmall = pictureWarning(
  "picture-small",
  "A photograph has at least 1000 pixels on its long side.",
);
