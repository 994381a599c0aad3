/**
 * Finds things by their keys, so that nobody has to look through all of them: under each key, in the
 * order given, all that have it. What has one key twice is there once.
 */
export function indexBy<T>(
  list: Iterable<T>,
  keysOf: (one: T) => Iterable<string>,
): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>();
  for (const one of list) {
    for (const key of new Set(keysOf(one))) addTo(found, key, one);
  }
  return found;
}

/** Puts a thing at the end of the list under its key, of which it may be the first. */
export function addTo<K, T>(lists: Map<K, T[]>, key: K, one: T): void {
  const list = lists.get(key);
  if (list) list.push(one);
  else lists.set(key, [one]);
}
