import { pictureWarning } from "../picture-warning.ts";

export const greyCardUseless = pictureWarning(
  "grey-card-useless",
  "A grey card that a record tells of is in the place that the record names, and is grey.",
);
