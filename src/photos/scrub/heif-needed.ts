import type { HeifItem, HeifReference } from "../containers/heif-items.ts";

/**
 * Kinds of items that a picture is made of (ISO/IEC 23008-12, section 6 and annex B; AV1 Image File
 * Format, section 2): coded pictures, and those put together from others.
 */
const pictureTypes = ["av01", "grid", "hvc1", "iden", "iovl"];

/** Says of an additional picture what it is: of these two, how see-through the first one is. */
export const opacityTypes = [
  "urn:mpeg:mpegB:cicp:systems:auxiliary:alpha",
  "urn:mpeg:hevc:2015:auxid:1",
];

/**
 * The items that the first picture needs: itself, what it is put together from, and how see-through
 * it is. Small copies, depth, light maps, EXIF and XMP are not among them.
 *
 * @param isOpacity whether an item is a picture of how see-through another is
 */
export function findNeededItems(
  primary: number,
  items: readonly HeifItem[],
  references: readonly HeifReference[],
  isOpacity: (id: number) => boolean,
): ReadonlySet<number> {
  const types = new Map(items.map(({ id, type }) => [id, type]));
  const needed = new Set<number>();
  const add = (id: number) => {
    if (pictureTypes.includes(types.get(id) ?? "")) needed.add(id);
  };
  add(primary);
  for (const { id, type, to } of references) {
    if (type === "auxl" && to.includes(primary) && isOpacity(id)) add(id);
  }
  const parts = new Map(references.filter(({ type }) => type === "dimg").map((r) => [r.id, r.to]));
  for (const id of needed) for (const part of parts.get(id) ?? []) add(part);
  return needed;
}
