/** Who and what everybody would see after a request, and did not see before. */
import { shownName } from "../catalogue/makers.ts";
import type { Archive } from "../records/archive.ts";
import type { Exposed } from "./types.ts";

export function exposedBy(before: Archive | null, after: Archive): Exposed {
  const was = new Map(Object.entries(before?.studio.makers ?? {}));
  const makers = Object.entries(after.studio.makers ?? {}).filter(([key, maker]) => {
    const earlier = was.get(key);
    const name = shownName(maker);
    return name !== undefined && (earlier === undefined || shownName(earlier) !== name);
  });
  const sets = [...after.sets].filter(
    ([key, { record }]) =>
      record.listed !== false && before?.sets.get(key)?.record.listed === false,
  );
  return { makers: before ? makers.length : 0, sets: sets.map(([, { record }]) => record.name) };
}
