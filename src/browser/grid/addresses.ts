/** Where a square leads: made as the build makes addresses, so that no file has to hold them all. */
import type { GridIndex } from "../../publish/grid-file.ts";
import { idSlug } from "../../terms/ids.ts";
import type { Pair } from "./view.ts";

/** The page of a pair, or of a glaze alone, from the root. */
export function pageOfPair({ over, under }: Pair, { glazes }: Pick<GridIndex, "glazes">): string {
  const [top, beneath] = [glazes[over]?.id ?? "", glazes[under]?.id ?? ""];
  if (over === under) return `glazes/${idSlug(top)}.html`;
  return `pairs/${joinable(top)}--over--${joinable(beneath)}.html`;
}

export function pageOfTile(code: string): string {
  return `tiles/${idSlug(code)}.html`;
}

function joinable(id: string): string {
  return idSlug(id).replace(/-{2,}/gu, (run) => "~".repeat(run.length - 1));
}

/** The file with a part of the squares of a cone, from the root. */
export function fileOfPart(cone: string, part: number): string {
  return `data/grid-${cone || "unknown"}-${part + 1}.js`;
}
