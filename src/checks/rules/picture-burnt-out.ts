import { pictureWarning } from "../picture-warning.ts";

export const pictureBurntOut = pictureWarning(
  "picture-burnt-out",
  "The middle of a photograph is not burnt out to pure white.",
);
