/** Loads the squares of a cone, part after part, by scripts: a page opened from a folder can do no other. */
import type { GridIndex, GridPart } from "../../publish/grid-file.ts";
import { loadScript } from "../parts/load-script.ts";
import { fileOfPart } from "./addresses.ts";

interface Loaded {
  readonly tilebookSquares?: Readonly<Record<string, GridPart>>;
}

/** The parts of a cone that have come. */
export interface Parts {
  readonly parts: readonly GridPart[];
  readonly whole: boolean;
  /** True where one did not come: nothing is known of what it holds. */
  readonly failed: boolean;
}

/** What has come of a cone so far, the parts before the first that is missing. */
export function partsOf(cone: number, { cones }: GridIndex): Parts {
  const all = cones.parts[cone] ?? 0;
  const known = (globalThis as Loaded).tilebookSquares ?? {};
  const parts: GridPart[] = [];
  for (let part = known[`${cone} 0`]; part; part = known[`${cone} ${parts.length}`])
    parts.push(part);
  return { parts, whole: parts.length >= all, failed: false };
}

/**
 * Loads what is missing of a cone.
 *
 * @param tell takes what has come, each time that more has
 */
export async function loadCone(
  cone: number,
  index: GridIndex,
  root: string,
  tell: (parts: Parts) => void,
): Promise<void> {
  for (let had = partsOf(cone, index); !had.whole; had = partsOf(cone, index)) {
    const file = fileOfPart(index.cones.keys[cone] ?? "", had.parts.length);
    await loadScript(root + file);
    const has = partsOf(cone, index);
    if (has.parts.length === had.parts.length) {
      tell({ ...has, failed: true });
      return;
    }
    tell(has);
  }
}
