/** A decoded picture: red, green and blue of sRGB, eight bits each, row by row. */
export interface Pixels {
  data: Uint8Array;
  width: number;
  height: number;
}

/** The plain mean colour as `#rrggbb`, shown while a picture loads. Looks at every fourth pixel. */
export function averageColour(pixels: Pixels): string {
  const sums = [0, 0, 0];
  let count = 0;
  for (let at = 0; at + 2 < pixels.data.length; at += 12) {
    for (let channel = 0; channel < 3; channel++) {
      sums[channel] = (sums[channel] ?? 0) + (pixels.data[at + channel] ?? 0);
    }
    count += 1;
  }
  const digits = sums.map((sum) =>
    Math.round(sum / count)
      .toString(16)
      .padStart(2, "0"),
  );
  return `#${digits.join("")}`;
}
