/** Freezes a value and everything in it, so that no page can change what another shows. */
export function freezeAll<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  const inside = value instanceof Map ? value.values() : Object.values(value);
  for (const entry of inside) freezeAll(entry);
  return value;
}
