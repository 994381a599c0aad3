/** A photograph in the sizes that were made of it, on its mean colour until it has loaded. */
import type { VNode } from "preact";
import type { PictureFile } from "../../src/catalogue/findings.ts";
import type { Picture } from "../../src/catalogue/pictures.ts";

export interface PhotographProps {
  readonly root: string;
  readonly picture: Picture;
  /** How wide it stands on the page, as `sizes` of an image says it. */
  readonly sizes: string;
  readonly alt: string;
  readonly turn: Turn;
}

/** When a picture is asked for: before all others, with the page, or as a reader comes near it. */
export type Turn = "first" | "soon" | "late";

const waits: Readonly<Record<Turn, object>> = {
  first: { fetchpriority: "high" },
  soon: {},
  late: { loading: "lazy" },
};

/** A photograph as large as its place. A browser that knows no WebP gets one JPEG. */
export function Photograph({ root, picture, sizes, alt, turn }: PhotographProps): VNode {
  const { width, height, placeholder, files } = picture;
  const plain = files.find((file) => file.format === "jpeg" && file.width >= 1000);
  return (
    <Framed placeholder={placeholder} files={webpOf(files)} root={root} sizes={sizes}>
      <img
        src={root + (plain ?? largestFile(picture))?.url}
        width={width}
        height={height}
        alt={alt}
        {...waits[turn]}
      />
    </Framed>
  );
}

/** A photograph on a card, whose words say what it shows; the styles alone give it its shape. */
export function SmallPhotograph(props: {
  readonly root: string;
  readonly picture: SmallPicture;
  readonly turn: Turn;
}): VNode {
  const { root, picture, turn } = props;
  return (
    <Framed {...picture} root={root} sizes={cardWidth}>
      <img src={root + picture.plain} alt="" {...waits[turn]} />
    </Framed>
  );
}

/** What a card is wide on most screens: two of them on a phone, seven on a desk. */
const cardWidth = "12rem";

function Framed(props: {
  readonly placeholder: string;
  readonly files: readonly SizedFile[];
  readonly root: string;
  readonly sizes: string;
  readonly children: VNode;
}): VNode {
  const { placeholder, files, root, sizes, children } = props;
  const srcset = files.map(({ url, width }) => `${root}${url} ${width}w`).join(", ");
  return (
    <span class="photograph">
      <svg {...{ color: placeholder }} aria-hidden="true" />
      <picture>
        {srcset && <source type="image/webp" srcset={srcset} sizes={sizes} />}
        {children}
      </picture>
    </span>
  );
}

interface SizedFile {
  readonly url: string;
  readonly width: number;
}

/** What a card needs of a photograph. */
export interface SmallPicture {
  readonly placeholder: string;
  /** WebP, the smallest first. */
  readonly files: readonly SizedFile[];
  /** The address of a JPEG, for browsers that know no WebP. */
  readonly plain: string;
}

/** No card needs the large sizes. */
export function toSmallPicture(picture: Picture): SmallPicture {
  const webp = webpOf(picture.files);
  const small = webp.filter(({ width }) => width <= 640);
  const files = small.length > 0 ? small : webp.slice(0, 1);
  return { placeholder: picture.placeholder, files, plain: smallFile(picture)?.url ?? "" };
}

function webpOf(files: readonly PictureFile[]): readonly SizedFile[] {
  return files.filter((file) => file.format === "webp").map(({ url, width }) => ({ url, width }));
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
