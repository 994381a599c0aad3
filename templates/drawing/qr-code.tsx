/** A QR code (ISO/IEC 18004), drawn in one path so that it prints sharply at any size. */
import type { VNode } from "preact";
import QRCode from "qrcode";

/** The standard asks for so many light modules around a code. */
const quietZone = 4;

/** @param text what a phone that reads the code is given */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }): VNode {
  const { size, data } = QRCode.create(text, { errorCorrectionLevel: "M" }).modules;
  const whole = size + 2 * quietZone;
  return (
    <svg class="qr-code" role="img" aria-label={label} viewBox={`0 0 ${whole} ${whole}`}>
      <path class="paper" d={`M0 0h${whole}v${whole}H0z`} />
      <path d={darkRuns(size, (x, y) => Boolean(data[y * size + x]))} />
    </svg>
  );
}

/** Every row's dark modules, those side by side as one. */
function darkRuns(size: number, isDark: (x: number, y: number) => boolean): string {
  const runs: string[] = [];
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) {
      if (!isDark(x, y)) continue;
      const begin = x;
      while (x < size && isDark(x, y)) x += 1;
      runs.push(`M${begin + quietZone} ${y + quietZone}h${x - begin}v1h${begin - x}z`);
    }
  return runs.join("");
}
