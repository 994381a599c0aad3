/**
 * The most that is read of what somebody hands in. Records, pictures and logs may come from people
 * nobody knows, so nothing is read without end: what is larger is refused in words. Every limit lies
 * far beyond what a studio writes; the comment of each says why, and `docs/limits.md` is written
 * from this file (`npm test -- -u`).
 */

// ## Records

/** Bytes of a record's file. A thousand pages of writing. */
export const largestRecord = 1_000_000;

/** Letters of a record's fields, its notes not counted. The makers of twenty years of classes fit. */
export const longestYaml = 250_000;

/** Codes that one range names, as in TB-101..TB-140. More is a slip of the pen: no kiln holds as many tiles. */
export const longestRange = 1000;

// ## Logs of firings

/** Bytes of a log. A reading a second for a week. */
export const largestLog = 20_000_000;
