/** The pictures of a tile, as they are published. */
import type { MeasuredColour } from "../colour/measure.ts";
import type { Archive, PictureRole, Tile } from "../records/archive.ts";
import type { Cone } from "../terms/cones.ts";
import { describeTile } from "./describe.ts";
import type { Findings, PictureFile } from "./findings.ts";

/** A picture as published: the sizes that were made of it, smallest first. */
export interface Picture {
  readonly role: PictureRole;
  readonly alt: string;
  /** Of the largest size, in pixels. */
  readonly width: number;
  readonly height: number;
  /** The picture's mean colour as `#rrggbb`, shown until it has loaded. */
  readonly placeholder: string;
  readonly files: readonly PictureFile[];
}

/**
 * The pictures of a tile that were prepared, the result's first.
 *
 * @param cone of the firing that decides, for what they say to those who do not see them
 */
export function picturesOf(
  tile: Tile,
  archive: Archive,
  findings: Findings,
  cone: Cone | null,
): readonly Picture[] {
  if (tile.pictures.length === 0) return [];
  const described = describeTile(tile, archive, cone);
  return tile.pictures
    .flatMap(({ role, file }) => {
      const prepared = findings.pictures.get(file);
      if (!prepared) return [];
      const { width, height, placeholder, files } = prepared;
      const alt =
        role === "result"
          ? (tile.record.photo?.alt ?? described)
          : `${roleWords[role]} ${described}`;
      return [{ role, alt, width, height, placeholder, files }];
    })
    .sort((a, b) => roleOrder.indexOf(a.role) - roleOrder.indexOf(b.role));
}

const roleOrder = ["result", "detail", "back", "before"] as const;

const roleWords = {
  result: "",
  before: "Before the last firing:",
  detail: "A detail:",
  back: "The back:",
} as const;

export function colourOf(tile: Tile, findings: Findings): MeasuredColour | null {
  const result = tile.pictures.find((picture) => picture.role === "result");
  return (result && findings.pictures.get(result.file)?.colour) ?? null;
}
