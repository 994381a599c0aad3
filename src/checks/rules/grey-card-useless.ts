import { pictureWarning } from "../picture-warning.ts";

export const greyCardUseless = pictureWarning(
  "grey-card-useless",
  "Where a record says that a grey card is, there is one, and it is grey.",
);
