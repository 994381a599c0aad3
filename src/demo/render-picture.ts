import sharp from "sharp";
import { makeChart } from "./chart.ts";
import { developPicture } from "./develop.ts";
import { fireTile } from "./fired-skin.ts";
import { makeForm } from "./forms.ts";
import { takePhotograph } from "./photograph.ts";
import { viewScene } from "./scene.ts";
import { onTheDay, outOfGlare, studioHand, turnedForStanding } from "./studio-hand.ts";
import type { TilePlan } from "./tile-plan.ts";

/** Width of a picture in points; it is four thirds as high. */
export const PICTURE_WIDTH = 1200;

/** The picture is worked out this much larger and then made smaller, so that edges are smooth. */
const OVERSIZE = 1.15;

/**
 * Renders the photograph of a planned tile, the same bytes for the same plan.
 *
 * @returns a JPEG without metadata
 */
export async function renderPicture(plan: TilePlan, width = PICTURE_WIDTH): Promise<Buffer> {
  return saveAsJpeg(shoot(plan, width), width);
}

/** Renders the middle of a planned tile, twice as near, on a picture of the same size. */
export async function renderDetail(plan: TilePlan): Promise<Buffer> {
  const near = await renderPicture(plan, PICTURE_WIDTH * 2);
  const height = (PICTURE_WIDTH * 4) / 3;
  const middle = { left: PICTURE_WIDTH / 2, top: Math.round(height * 0.42) };
  return sharp(near)
    .extract({ ...middle, width: PICTURE_WIDTH, height })
    .jpeg(JPEG)
    .toBuffer();
}

function shoot(plan: TilePlan, width: number): Shot {
  const form = makeForm(plan.shape, plan.code, plan.faults.includes("warping"), plan.angle);
  const today = onTheDay(studioHand(plan.set), plan.code);
  const hand = form.stands ? turnedForStanding(today, form.plane) : outOfGlare(today);
  const chart = makeChart(form.face, form.margin, (15 * width) / PICTURE_WIDTH);
  const skin = fireTile(chart, plan);
  const view = viewScene(form, hand, plan, Math.round(width * OVERSIZE));
  const exposure = takePhotograph(view, skin, hand, plan.code);
  const bytes = developPicture(exposure, hand, plan.code);
  return { bytes, width: exposure.width, height: exposure.height };
}

/** A developed picture, three bytes a point. */
interface Shot {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}

const JPEG = { quality: 84, mozjpeg: true, chromaSubsampling: "4:4:4" } as const;

async function saveAsJpeg({ bytes, ...size }: Shot, width: number): Promise<Buffer> {
  return sharp(bytes, { raw: { ...size, channels: 3 } })
    .blur(0.55)
    .resize(width, Math.round((width * 4) / 3), { kernel: "lanczos3" })
    .jpeg(JPEG)
    .toBuffer();
}
