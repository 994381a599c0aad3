/** A photograph in the sizes that were made of it, on its mean colour until it has loaded. */
import type { VNode } from "preact";
import type { PictureFile } from "../../src/catalogue/findings.ts";
import type { Picture } from "../../src/catalogue/pictures.ts";

export interface PhotographProps {
  readonly root: string;
  readonly picture: Picture;
  /** How wide it stands on the page, as `sizes` of an image says it. */
  readonly sizes: string;
  /** Empty where the words beside it say the same. */
  readonly alt?: string;
  /** True for what is on the first screen. */
  readonly first?: boolean;
  /** No file wider than this is offered: a wall needs none of the large ones. */
  readonly widest?: number;
}

export function Photograph(props: PhotographProps): VNode {
  const { root, picture, sizes, alt = picture.alt, first = false, widest = 4000 } = props;
  const files = picture.files.filter((file) => file.width <= widest);
  const offered = files.length > 0 ? files : picture.files.slice(0, 2);
  const webp = offered.filter((file) => file.format === "webp");
  const jpeg = offered.filter((file) => file.format === "jpeg");
  const plain = jpeg.at(-1) ?? offered.at(-1);
  return (
    <span class="photograph">
      <svg viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
        <rect width="1" height="1" fill={picture.placeholder} />
      </svg>
      <picture>
        {webp.length > 0 && (
          <source type="image/webp" srcset={toSourceSet(root, webp)} sizes={sizes} />
        )}
        <img
          src={root + (plain?.url ?? "")}
          {...(jpeg.length > 0 && { srcset: toSourceSet(root, jpeg), sizes })}
          width={picture.width}
          height={picture.height}
          alt={alt}
          loading={first ? "eager" : "lazy"}
          decoding="async"
        />
      </picture>
    </span>
  );
}

function toSourceSet(root: string, files: readonly PictureFile[]): string {
  return files.map(({ url, width }) => `${root}${url} ${width}w`).join(", ");
}

/** The largest JPEG of a picture: what its link leads to where no script enlarges it. */
export function largestFile({ files }: Picture): PictureFile | undefined {
  const jpeg = files.filter((file) => file.format === "jpeg");
  return (jpeg.length > 0 ? jpeg : files).at(-1);
}

/** The smallest that serves a wall, a mark on a map or a place in a triangle: a JPEG, which every browser shows. */
export function smallFile({ files }: Picture): PictureFile | undefined {
  const jpeg = files.filter((file) => file.format === "jpeg");
  return jpeg.find(({ width }) => width >= 300) ?? jpeg.at(-1) ?? files.at(-1);
}
