import type { Vec3 } from "./vector.ts";

/** Linear light of an sRGB colour written "#rrggbb". */
export function linearFromHex(hex: string): Vec3 {
  const part = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [part(1), part(3), part(5)];
}
