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

/** Empty lines in a row among the fields. Whoever lays out a record by hand leaves two. */
export const mostEmptyLines = 500;

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

/** Versions of one record that its story is told from, the newest. A tile is written down, fired and judged: three, and some corrections. */
export const mostVersions = 40;

/** Letters of the layers of one tile on a line in short form. Thirty layers with some words each have half as many. */
export const longestShortForm = 5000;

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

/** Problems listed for one file; the rest are only counted. Nobody mends more at once. */
export const mostProblemsOfFile = 100;

// ## Logs of firings

/** Bytes of a log. A reading a second for a week. */
export const largestLog = 20_000_000;

/** Rows of a log. A reading a second for three days and a half. */
export const mostLogRows = 300_000;

/** Cells of all rows of a log. Ten columns, a reading a second, for three days and a half. */
export const mostLogCells = 3_000_000;
// ## Pictures

/** Bytes of a picture's file. Forges refuse files of 100 MB; large cameras write raw TIFFs of half of it. */
export const largestPicture = 150_000_000;

/** Bytes of the studio's mark, which every page loads. A drawing of some paths has 5 KB, a PNG of 200 points 20. */
export const largestMark = 100_000;

/** Pixels of a picture: a little more than the largest phones take. */
export const mostPixels = 120_000_000;

/**
 * Pixels of a progressive JPEG times the passes it is coded in. Programs write some ten passes; ten
 * of the largest picture are half of this.
 */
export const mostPassPixels = 2_400_000_000;

/** Bytes beside the picture itself. A phone's short film behind a photograph takes 3 to 20 MB. */
export const largestNotes = 40_000_000;

/** Bytes of all packed texts of a picture when unpacked. A program's notes take some 100 KB. */
export const largestUnpacked = 16_000_000;

/** Bytes of a colour profile. Those of cameras and phones take under 4 KB, a printer's some 2 MB. */
export const largestProfile = 4_000_000;

/** Entries of a colour profile's table. Most hold ten to twenty. */
export const mostProfileEntries = 100;

/** Segments of a JPEG. A phone's depth map in its notes takes a hundred, passes some twenty. */
export const mostSegments = 4_000;

/** Chunks of a PNG or WebP. A PNG of 100 MB in the smallest chunks programs write (8 KB) has 12,500. */
export const mostChunks = 60_000;

/** Boxes of an AVIF or HEIC that lie side by side. One of 108 megapixels has some 500. */
export const mostBoxes = 8_000;

/** Items, and stretches of all items, of an AVIF or HEIC. One of 108 megapixels has some 450 tiles. */
export const mostItems = 8_000;

/** Directories of EXIF or TIFF in one block. A camera writes four or five. */
export const mostExifDirectories = 64;

/** Entries of all directories of one block together. A camera writes one or two hundred. */
export const mostExifEntries = 4_000;

/** EXIF blocks that are looked for in one stretch of notes. A phone's second pictures bring one each. */
export const mostExifBlocks = 32;

/** Strips or tiles of a TIFF. Strips of one row are usual, and the tallest pictures have some 15,000. */
export const mostStrips = 200_000;

/** QR codes that are read in one photograph. A sheet of labels has 24. */
export const mostCodesInFrame = 30;

/** Photographs on one contact sheet of the desk. Two full kilns of 200 tiles. */
export const mostOnContactSheet = 400;

/** Bytes of all photographs on a contact sheet. 400 of the largest phones' have some 4 GB. */
export const largestContactSheet = 5_000_000_000;

// ## What is handed in

/** Bytes of a zip. As many photographs as a class takes in a term. */
export const largestZip = 500_000_000;

/** Files in a zip, or in a folder that is handed in. Four for each of 500 tiles. */
export const mostZipEntries = 2_000;

/** Bytes of all files of a zip, unpacked. Photographs hardly shrink when they are packed. */
export const largestUnzipped = 600_000_000;

/** How many times larger a file may be than it is packed, above 1 MB. Texts shrink to a twentieth, photographs not at all. */
export const mostZipRatio = 200;

/** Bytes of a spreadsheet. Twenty years of tiles. */
export const largestSpreadsheet = 5_000_000;

/** Rows of a spreadsheet. As many tiles as a kiln holds in a year. */
export const mostSheetRows = 2_000;

/** Columns of a spreadsheet. Four for each of thirty layers, and all other fields. */
export const mostSheetColumns = 200;
