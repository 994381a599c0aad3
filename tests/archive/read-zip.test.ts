import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readZip } from "../../src/archive/read-zip.ts";
import { mostZipEntries } from "../../src/terms/limits.ts";
import { type ZipEntry, zipOf } from "../support/zip.ts";
import { temporaryFolder } from "./archives.ts";

const largest = () => 1000;

async function read(zip: Buffer) {
  const file = path.join(temporaryFolder(), "handed-in.zip");
  fs.writeFileSync(file, zip);
  return readZip(file, largest);
}

async function refusalOf(...entries: readonly ZipEntry[]) {
  const sound = { name: "tiles/TB-1.md", content: "---\n---\n" };
  const reading = await read(zipOf([sound, ...entries]));
  return reading.ok ? "read" : reading.fault;
}

describe("a zip", () => {
  it("is read file by file, packed or not, and its folders are no files", async () => {
    const reading = await read(
      zipOf([
        { name: "tiles/", content: "" },
        { name: "tiles/TB-1.md", content: "one" },
        { name: "tiles/Å.jpg", content: new Uint8Array([1, 2]), isStored: true },
      ]),
    );
    expect(reading).toEqual({
      ok: true,
      files: [
        { path: "tiles/TB-1.md", contents: { bytes: Buffer.from("one") } },
        { path: "tiles/Å.jpg", contents: { bytes: Buffer.from([1, 2]) } },
      ],
    });
  });

  it("gives only the length of a file of which more would be read than is wanted", async () => {
    const reading = await read(zipOf([{ name: "a.md", content: "x".repeat(1001) }]));
    expect(reading).toEqual({ ok: true, files: [{ path: "a.md", contents: { tooLarge: 1001 } }] });
  });

  it("may be empty", async () => {
    expect(await read(zipOf([]))).toEqual({ ok: true, files: [] });
  });
});

describe("a zip is refused, all of it, and in words,", () => {
  it.each(["../out.md", "tiles/../../out.md", "/etc/out.md", "C:/out.md", "..\\out.md", "a\0.md"])(
    "where a file in it is named %j",
    async (name) => {
      expect(await refusalOf({ name, content: "" })).toEqual({
        message: `A file in it is named “${name.replace("\\", "/")}”, which leads out of the folder it would be unpacked into.`,
        hint: "Ask whoever sent it for the tiles' own files, and do not open it by hand.",
      });
    },
  );

  it("where one is a link", async () => {
    expect(await refusalOf({ name: "a.md", content: "/etc/passwd", mode: 0o120777 })).toEqual({
      message: "“a.md” in it is no file but a link to one.",
      hint: "Ask whoever sent it for the tiles' own files, and do not open it by hand.",
    });
  });

  it("where one is locked", async () => {
    expect(await refusalOf({ name: "a.md", content: "x", isEncrypted: true })).toEqual({
      message: "It is locked with a password.",
      hint: "Ask for it without one, or unpack it and hand in the folder.",
    });
  });

  it("where two have one name, however it is spelt", async () => {
    expect(await refusalOf({ name: "Tiles/tb-1.MD", content: "x" })).toEqual({
      message: "It holds “Tiles/tb-1.MD” twice, and nobody can say which one is meant.",
      hint: "Ask for a zip with one of the two.",
    });
  });

  it("where one unpacks to hundreds of times its size", async () => {
    expect(await refusalOf({ name: "a.jpg", content: new Uint8Array(2_000_000) })).toEqual({
      message: "“a.jpg” in it unpacks to more than 200 times its size, as no photograph does.",
      hint: "Ask whoever sent it for the tiles' own files, and do not open it by hand.",
    });
  });

  it("where all together would fill the memory, whatever is packed twice", async () => {
    const many = Array.from({ length: 700 }, (_, i) => ({
      ...{ name: `${i}.jpg`, content: new Uint8Array(10), said: 999_999 },
    }));
    expect(await refusalOf(...many)).toEqual({
      message: "It would unpack to more than 600 MB.",
      hint: "Pack fewer tiles into one zip, or hand in the folder itself.",
    });
  });

  it("where it has more files than a class hands in, said or not", async () => {
    const many = Array.from({ length: mostZipEntries + 1 }, (_, i) => ({
      ...{ name: `${i}.md`, content: "" },
    }));
    const tooMany = {
      message: "It holds more than 2000 files.",
      hint: "A zip of tiles holds a few for each tile. Pack fewer into one zip, or hand in the folder itself.",
    };
    expect(await refusalOf(...many)).toEqual(tooMany);
    const million = zipOf([]);
    million.writeUInt16LE(65_000, 10);
    expect(await read(million)).toEqual({ ok: false, fault: tooMany });
  });

  it.each([
    ["it is longer than the zip says", { said: 2 }],
    ["it is shorter than the zip says", { said: 900 }],
    ["its sum is another", { sum: 7 }],
  ])("where a file in it is damaged: %s", async (_, lie) => {
    expect(await refusalOf({ name: "a.md", content: "abcdef", ...lie })).toEqual({
      message: "“a.md” in it is damaged: it does not unpack to what the zip says of it.",
      hint: "Download or copy it again; if it stays so, ask for it again.",
    });
  });

  it("where its end or its list is missing", async () => {
    const whole = zipOf([{ name: "a.md", content: "abcdef" }]);
    const hint = "Download or copy it again; if it stays so, ask for it again.";
    expect(await read(whole.subarray(0, whole.length - 10))).toEqual({
      ok: false,
      fault: { message: "It is no zip, or its end is missing.", hint },
    });
    expect(await read(Buffer.from("a picture"))).toMatchObject({ ok: false });
    const noList = Buffer.from(whole);
    noList.writeUInt32LE(whole.length - 30, whole.length - 6);
    expect(await read(noList)).toEqual({
      ok: false,
      fault: { message: "Its list of files is damaged or cut off.", hint },
    });
  });

  it("whichever byte of it is another", async () => {
    const whole = zipOf([{ name: "tiles/TB-1.md", content: "---\nlayers: [{glaze: 7}]\n---\n" }]);
    const sound = await read(whole);
    for (let at = 0; at < whole.length; at += 1) {
      const broken = Buffer.from(whole);
      broken.writeUInt8((whole.readUInt8(at) ^ 0x55) & 0xff, at);
      const reading = await read(broken);
      if (!reading.ok) continue;
      // Names, dates and permissions bear no sum; what is in the file does.
      const [file] = reading.files;
      if (file && "bytes" in file.contents)
        expect([at, file.contents]).toEqual([at, sound.ok && sound.files[0]?.contents]);
    }
  });
});
