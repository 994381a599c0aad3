import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fc, test } from "@fast-check/vitest";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { readMark } from "../../src/photos/mark/mark.ts";
import { judgeSvg } from "../../src/photos/mark/svg.ts";
import { useWorkFolder, work } from "./work-folder.ts";

const svg = (inside: string, more = "") =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"${more}>${inside}</svg>`;

const messageOf = (text: string) => {
  const judged = judgeSvg(text);
  return "message" in judged ? judged.message : "taken";
};

describe("a drawing is taken", () => {
  it.each([
    ["with shapes", svg('<rect x="1" y="1" width="3" height="3" fill="#123"/>')],
    ["with its first line and a comment", `<?xml version="1.0"?>\n<!-- ours -->\n${svg("")}`],
    ["with a shade of its own", svg('<defs><linearGradient id="a"/></defs><path fill="url(#a)"/>')],
    ["with styles", svg("<style>.a{fill:#123}</style><path class='a' d='M0 0h4'/>")],
    ["with a title", svg("<title>Fish &amp; chips</title>")],
  ])("%s", (_, text) => {
    expect(judgeSvg(text)).toEqual({ width: 40, height: 20 });
  });

  it("that says its width and height, and no box", () => {
    const text = '<svg xmlns="http://www.w3.org/2000/svg" width="30px" height="15px"/>';
    expect(judgeSvg(text)).toEqual({ width: 30, height: 15 });
  });
});

/** What a stranger would try. */
const hostile = {
  "a script": svg("<script>steal()</script>"),
  "a script of another namespace": svg("<s:script>steal()</s:script>"),
  "a script in capitals": svg("<SCRIPT>steal()</SCRIPT>"),
  "an event": svg("", ' onload="steal()"'),
  "an event on a shape": svg('<path ONCLICK="steal()"/>'),
  "a web page inside": svg("<foreignObject><p/></foreignObject>"),
  "a picture from elsewhere": svg('<image href="https://example.org/x.png"/>'),
  "a part from elsewhere": svg('<use href="https://example.org/x.svg#a"/>'),
  "a link": svg('<a href="javascript:steal()"><path/></a>'),
  "a paint from elsewhere": svg('<path fill="url(https://example.org/x)"/>'),
  "a paint with an odd bracket": svg('<path fill="url (https://example.org/x)"/>'),
  "styles from elsewhere": svg("<style>@import 'https://example.org/x.css'</style>"),
  "styles with a hidden letter": svg("<style>.a{fill:u\\72l(https://example.org)}</style>"),
  "a style that loads": svg('<path style="fill:url(//example.org/x)"/>'),
  "a letter hidden in an address": svg('<linearGradient href="&#106;avascript:x"/>'),
  "a change of an attribute": svg('<set attributeName="href" to="javascript:x"/>'),
  "an entity": `<!DOCTYPE svg [<!ENTITY a "aaaa">]>${svg("&a;")}`,
  "a command to the program that reads it": `<?xml-stylesheet href="x.css"?>${svg("")}`,
  "a stretch that is not read": svg("<![CDATA[<script>steal()</script>]]>"),
  "a tag that nobody closes": svg("<g>"),
  "a second drawing": svg("") + svg(""),
  "a tag within a value": svg('<path d="<script>"/>'),
  letters: svg("<text>Eelgate</text>"),
  "no drawing at all": "<html><body/></html>",
  nothing: "",
};

it.each(Object.entries(hostile))("a drawing with %s is refused", (_, text) => {
  expect(messageOf(text)).not.toBe("taken");
});

it("each refusal says what was found, in these words", () => {
  const told = Object.entries(hostile).map(([what, text]) => `${what}: ${messageOf(text)}`);
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "a script: The mark holds “<script>”, which is not taken into pages
    a script of another namespace: The mark holds “<s:script>”, which is not taken into pages
    a script in capitals: The mark holds “<SCRIPT>”, which is not taken into pages
    an event: The mark has “onload” in it: it would run when something happens
    an event on a shape: The mark has “ONCLICK” in it: it would run when something happens
    a web page inside: The mark holds “<foreignObject>”, which is not taken into pages
    a picture from elsewhere: The mark holds “<image>”, which is not taken into pages
    a part from elsewhere: The mark holds “<use>”, which is not taken into pages
    a link: The mark holds “<a>”, which is not taken into pages
    a paint from elsewhere: The mark has “fill” in it: “url(https://example.org/x)” may lead out of the drawing
    a paint with an odd bracket: The mark has “fill” in it: “url (https://example.org/x)” may lead out of the drawing
    styles from elsewhere: The mark has “style” in it: its rules may lead out of the drawing
    styles with a hidden letter: The mark has “style” in it: its rules may lead out of the drawing
    a style that loads: The mark has “style” in it: “fill:url(//example.org/x)” may lead out of the drawing
    a letter hidden in an address: The mark has “href” in it: it leads out of the drawing
    a change of an attribute: The mark holds “<set>”, which is not taken into pages
    an entity: The mark cannot be read as a drawing, near “<!DOCTYPE svg [<!ENTITY a "aaa”
    a command to the program that reads it: The mark cannot be read as a drawing, near “<?xml-stylesheet href="x.css"?”
    a stretch that is not read: The mark cannot be read as a drawing, near “<![CDATA[<script>steal()</scri”
    a tag that nobody closes: The mark cannot be read as a drawing, near “</svg>”
    a second drawing: The mark cannot be read as a drawing, near “vg" viewBox="0 0 40 20"></svg>”
    a tag within a value: The mark cannot be read as a drawing, near “<path d="<script>"/></svg>”
    letters: The mark holds “<text>”, which is not taken into pages
    no drawing at all: The mark holds “<html>”, which is not taken into pages
    nothing: The mark cannot be read as a drawing, near “”"
  `);
});

test.prop([fc.constantFrom(svg("<g></g>"), svg("<title>a</title>")), fc.string(), fc.nat()])(
  "whatever else is in it, a script never gets by",
  (text, words, at) => {
    const place = at % (text.length + 1);
    const spoilt = `${text.slice(0, place)}${words}<script>x</script>${text.slice(place)}`;
    expect(messageOf(spoilt)).not.toBe("taken");
  },
);

describe("the file of a mark", () => {
  useWorkFolder();
  const fileOf = (name: string, content: string | Uint8Array) => {
    const path = join(work.root, name);
    writeFileSync(path, content);
    return path;
  };
  const drawn = (width: number, height: number) =>
    sharp({ create: { width, height, channels: 4, background: "#2f7d6d80" } })
      .withExif({ IFD0: { Copyright: "Bram Tolliver" } })
      .png();

  it("an SVG is published as it is", async () => {
    const text = svg("<path d='M0 0h4'/>");
    expect(await readMark(fileOf("mark.svg", text))).toEqual({
      ...{ format: "svg", width: 40, height: 20 },
      bytes: Buffer.from(text),
    });
  });

  it("a PNG is published small, with what shows through it and without its notes", async () => {
    const mark = await readMark(fileOf("mark.png", await drawn(600, 400).toBuffer()));
    if ("message" in mark) throw new Error(mark.message);
    expect([mark.format, mark.width, mark.height]).toEqual(["png", 192, 128]);
    expect(Buffer.from(mark.bytes).includes("Bram")).toBe(false);
    expect((await sharp(mark.bytes).metadata()).hasAlpha).toBe(true);
  });

  it("what cannot be a mark is refused with what to do", async () => {
    const told = [
      await readMark(join(work.root, "none.svg")),
      await readMark(fileOf("long.png", await drawn(600, 20).toBuffer())),
      await readMark(fileOf("large.svg", svg(`<!--${" ".repeat(100_001)}-->`))),
      await readMark(fileOf("photo.png", await drawn(60, 20).jpeg().toBuffer())),
    ].map((mark) => ("message" in mark ? `${mark.message}. ${mark.hint}` : "taken"));
    expect(told.join("\n")).toMatchInlineSnapshot(`
      "There is no such file beside studio.yaml. Put the mark there, or write its name as it is: capital and small letters count.
      The mark is too long for its height to stand before the studio's name. Take one that is at most 5 times as wide as it is high, or as high as it is wide.
      The mark has more than 100 KB, and is loaded with every page. Save it smaller: 200 points are high enough for a PNG, and an SVG needs few paths.
      The mark is no PNG, whatever its name says. Save it as PNG or SVG."
    `);
  });
});
