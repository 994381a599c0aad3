/**
 * Ways to carry a place in a photograph's file. The structures are those of Exif 2.32, XMP (parts 1
 * and 3), IPTC IIM 4.2, ISO 6709, ITU-T T.81, W3C PNG, RFC 9649 and ISO/IEC 14496-12.
 */
import { deflateSync } from "node:zlib";
import { blob, buildTiff, long, rationals, short, text } from "./exif-block.ts";
import { addHeifItem } from "./heif-block.ts";
import {
  addJpegMetadata,
  addPngChunks,
  addWebpChunks,
  encodePlainTiff,
  jpegSegment,
  xmpText,
} from "./pictures.ts";

const place = new Map([
  [1, text("N")],
  [2, rationals([51, 1], [30, 1], [26, 1])],
  [3, text("W")],
  [4, rationals([0, 1], [7, 1], [39, 1])],
]);

const main = new Map([[0x010f, text("Oxbowcam")]]);

/** EXIF with a place, in many shapes. */
export const exifWays: Readonly<Record<string, Buffer>> = {
  EXIF: buildTiff(main, undefined, place),
  "EXIF, where the picture looks at": buildTiff(
    main,
    undefined,
    new Map([
      [0x14, rationals([51, 1], [30, 1], [26, 1])],
      [0x16, rationals([0, 1], [7, 1], [39, 1])],
    ]),
  ),
  "EXIF, the area by name": buildTiff(
    main,
    undefined,
    new Map([[0x1c, blob(Buffer.from("ASCII\0\0\0Oxbow"))]]),
  ),
  "EXIF, of the small copy (IFD1)": withPlaceInSecond(),
  "EXIF behind a broken offset": withBrokenPointer(buildTiff(main, undefined, place)),
  "EXIF without its header": buildTiff(main, undefined, place).subarray(8),
  "EXIF, a remark with coordinates": buildTiff(
    main,
    new Map([[0x9286, blob(Buffer.from("ASCII\0\0\0taken at 51.50738, -0.12775"))]]),
  ),
  "EXIF, a description in degrees": buildTiff(
    new Map([[0x010e, text("51\xb030'26\"N 0\xb007'39\"W")]]),
  ),
  "EXIF in Windows' own words": buildTiff(
    new Map([[0x9c9c, blob(Buffer.from("51.50738, -0.12775", "utf16le"))]]),
  ),
};

function withPlaceInSecond(): Buffer {
  const gps = buildTiff(main, undefined, place);
  // The second directory points at the place of the first; the first then no longer does.
  const whole = buildTiff(main, undefined, place, new Map([[0x8825, long(8)]]));
  const first = whole.readUInt32LE(4);
  const entries = whole.readUInt16LE(first);
  for (let i = 0; i < entries; i++) {
    const at = first + 2 + i * 12;
    if (whole.readUInt16LE(at) !== 0x8825) continue;
    const pointer = whole.readUInt32LE(at + 8);
    whole.writeUInt16LE(0x9999, at);
    const second = whole.readUInt32LE(first + 2 + entries * 12);
    whole.writeUInt32LE(pointer, second + 2 + 8);
  }
  return gps.length > 0 ? whole : gps;
}

function withBrokenPointer(tiff: Buffer): Buffer {
  const broken = Buffer.from(tiff);
  broken.writeUInt32LE(broken.readUInt32LE(4) + 2, 4);
  return broken;
}

const rdf = (body: string, more = "") =>
  `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" ${more}>${body}</rdf:Description></rdf:RDF></x:xmpmeta>`;
const latitude = '="51,30.44N" ';

/** XMP with a place. */
export const xmpWays: Readonly<Record<string, Buffer>> = {
  XMP: Buffer.from(rdf("", `exif:GPSLatitude${latitude}`)),
  "XMP under another prefix": Buffer.from(rdf("", `e:GPSLatitude${latitude}`)),
  "XMP as an element": Buffer.from(rdf("<exif:GPSLongitude>0,7.6W</exif:GPSLongitude>")),
  "XMP as rdf:value": Buffer.from(
    rdf(
      '<exif:GPSLatitude rdf:parseType="Resource"><rdf:value>51,30.44N</rdf:value></exif:GPSLatitude>',
    ),
  ),
  "XMP in UTF-16": Buffer.from(`\ufeff${rdf("", `exif:GPSLatitude${latitude}`)}`, "utf16le"),
  "XMP in UTF-16, big end first": Buffer.from(
    rdf("", `exif:GPSLatitude${latitude}`),
    "utf16le",
  ).swap16(),
  "XMP with much space": Buffer.from(rdf("", `exif:GPSLatitude${" ".repeat(20_000)}${latitude}`)),
  "XMP, the city": Buffer.from(rdf("<photoshop:City>Oxbow</photoshop:City>")),
  "XMP, a location": Buffer.from(rdf("", 'Iptc4xmpCore:Location="Kiln Lane"')),
  "XMP, location created": Buffer.from(
    rdf('<i:LocationCreated><rdf:Bag><rdf:li i:City="Oxbow"/></rdf:Bag></i:LocationCreated>'),
  ),
  "XMP, geo:lat": Buffer.from(rdf("<geo:lat>51.5</geo:lat><geo:long>-0.1</geo:long>")),
  "XMP, a maker's own spelling": Buffer.from(rdf("", 'd:GpsLatitude="+51.5"')),
};

/** Datasets of IPTC, with the block that programs put them into. */
function iptc(dataset: number, words: string): Buffer {
  const head = Buffer.from([0x1c, 2, dataset, 0, words.length]);
  const data = Buffer.concat([head, Buffer.from(words)]);
  const block = Buffer.from("8BIM\x04\x04\0\0\0\0\0\0", "latin1");
  block.writeUInt32BE(data.length, 8);
  return Buffer.concat([block, data, Buffer.alloc(data.length % 2)]);
}

export const iptcWays: Readonly<Record<string, Buffer>> = {
  "IPTC, the city": iptc(90, "Oxbow"),
  "IPTC, the sub-location": iptc(92, "Kiln Lane"),
};

const films: Readonly<Record<string, Buffer>> = {
  "a film's atom": Buffer.from("\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+51.5000-000.1166/", "latin1"),
  "a film's key": Buffer.from(
    "com.apple.quicktime.location.ISO6709\0\0\0\x15data+51.5074-000.1278/",
  ),
  "a film's box": Buffer.from(
    "\0\0\0\x20loci\0\0\0\0\x15\xc7\0\0\xff\xff\xdf\x3b\0\x33\x81\xe4",
    "latin1",
  ),
};

type Way = readonly [name: string, bytes: Buffer];

const exifBody = (exif: Buffer) => Buffer.concat([Buffer.from("Exif\0\0"), exif]);
const xapHead = Buffer.from("http://ns.adobe.com/xap/1.0/\0");

export function jpegWays(plain: Buffer): Way[] {
  const add = (...segments: Buffer[]) =>
    Buffer.concat([plain.subarray(0, 2), ...segments, plain.subarray(2)]);
  const second = addJpegMetadata(plain, exifWays.EXIF);
  const named = (words: Readonly<Record<string, Buffer>>, make: (bytes: Buffer) => Buffer): Way[] =>
    Object.entries(words).map(([name, bytes]) => [`jpeg: ${name}`, make(bytes)]);
  const exif = exifWays.EXIF ?? Buffer.alloc(0);
  const xmp = xmpWays.XMP ?? Buffer.alloc(0);
  const middle = xmp.indexOf("Latitude") + 3;
  return [
    ...named(exifWays, (bytes) => add(jpegSegment(0xe1, exifBody(bytes)))),
    ...named(xmpWays, (bytes) => add(jpegSegment(0xe1, Buffer.concat([xapHead, bytes])))),
    ...named(iptcWays, (bytes) =>
      add(jpegSegment(0xed, Buffer.concat([Buffer.from("Photoshop 3.0\0"), bytes]))),
    ),
    ...named(films, (bytes) => Buffer.concat([plain, bytes])),
    [
      "jpeg: EXIF split over two segments",
      add(
        jpegSegment(0xe1, exifBody(exif.subarray(0, 60))),
        jpegSegment(0xe1, exifBody(exif.subarray(60))),
      ),
    ],
    [
      "jpeg: XMP split over two segments",
      add(
        jpegSegment(0xe1, Buffer.concat([xapHead, xmp.subarray(0, middle)])),
        jpegSegment(0xe1, Buffer.concat([xapHead, xmp.subarray(middle)])),
      ),
    ],
    [
      "jpeg: extended XMP, its pieces out of order",
      add(
        extendedXmp(xmp.subarray(middle), middle, xmp.length),
        extendedXmp(xmp.subarray(0, middle), 0, xmp.length),
      ),
    ],
    ["jpeg: a remark", add(jpegSegment(0xfe, Buffer.from("51.50738N, 0.12775W")))],
    ["jpeg: a remark with a link", add(jpegSegment(0xfe, Buffer.from("geo:51.5,-0.12")))],
    ["jpeg: EXIF in a segment of another number", add(jpegSegment(0xe5, exifBody(exif)))],
    ["jpeg: a second picture behind it", Buffer.concat([plain, second])],
    [
      "jpeg: a small picture in JFIF's extension",
      add(jpegSegment(0xe0, Buffer.concat([Buffer.from("JFXX\0\x10"), second]))),
    ],
    ["jpeg: behind its end", Buffer.concat([plain, exif])],
    ["jpeg: EXIF after the tables", addLate(plain, jpegSegment(0xe1, exifBody(exif)))],
  ];
}

function extendedXmp(piece: Buffer, offset: number, length: number): Buffer {
  const numbers = Buffer.alloc(8);
  numbers.writeUInt32BE(length, 0);
  numbers.writeUInt32BE(offset, 4);
  const head = Buffer.from(`http://ns.adobe.com/xmp/extension/\0${"0".repeat(32)}`);
  return jpegSegment(0xe1, Buffer.concat([head, numbers, piece]));
}

/** Straight before the scan. */
function addLate(plain: Buffer, segment: Buffer): Buffer {
  const scan = plain.indexOf(Buffer.from([0xff, 0xda]));
  return Buffer.concat([plain.subarray(0, scan), segment, plain.subarray(scan)]);
}

export function pngWays(plain: Buffer): Way[] {
  const add = (name: string, body: Buffer) => addPngChunks(plain, [[name, body]]);
  const exif = exifWays.EXIF ?? Buffer.alloc(0);
  const xmp = xmpWays.XMP ?? Buffer.alloc(0);
  const raw = (name: string, bytes: Buffer) =>
    Buffer.from(
      `\n${name}\n${`${bytes.length}`.padStart(8)}\n${bytes.toString("hex").replace(/.{72}/g, "$&\n")}\n`,
    );
  const key = (words: string) => Buffer.from(`${words}\0`, "latin1");
  const profile = "Raw profile type exif";
  const international = (packed: boolean, content: Buffer) =>
    Buffer.concat([
      key(profile),
      Buffer.from([packed ? 1 : 0, 0, 0, 0]),
      packed ? deflateSync(content) : content,
    ]);
  return [
    ...Object.entries(exifWays).map(([name, bytes]): Way => [`png: ${name}`, add("eXIf", bytes)]),
    ...Object.entries(xmpWays).map(
      ([name, bytes]): Way => [
        `png: ${name}, packed`,
        add("iTXt", xmpText(bytes, { packed: true })),
      ],
    ),
    ["png: XMP, not packed", add("iTXt", xmpText(xmp))],
    ["png: XMP as plain text", add("tEXt", Buffer.concat([key("XML:com.adobe.xmp"), xmp]))],
    [
      "png: packed text",
      add("zTXt", Buffer.concat([key("Comment"), Buffer.alloc(1), deflateSync(xmp)])),
    ],
    ["png: a raw profile", add("tEXt", Buffer.concat([key(profile), raw("exif", exifBody(exif))]))],
    [
      "png: a raw profile, packed",
      add("zTXt", Buffer.concat([key(profile), Buffer.alloc(1), deflateSync(raw("exif", exif))])),
    ],
    [
      "png: a raw profile in an international text",
      add("iTXt", international(false, raw("exif", exif))),
    ],
    [
      "png: a raw profile in a packed international text",
      add("iTXt", international(true, raw("exif", exif))),
    ],
    [
      "png: a raw profile of IPTC",
      add(
        "tEXt",
        Buffer.concat([
          key("Raw profile type iptc"),
          raw("iptc", iptcWays["IPTC, the city"] ?? exif),
        ]),
      ),
    ],
    ["png: packed EXIF", add("zxIf", Buffer.concat([Buffer.alloc(5), deflateSync(exif)]))],
    [
      "png: a comment",
      add("tEXt", Buffer.concat([key("Comment"), Buffer.from("51.50738, -0.12775")])),
    ],
    ["png: a chunk of its own name", add("prVt", exif)],
    ["png: behind its end", Buffer.concat([plain, exif])],
  ];
}

export function webpWays(plain: Buffer): Way[] {
  const add = (...chunks: [string, Buffer][]) => addWebpChunks(plain, chunks);
  return [
    ...Object.entries(exifWays).map(
      ([name, bytes]): Way => [`webp: ${name}`, add(["EXIF", bytes])],
    ),
    ...Object.entries(xmpWays).map(([name, bytes]): Way => [`webp: ${name}`, add(["XMP ", bytes])]),
    ["webp: a chunk of its own name", add(["NOTE", exifWays.EXIF ?? plain])],
    ["webp: a second EXIF", add(["EXIF", buildTiff(main)], ["EXIF", exifWays.EXIF ?? plain])],
    ["webp: behind its end", Buffer.concat([plain, exifWays.EXIF ?? plain])],
  ];
}

/** A picture of one pixel, with a description. */
const smallCopy = new Map([
  [254, long(1)],
  [256, long(1)],
  [257, long(1)],
  [258, short(8)],
  [259, short(1)],
  [262, short(1)],
  [270, text("51.50738, -0.12775")],
  [273, long(8)],
  [277, short(1)],
  [278, long(1)],
  [279, long(1)],
]);

export function tiffWays(): Way[] {
  const plain = encodePlainTiff();
  return [
    ["tiff: GPS", encodePlainTiff({ gps: place })],
    ["tiff: XMP", encodePlainTiff({ more: new Map([[700, blob(xmpWays.XMP ?? plain)]]) })],
    [
      "tiff: IPTC",
      encodePlainTiff({ more: new Map([[33723, blob(iptcWays["IPTC, the city"] ?? plain)]]) }),
    ],
    [
      "tiff: a description",
      encodePlainTiff({ more: new Map([[270, text("51.50738, -0.12775")]]) }),
    ],
    ["tiff: of the small copy", encodePlainTiff({ next: smallCopy })],
    ["tiff: behind its end", Buffer.concat([plain, exifWays.EXIF ?? plain])],
  ];
}

export function heifWays(kind: "avif" | "heic", plain: Buffer): Way[] {
  const exif = (bytes: Buffer) => Buffer.concat([Buffer.alloc(4), bytes]);
  const box = (name: string, body: Buffer) => {
    const head = Buffer.from(`\0\0\0\0${name}`, "latin1");
    head.writeUInt32BE(body.length + 8, 0);
    return Buffer.concat([head, body]);
  };
  return [
    ...Object.entries(exifWays).map(
      ([name, bytes]): Way => [`${kind}: ${name}`, addHeifItem(plain, "Exif", exif(bytes))],
    ),
    ...Object.entries(xmpWays).map(
      ([name, bytes]): Way => [`${kind}: ${name}`, addHeifItem(plain, "mime", bytes)],
    ),
    [`${kind}: an item of its own kind`, addHeifItem(plain, "note", exifWays.EXIF ?? plain)],
    [`${kind}: a box behind it`, Buffer.concat([plain, box("uuid", exifWays.EXIF ?? plain)])],
    [`${kind}: a film behind it`, Buffer.concat([plain, films["a film's atom"] ?? plain])],
  ];
}
