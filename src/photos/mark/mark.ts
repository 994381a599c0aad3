/** The studio's mark: what is taken into pages, and what is refused. */
import { lstat, readFile } from "node:fs/promises";
import { hasCode } from "../../disk/machine-error.ts";
import { largestMark } from "../../terms/limits.ts";
import { decodeLargest } from "../decode.ts";
import { engine } from "../engine.ts";
import { inspectPicture } from "../inspect.ts";
import type { MarkFault, MarkSize } from "./judged.ts";
import { judgeSvg } from "./svg.ts";

/** A mark as it is published. */
export interface Mark extends MarkSize {
  readonly format: "svg" | "png";
  readonly bytes: Uint8Array;
}

/** It stands in one line with the studio's name, so a banner has no room. */
const widest = 5;

/** Points of a PNG's height: four for each that a page shows. */
const heightOfPng = 128;

/**
 * Reads a mark, and judges it by its content.
 *
 * @throws where the machine fails; what is wrong with the file is a fault
 */
export async function readMark(path: string): Promise<Mark | MarkFault> {
  const bytes = await readBounded(path);
  if ("message" in bytes) return bytes;
  const mark = /\.svg$/iu.test(path) ? markOfSvg(bytes) : await markOfPng(bytes);
  if ("message" in mark) return mark;
  if (mark.width <= widest * mark.height && mark.height <= widest * mark.width) return mark;
  return {
    message: "The mark is too long for its height to stand before the studio's name",
    hint: `Take one that is at most ${widest} times as wide as it is high, or as high as it is wide.`,
  };
}

async function readBounded(path: string): Promise<Uint8Array | MarkFault> {
  try {
    // A link might lead out of the archive.
    const found = await lstat(path);
    if (!found.isFile()) return noMark;
    if (found.size <= largestMark) return await readFile(path);
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR")) return noMark;
    throw error;
  }
  return {
    message: `The mark has more than ${largestMark / 1000} KB, and is loaded with every page`,
    hint: "Save it smaller: 200 points are high enough for a PNG, and an SVG needs few paths.",
  };
}

const noMark: MarkFault = {
  message: "There is no such file beside studio.yaml",
  hint: "Put the mark there, or write its name as it is: capital and small letters count.",
};

function markOfSvg(bytes: Uint8Array): Mark | MarkFault {
  const size = judgeSvg(new TextDecoder().decode(bytes));
  return "message" in size ? size : { ...size, format: "svg", bytes };
}

/** Made anew from its points alone, so that nothing else in the file is published. */
async function markOfPng(bytes: Uint8Array): Promise<Mark | MarkFault> {
  const inspection = await inspectPicture(bytes);
  if ("fault" in inspection) return inspection.fault;
  if (inspection.facts.format !== "png")
    return {
      message: "The mark is no PNG, whatever its name says",
      hint: "Save it as PNG or SVG.",
    };
  const decoded = await decodeLargest(bytes, "png");
  if ("fault" in decoded) return decoded.fault;
  const { data, info } = await engine()(bytes)
    .resize({ height: heightOfPng, withoutEnlargement: true })
    .toColourspace("srgb")
    .png()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, format: "png", bytes: data };
}
