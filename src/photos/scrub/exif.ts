/** An EXIF block (big-endian TIFF) that tells which way up a picture is and nothing else. */
export function encodeOrientation(orientation: number): Buffer {
  const block = Buffer.alloc(8 + 2 + 12 + 4);
  block.write("MM\0*", 0, "latin1");
  block.writeUInt32BE(8, 4); // the directory starts here
  block.writeUInt16BE(1, 8); // one entry
  block.writeUInt16BE(0x0112, 10); // orientation
  block.writeUInt16BE(3, 12); // of type short
  block.writeUInt32BE(1, 14); // one of it
  block.writeUInt16BE(orientation, 18);
  return block;
}
