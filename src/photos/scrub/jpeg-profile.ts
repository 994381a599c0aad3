import { cleanProfile } from "../containers/icc.ts";
import { bufferOf, latin1, type Part } from "../containers/part.ts";

const signature = "ICC_PROFILE\0";

/** Where the profile's bytes begin in a segment: after the name, its number and how many there are. */
const headLength = signature.length + 2;

/** Whether a segment holds (part of) a colour profile (ICC.1:2022, annex B.4). */
export function holdsProfile(bytes: Uint8Array, { name, bodyStart, bodyEnd }: Part): boolean {
  return (
    name === "e2" &&
    bodyEnd - bodyStart >= headLength &&
    latin1(bytes, bodyStart, bodyStart + signature.length) === signature
  );
}

export interface JpegProfile {
  /** Each of its segments as it is to be written; none where it is no profile. */
  readonly segments: ReadonlyMap<Part, Buffer>;
  /** The profile as it was, where not all of it stays. */
  readonly note: Uint8Array | undefined;
}

/** Takes out of a JPEG's colour profile, which may be split over segments, what colours do not need. */
export function cleanJpegProfile(bytes: Uint8Array, parts: readonly Part[]): JpegProfile {
  const split = parts.filter((part) => holdsProfile(bytes, part));
  const inOrder = split.toSorted((a, b) => numberOf(bytes, a) - numberOf(bytes, b));
  const profile = Buffer.concat(inOrder.map((part) => profileBytes(bytes, part)));
  const isWhole = inOrder.every(
    (part, index) =>
      numberOf(bytes, part) === index + 1 &&
      bytes[part.bodyStart + signature.length + 1] === split.length,
  );
  const clean = isWhole ? cleanProfile(profile) : undefined;
  if (!clean) return { segments: new Map(), note: split.length > 0 ? profile : undefined };
  let from = 0;
  const segments = new Map<Part, Buffer>();
  for (const part of inOrder) {
    const segment = Buffer.from(bytes.subarray(part.start, part.end));
    const head = part.bodyStart - part.start + headLength;
    from += clean.copy(segment, head, from, from + segment.length - head);
    segments.set(part, segment);
  }
  return { segments, note: clean.equals(profile) ? undefined : profile };
}

function numberOf(bytes: Uint8Array, { bodyStart }: Part): number {
  return bytes[bodyStart + signature.length] ?? 0;
}

function profileBytes(bytes: Uint8Array, { bodyStart, bodyEnd }: Part): Buffer {
  return bufferOf(bytes).subarray(bodyStart + headLength, bodyEnd);
}
