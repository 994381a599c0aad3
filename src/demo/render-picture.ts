import sharp from "sharp";
import { makeChart } from "./chart.ts";
import { developPicture } from "./develop.ts";
import { fireTile } from "./fired-skin.ts";
import { makeForm } from "./forms.ts";
import { takePhotograph } from "./photograph.ts";
import { viewScene } from "./scene.ts";
import { studioHand, turnedForStanding } from "./studio-hand.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Width of a picture in points; it is four thirds as high. */
export const PICTURE_WIDTH = 1200;

/** The picture is worked out this much larger and then made smaller, so that edges are smooth. */
const OVERSIZE = 1.25;

/**
 * Renders the photograph of a planned tile, the same bytes for the same plan.
 *
 * @returns a JPEG without metadata
 */
export async function renderPicture(plan: TilePlan, width = PICTURE_WIDTH): Promise<Buffer> {
  const form = makeForm(plan.shape, plan.code, plan.faults.includes("warping"), plan.angle);
  const hand = form.stands
    ? turnedForStanding(studioHand(plan.set), form.plane)
    : studioHand(plan.set);
  const chart = makeChart(form.face, form.margin, (15 * width) / PICTURE_WIDTH);
  const skin = fireTile(chart, plan);
  const view = viewScene(form, hand, plan, Math.round(width * OVERSIZE));
  const exposure = takePhotograph(view, skin, hand, plan.code);
  const bytes = developPicture(exposure, hand, plan.code);
  return sharp(bytes, { raw: { width: exposure.width, height: exposure.height, channels: 3 } })
    .blur(0.55)
    .resize(width, Math.round((width * 4) / 3), { kernel: "lanczos3" })
    .jpeg({ quality: 84, mozjpeg: true, chromaSubsampling: "4:4:4" })
    .toBuffer();
}
