/** So many of a list at most, evenly from its first to its last. */
export function pickEvenly<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  if (most < 2) return list.slice(0, most);
  return Array.from({ length: most }, (_, i) => {
    const at = Math.round((i * (list.length - 1)) / (most - 1));
    return list[at] as T;
  });
}
