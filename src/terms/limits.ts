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
export const longestYaml = 100_000;

/** Lines of a record's fields. Five for each of 4,000 makers. */
export const mostLines = 20_000;

/** Commas in a record's fields. As many as there may be values. */
export const mostCommas = 20_000;

/** Codes that one range names, as in TB-101..TB-140. More is a slip of the pen: no kiln holds as many tiles. */
export const longestRange = 1000;

/** Codes that all ranges and lists of one record name together. Fifty full kilns. */
export const mostCodesOfRecord = 5000;

/** Codes that all ranges and lists of an archive name together. Thirty makers with a tile a day need ten years for as many. */
export const mostCodesOfArchive = 100_000;

/** Values of one record: words, lists and maps. Five for each of 4,000 makers. */
export const mostValues = 20_000;

/** Fields of one map. A studio of 5,000 makers is no studio any more. */
export const longestMap = 5000;

/** Entries of one list. No kiln holds as many tiles on a shelf. */
export const longestList = 1000;

/** Layers of one tile. The thickest stack that holds on a tile is some twenty. */
export const mostLayers = 100;

/** Choices, words or ids of one field, such as surfaces, faults or the glazes a layer laps over. The longest list of choices has some twenty. */
export const mostChoices = 30;

/** Letters of one value. Six pages; what is longer is told in the notes. */
export const longestValue = 10_000;

/** Letters of the name of a field. The longest that Tilebook knows has 15. */
export const longestKey = 200;

/** Maps and lists in each other. A load list by shelf lies three deep. */
export const deepestNesting = 20;

/** Values marked with & in one record, to be repeated elsewhere. Nobody needs to mark any. */
export const mostAnchors = 50;

/** Values that are repeated by * in one record. */
export const mostRepeated = 1000;

/** Problems that are told of one file; the rest is counted. Nobody mends more at once. */
export const mostProblemsOfFile = 100;

// ## Logs of firings

/** Bytes of a log. A reading a second for a week. */
export const largestLog = 20_000_000;

/** Rows of a log. A reading a second for three days and a half. */
export const mostLogRows = 300_000;

/** Cells of all rows of a log. Ten columns, a reading a second, for three days and a half. */
export const mostLogCells = 3_000_000;
