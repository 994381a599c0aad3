/**
 * Freezes a value and everything in it, so that no page can change what another shows. There are
 * millions of them, so it makes no list of what is inside.
 */
export function freezeAll<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  if (Array.isArray(value)) for (let i = 0; i < value.length; i += 1) freezeAll(value[i]);
  else if (value instanceof Map) value.forEach(freezeAll);
  else for (const key in value) freezeAll(value[key]);
  return value;
}
