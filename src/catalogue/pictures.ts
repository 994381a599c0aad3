/** The pictures of a tile, as they are published. */
import type { MeasuredColour } from "../colour/measure.ts";
import type { PictureRole, Tile } from "../records/archive.ts";
import type { Findings, PictureFile } from "./findings.ts";

/** A picture as published: the sizes that were made of it, smallest first. */
export interface Picture {
  readonly role: PictureRole;
  /** What it shows, in the maker's own words; null where there are none. */
  readonly alt: string | null;
  /** Of the largest size, in pixels. */
  readonly width: number;
  readonly height: number;
  /** The picture's mean colour as `#rrggbb`, shown until it has loaded. */
  readonly placeholder: string;
  readonly files: readonly PictureFile[];
}

/** The pictures of a tile that were prepared, the result's first. */
export function picturesOf(tile: Tile, findings: Findings): readonly Picture[] {
  return tile.pictures
    .flatMap(({ role, file }) => {
      const prepared = findings.pictures.get(file);
      if (!prepared) return [];
      const { width, height, placeholder, files } = prepared;
      const alt = (role === "result" && tile.record.photo?.alt) || null;
      return [{ role, alt, width, height, placeholder, files }];
    })
    .sort((a, b) => roleOrder.indexOf(a.role) - roleOrder.indexOf(b.role));
}

const roleOrder = ["result", "detail", "back", "before"] as const;

export function colourOf(tile: Tile, findings: Findings): MeasuredColour | null {
  const result = tile.pictures.find((picture) => picture.role === "result");
  return (result && findings.pictures.get(result.file)?.colour) ?? null;
}
