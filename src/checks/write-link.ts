import type { Mend } from "../records/mend.ts";

/** Writes a link drawn at random into the record of a set. */
export function writeLink(file: string): Mend {
  return { does: "write", file, kind: "set", path: ["link"], value: { random: "link" } };
}
