/** For which firing a tile waits. */
import { isHistory } from "../checks/history.ts";
import {
  type Archive,
  type FiredStep,
  findById,
  type Tile,
  type TileStep,
} from "../records/archive.ts";
import type { KindOfFiring } from "../terms/choices.ts";

export interface Awaited {
  readonly kind: KindOfFiring;
  /** Whether its record names the kind; else it follows from what was done to it last. */
  readonly isWritten: boolean;
  /** The firing whose list it is on already, which nobody has lit yet; null where there is none. */
  readonly listedIn: string | null;
}

/**
 * The next firing of a tile; null where none is to come: it is lost, or came out of the kiln and
 * nothing was done to it since.
 */
export function awaitedBy(archive: Archive, tile: Tile): Awaited | null {
  if (tile.record.fate !== undefined) return null;
  const { steps } = tile;
  const open = steps.find((step, at) => step.step === "fired" && !isOver(archive, tile, at));
  if (open?.step === "fired")
    return { kind: open.kind, isWritten: open.at !== null, listedIn: open.firing };
  const last = steps.at(-1);
  if (!last || last.step === "fired") return null;
  return { kind: kindAfter(archive, steps), isWritten: false, listedIn: null };
}

/** Whether a firing has been: it was lit, a result tells of it, or something was done to the tile since. */
function isOver(archive: Archive, tile: Tile, at: number): boolean {
  const step = tile.steps[at] as FiredStep;
  const isLit = findById(archive.firings, step.firing)?.record.on !== undefined;
  const isFollowed = tile.steps.slice(at + 1).some((later) => later.step !== "fired");
  return isLit || isFollowed || isHistory(archive, tile, at);
}

/** What was put on since the last firing tells, where it is onglaze alone; all else melts in a glaze firing. */
function kindAfter({ glazes }: Archive, steps: readonly TileStep[]): KindOfFiring {
  const since = steps.slice(steps.findLastIndex((step) => step.step === "fired") + 1);
  const ids = since.flatMap((step) => (step.step === "coat" ? step.glazes : []));
  const kinds = new Set(ids.map((id) => findById(glazes, id)?.record.kind));
  return kinds.size === 1 && kinds.has("onglaze") ? "onglaze" : "glaze";
}

/** Whether a tile that waits may go into a firing of a kind. */
export function awaits({ kind, isWritten }: Awaited, of: KindOfFiring): boolean {
  if (kind === of) return true;
  return !isWritten && kind === "glaze" && (of === "once" || of === "raku");
}
