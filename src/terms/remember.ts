/**
 * Makes a function remember what it gave. Nobody can tell but by the clock, so it must give the same
 * for the same key, and what it gives must not be changed.
 *
 * @param most how many are remembered; with one more all are forgotten, and it begins anew
 * @param keyOf a text that is the same for two arguments only where the function gives the same
 */
export function remember<A, T>(
  most: number,
  find: (of: A) => T,
  keyOf: (of: A) => string,
): (of: A) => T {
  const known = new Map<string, { readonly found: T }>();
  return (of) => {
    const key = keyOf(of);
    const before = known.get(key);
    if (before) return before.found;
    const found = find(of);
    if (known.size >= most) known.clear();
    known.set(key, { found });
    return found;
  };
}

/**
 * Makes a function remember what it gave for each object, for as long as anything holds the object,
 * which must not be changed: a record, or a whole archive, as its reading left it.
 */
export function rememberFor<A extends object, T>(find: (of: A) => T): (of: A) => T {
  const known = new WeakMap<A, { readonly found: T }>();
  return (of) => {
    const before = known.get(of);
    if (before) return before.found;
    const found = find(of);
    known.set(of, { found });
    return found;
  };
}
