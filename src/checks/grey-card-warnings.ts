import type { MeasuredColour } from "../colour/measure.ts";
import type { TypedCommand } from "../terms/typed-command.ts";
import type { PictureWarning } from "./check.ts";

/** What a maker can do about a grey card that could not put the light right; nothing to do is none. */
export function greyCardWarnings(
  colour: MeasuredColour | undefined,
  asTyped: TypedCommand,
): readonly PictureWarning[] {
  if (!colour?.greyCard || colour.greyCard.used) return [];
  return [{ code: "grey-card-useless", ...words(asTyped("crop"))[colour.greyCard.because] }];
}

const words = (crop: string) => ({
  "burnt-out": {
    message: "The grey card is burnt out in this photograph, so its colour cannot be corrected",
    hint: "Take it again with less light or a shorter exposure: a grey card must come out grey, not white.",
  },
  coloured: {
    message:
      "The place of the grey card is not grey in this photograph, so its colour cannot be corrected",
    hint: `Run “${crop}” and lay the frame on the card, or write “photo: {grey: no}” where there is none.`,
  },
  dark: {
    message:
      "The place of the grey card is almost black in this photograph, so its colour cannot be corrected",
    hint: `Run “${crop}” and lay the frame on the card; if it lies there, give it the same light as the tile.`,
  },
});
