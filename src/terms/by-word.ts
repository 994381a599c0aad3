/**
 * Values by words that somebody wrote, in an object that has no names of its own: in a plain one,
 * a glaze called `constructor` would be found although nobody put it there.
 */
export function byWord<T>(entries: Iterable<readonly [string, T]>): Readonly<Record<string, T>> {
  const found = Object.create(null) as Record<string, T>;
  for (const [word, value] of entries) found[word] = value;
  return found;
}
