import { pictureWarning } from "../picture-warning.ts";

export const pictureDark = pictureWarning(
  "picture-dark",
  "A photograph is light enough to judge a glaze by.",
);
