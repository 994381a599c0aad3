/** What was posted, doubted field by field. */
import { Refused } from "./door.ts";

/**
 * The fields of a map that was posted.
 *
 * @throws Refused where it is none
 */
export function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) throw unreadable();
  return value as Readonly<Record<string, unknown>>;
}

/** What is said of something posted that no page here would send. */
export function unreadable(): Refused {
  return new Refused(400, "That could not be understood.");
}
