/**
 * Thrown while a picture is read that holds more of something than any studio's picture does; caught
 * where the picture is inspected, and told as a fault.
 */
export class OverLimit extends Error {
  /** Completes "The photograph holds more than ...". */
  constructor(readonly what: string) {
    super(`more than ${what}`);
  }
}

/** Throws where there is more than the limit: `what` names the things counted. */
export function holdTo(limit: number, count: number, what: string): void {
  if (count > limit) throw new OverLimit(`${limit.toLocaleString("en")} ${what}`);
}
