/** Groups by a key, each with one at least, in the order in which their keys are met. */
export function groupBy<T>(
  list: readonly T[],
  keyOf: (one: T) => string,
): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of list) {
    const key = keyOf(one);
    const known = groups.get(key);
    if (known) known.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}
