/** Records that a site was published without, until they are mended, and what is said of them. */
import { count } from "../english/numbers.ts";

export type KindOfWaiting =
  | "set"
  | "tile"
  | "firing"
  | "glaze"
  | "clay"
  | "material"
  | "page"
  | "file";

export interface WaitingRecord {
  readonly kind: KindOfWaiting;
  readonly id: string;
  /** Relative to the archive. */
  readonly file: string;
  /** Its own faults; a message is null where it may not be shown here. */
  readonly faults: readonly { readonly line: number; readonly message: string | null }[];
  /** What it rests on that waits too; without an id where that may not be shown here. */
  readonly because: { readonly kind: KindOfWaiting; readonly id: string | null } | null;
  /** Addresses of the pages that it belongs on. */
  readonly pages: readonly string[];
}

/** `3 records wait to be mended.` */
export function waitingSentence(records: number): string {
  return `${count(records, "record")} ${records === 1 ? "waits" : "wait"} to be mended.`;
}

/** On a page that such records belong on. */
export function missingSentence(records: number): string {
  const [waits, is] = records === 1 ? ["waits", "it"] : ["wait", "them"];
  return `${count(records, "record")} that ${records === 1 ? "belongs" : "belong"} on this page ${waits} to be mended. What is listed and counted here is without ${is}.`;
}

const kinds: Readonly<Record<KindOfWaiting, string>> = {
  set: "Set",
  tile: "Tile",
  firing: "Firing",
  glaze: "Glaze",
  clay: "Clay",
  material: "Material",
  page: "Page",
  file: "File",
};

/** `Tile TB-014`. */
export function nameWaiting({ kind, id }: Pick<WaitingRecord, "kind" | "id">): string {
  return `${kinds[kind]} ${id}`;
}

/** Why a record without faults of its own waits. */
export function reasonToWait(
  { kind }: WaitingRecord,
  because: NonNullable<WaitingRecord["because"]>,
): string {
  if (because.id === null) return "It waits for another record that has to be mended first.";
  const ground = `${because.kind} ${because.id}`;
  if (kind === "clay")
    return `Reclaimed clay counts as the lowest-firing clay of the studio, and the ${ground} waits to be mended.`;
  switch (because.kind) {
    case "set":
      return `It is in the ${ground}, which waits to be mended.`;
    case "firing":
      return `It was in the ${ground}, which waits to be mended.`;
    case "tile":
      return `It had the code ${because.id} before, and the tile of that code waits to be mended.`;
    case "clay":
      return `It is made of the ${ground}, which waits to be mended.`;
    default:
      return kind === "tile"
        ? `The ${ground} is on it, and waits to be mended.`
        : `The ${ground} is in it, and waits to be mended.`;
  }
}

/** Where a fault's own words may not be shown. */
export const hiddenFault =
  "What is wrong here is told by “tilebook check” alone: it speaks of people, or of what is not shown on this site.";
