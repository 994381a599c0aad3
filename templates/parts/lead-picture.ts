/** The photograph that a page leads with, for whoever shows its address with a picture beside it. */
import type { Picture } from "../../src/catalogue/pictures.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import { pictureAlt } from "../words/tile/stack.ts";

export interface LeadPicture {
  /** Of a JPEG, which everybody can show, relative to the root. */
  readonly url: string;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  readonly alt: string;
}

/** Wide enough for a card on any screen: a larger one is only slower to fetch. */
const leastWidth = 1000;

/** The photograph of a tile's result; null where it has none. */
export function leadPictureOf(tile: CatalogueTile): LeadPicture | null {
  const picture = tile.pictures.find(({ role }) => role === "result");
  const file = picture && jpegOf(picture);
  if (!file) return null;
  const { url, width, height } = file;
  return { url, width, height, alt: pictureAlt(tile, picture) };
}

function jpegOf({ files }: Picture) {
  const jpeg = files.filter(({ format }) => format === "jpeg");
  return jpeg.find(({ width }) => width >= leastWidth) ?? jpeg.at(-1);
}
