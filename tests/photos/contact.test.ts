/** A photograph on a contact sheet: its small picture, the codes in it, and how it is turned. */
import jsqr from "jsqr";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { contactOf } from "../../src/photos/contact.ts";
import { takeInPicture } from "../../src/photos/take-in.ts";
import { turnPicture } from "../../src/photos/turn.ts";
import { frameWithCode } from "../support/frame-with-code.ts";

const readBySecond = ("default" in jsqr ? jsqr.default : jsqr) as typeof jsqr.default;

const address = "https://eelgate.example/tiles/tb-014.html";

async function codesIn(bytes: Uint8Array): Promise<readonly string[]> {
  const contact = await contactOf(bytes);
  return "fault" in contact ? expect.fail(contact.fault.message) : contact.codes;
}

describe("the QR code of a label in a photograph", () => {
  test.each([0, 90, 180, 270])(
    "is read on a noisy ground, turned by %d degrees",
    async (turned) => {
      expect(await codesIn(await frameWithCode({ says: [address], turned }))).toEqual([address]);
    },
  );

  test("is read askew, and where it fills a tenth of a larger picture", async () => {
    expect(await codesIn(await frameWithCode({ says: [address], turned: 17 }))).toEqual([address]);
    const large = { says: [address], share: 1 / 10, width: 2400, height: 1800 };
    expect(await codesIn(await frameWithCode(large))).toEqual([address]);
  });

  test("is told with every other one that lies there, each once", async () => {
    const says = [address, "WIFI:T:WPA;S:studio;;", address];
    expect([...(await codesIn(await frameWithCode({ says })))].sort()).toEqual([
      ...["WIFI:T:WPA;S:studio;;", address],
    ]);
  });

  test("is none where there is none", async () => {
    expect(await codesIn(await frameWithCode({ says: [] }))).toEqual([]);
  });

  test("is what a second library reads as well", async () => {
    const frame = await frameWithCode({ says: [address], share: 1 / 3, noise: 3 });
    const { data, info } = await sharp(frame)
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const second = readBySecond(new Uint8ClampedArray(data), info.width, info.height);
    expect(await codesIn(frame)).toEqual([second?.data]);
  });
});

test("what is no picture is told as a fault", async () => {
  const svg = new TextEncoder().encode("<svg onload='alert(1)'/>");
  expect(await contactOf(svg)).toEqual({
    fault: {
      code: "picture-not-readable",
      message:
        "This is an SVG drawing, whatever its name says, and not a photograph that can be shown.",
      hint: "Save it as JPEG (or PNG, WebP, AVIF, TIFF, HEIC) and put that in its place.",
    },
  });
  expect(await turnPicture(svg, 90)).toHaveProperty("fault");
});

/** Red at the left, blue at the right. */
const halves = () =>
  sharp({ create: { width: 40, height: 20, channels: 3, background: "#f00" } }).composite([
    {
      input: { create: { width: 20, height: 20, channels: 3, background: "#00f" } },
      left: 20,
      top: 0,
    },
  ]);

async function cornersOf(bytes: Uint8Array) {
  const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
  const first = (data[0] ?? 0) > 128 ? "red" : "blue";
  return { size: [info.width, info.height], first };
}

describe("a photograph that is turned", () => {
  test.each([
    [90, [20, 40], "red"],
    [180, [40, 20], "blue"],
    [270, [20, 40], "blue"],
  ] as const)("by %d degrees lies so for good, and gives nothing away", async (by, size, first) => {
    const turned = await turnPicture(await halves().jpeg().toBuffer(), by);
    if ("fault" in turned) return expect.fail(turned.fault.message);
    expect(turned.format).toBe("jpeg");
    expect(await cornersOf(turned.bytes)).toEqual({ size, first });
    expect(await takeInPicture(turned.bytes)).toMatchObject({ ok: true, removed: [] });
  });

  test("is turned from the way up that it is looked at", async () => {
    // Orientation 6: to be turned by 90 degrees to the right (Exif 2.32, tag 0x0112).
    const asTaken = await halves().jpeg().withMetadata({ orientation: 6 }).toBuffer();
    const turned = await turnPicture(asTaken, 270);
    if ("fault" in turned) return expect.fail(turned.fault.message);
    expect(await cornersOf(turned.bytes)).toEqual({ size: [40, 20], first: "red" });
  });

  test("stays a PNG without loss, and becomes a JPEG from any other", async () => {
    const png = await turnPicture(await halves().png().toBuffer(), 180);
    const webp = await turnPicture(await halves().webp().toBuffer(), 180);
    expect([png, webp].map((each) => ("format" in each ? each.format : "fault"))).toEqual([
      ...["png", "jpeg"],
    ]);
  });
});
