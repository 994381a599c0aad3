import { pictureWarning } from "../picture-warning.ts";

export const greyCardUseless = pictureWarning(
  "grey-card-useless",
  "A grey card that a record tells of lies where it is said to lie, and is grey.",
);
