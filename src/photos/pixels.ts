/** A decoded picture: red, green and blue of sRGB, eight bits each, row by row. */
export interface Pixels {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** The plain mean colour as `#rrggbb`, shown while a picture loads. Looks at every 16th pixel. */
export function averageColour({ data }: Pixels): string {
  let [red, green, blue, count] = [0, 0, 0, 0];
  for (let at = 0; at + 2 < data.length; at += 48) {
    red += data[at] ?? 0;
    green += data[at + 1] ?? 0;
    blue += data[at + 2] ?? 0;
    count += 1;
  }
  const digits = (sum: number) =>
    Math.round(sum / count)
      .toString(16)
      .padStart(2, "0");
  return `#${digits(red)}${digits(green)}${digits(blue)}`;
}
