import type { Pixels } from "./pixels.ts";
import { type Grey, isBlurred } from "./sharpness.ts";

/** Something about a photograph that its maker can do better next time. */
export interface PictureWarning {
  readonly code: "picture-blurred" | "picture-burnt-out" | "picture-dark" | "picture-small";
  readonly message: string;
  readonly hint: string;
}

/** Under this many pixels on its long side a picture looks soft on most screens. */
const leastLongSide = 1000;

/**
 * Judges a photograph by its size and by a sample of its pixels. The bounds are rules of our own,
 * set so that a usable photograph draws no warning.
 */
export function judgePicture(
  size: { width: number; height: number },
  sample: Pixels,
): PictureWarning[] {
  const grey = toGrey(sample);
  const warnings: PictureWarning[] = [];
  if (Math.max(size.width, size.height) < leastLongSide) warnings.push(smallWarning(size));
  if (isDark(grey)) warnings.push(darkWarning);
  if (isBurntOut(grey)) warnings.push(burntOut);
  if (isBlurred(grey)) warnings.push(blurredWarning);
  return warnings;
}

function smallWarning({ width, height }: { width: number; height: number }): PictureWarning {
  return {
    code: "picture-small",
    message: `The photograph is small: ${width} by ${height} pixels.`,
    hint: `Send the original, with at least ${leastLongSide} pixels on its long side; messengers shrink pictures.`,
  };
}

const darkWarning: PictureWarning = {
  code: "picture-dark",
  message: "The photograph is too dark to judge a glaze by.",
  hint: "Take it again in more light, or with the exposure turned up.",
};

const burntOut: PictureWarning = {
  code: "picture-burnt-out",
  message: "The middle of the photograph is burnt out: pure white, without any detail.",
  hint: "Take it again with the exposure turned down, away from direct light and flash.",
};

const blurredWarning: PictureWarning = {
  code: "picture-blurred",
  message: "The photograph is blurred: no edge in it is sharp.",
  hint: "Take it again with the phone held still or propped up, and tap on the tile to focus.",
};

/** Luma by the weights of ITU-R BT.709, in 256ths. */
function toGrey({ data, width, height }: Pixels): Grey {
  const grey = new Uint8Array(width * height);
  for (let at = 0, from = 0; at < grey.length; at++, from += 3) {
    grey[at] =
      (54 * (data[from] ?? 0) + 183 * (data[from + 1] ?? 0) + 19 * (data[from + 2] ?? 0)) >> 8;
  }
  return { data: grey, width, height };
}

/** In counting, every fourth pixel of a row tells enough. */
const stride = 4;

/** Dark: nineteen in twenty pixels are darker than code 56 (some 4 per cent of white's light). */
const darkCode = 56;
const darkShare = 0.95;

function isDark({ data }: Grey): boolean {
  let dark = 0;
  for (let at = 0; at < data.length; at += stride) if ((data[at] ?? 0) < darkCode) dark += 1;
  return dark * stride >= darkShare * data.length;
}

/** Burnt out: over a fifth of the middle half is white. A white ground around a tile may be. */
const whiteCode = 252;
const whiteShare = 0.2;

function isBurntOut({ data, width, height }: Grey): boolean {
  const [left, right] = [Math.floor(width / 4), Math.ceil((width * 3) / 4)];
  const [top, bottom] = [Math.floor(height / 4), Math.ceil((height * 3) / 4)];
  let white = 0;
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x += stride) {
      if ((data[y * width + x] ?? 0) >= whiteCode) white += 1;
    }
  }
  return white * stride > whiteShare * (right - left) * (bottom - top);
}
