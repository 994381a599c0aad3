/** A photograph of a tile with its label beside it, drawn: a noisy ground, and a QR code on it. */
import QRCode from "qrcode";
import sharp from "sharp";

export interface FrameToDraw {
  /** What the QR code says; several lie side by side. */
  readonly says: readonly string[];
  /** How long a side of each code is, as a part of the picture's width. */
  readonly share?: number;
  /** Degrees by which the whole picture is turned. */
  readonly turned?: number;
  /** How far the points of the ground stray from grey, in codes of 8 bits. */
  readonly noise?: number;
  readonly width?: number;
  readonly height?: number;
}

export async function frameWithCode(frame: FrameToDraw): Promise<Buffer> {
  const { says, share = 1 / 5, turned = 0, width = 1000, height = 750 } = frame;
  const side = Math.round(width * share);
  const codes = await Promise.all(
    says.map(async (text, i) => ({
      input: await QRCode.toBuffer(text, { width: side, margin: 4 }),
      left: Math.round(width * 0.1) + i * (side + 40),
      top: Math.round(height * 0.55),
    })),
  );
  const noise = { type: "gaussian", mean: 120, sigma: frame.noise ?? 30 } as const;
  const drawn = await sharp({ create: { width, height, channels: 3, background: "#888", noise } })
    .composite(codes)
    .png()
    .toBuffer();
  return sharp(drawn).rotate(turned).jpeg({ quality: 85 }).toBuffer();
}
