import type { PictureInspection } from "./check.ts";

/** What a photograph gives away; nothing is known of one that cannot be used. */
export function tracesIn(picture: PictureInspection): readonly string[] {
  return "facts" in picture ? picture.facts.traces : [];
}
