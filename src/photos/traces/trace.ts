/**
 * What a photograph gives away about whoever took it. "notes" is whatever stands beside the picture
 * and is none of the others, be it words, dates, a second picture, or data that cannot be read and
 * so may hide anything.
 */
export type Trace = "device" | "notes" | "owner" | "place" | "serial";
