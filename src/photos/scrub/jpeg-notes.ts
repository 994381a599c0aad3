import { bufferOf, latin1, type Part } from "../containers/part.ts";

/** Names of application segments, and where their content begins (Exif 2.32; XMP, part 3, 1.1.3). */
const heads: readonly (readonly [name: string, contentAt: number])[] = [
  ["Exif\0\0", 6],
  ["http://ns.adobe.com/xap/1.0/\0", 29],
  // Followed by the sum of the whole, its length, and where in it this piece belongs.
  ["http://ns.adobe.com/xmp/extension/\0", 35 + 32 + 4 + 4],
  ["Photoshop 3.0\0", 14],
];

const extension = 2;

/**
 * The contents of segments that are not needed. What one segment was too small for is split over
 * several, and a word may be split with it: so segments of one name are put together again.
 */
export function gatherSegments(bytes: Uint8Array, parts: readonly Part[]): Uint8Array[] {
  const gathered = new Map<string, Part[]>();
  for (const part of parts) {
    const key = `${part.name} ${headOf(bytes, part)}`;
    gathered.set(key, [...(gathered.get(key) ?? []), part]);
  }
  return [...gathered.values()].map((group) => join(bytes, group));
}

/** The place in `heads`, or -1. */
function headOf(bytes: Uint8Array, { bodyStart, bodyEnd }: Part): number {
  return heads.findIndex(([name]) => {
    const end = bodyStart + name.length;
    return end <= bodyEnd && latin1(bytes, bodyStart, end) === name;
  });
}

function join(bytes: Uint8Array, group: readonly Part[]): Uint8Array {
  const buffer = bufferOf(bytes);
  const head = group[0] ? headOf(bytes, group[0]) : -1;
  const contentAt = heads[head]?.[1] ?? 0;
  const offsetOf = ({ bodyStart, bodyEnd }: Part) =>
    bodyStart + contentAt <= bodyEnd ? buffer.readUInt32BE(bodyStart + contentAt - 4) : 0;
  const inOrder = head === extension ? group.toSorted((a, b) => offsetOf(a) - offsetOf(b)) : group;
  return Buffer.concat(
    inOrder.map(({ bodyStart, bodyEnd }) => buffer.subarray(bodyStart + contentAt, bodyEnd)),
  );
}
