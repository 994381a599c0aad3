/**
 * The name that most people would give a measured colour, for finding. Its borders are our own:
 * a tile is listed under one name, and looks like two where it lies near a border.
 */
export const colourNames = [
  "black",
  "blue",
  "brown",
  "cream",
  "green",
  "grey",
  "orange",
  "pink",
  "purple",
  "red",
  "turquoise",
  "white",
  "yellow",
] as const;
export type ColourName = (typeof colourNames)[number];

/**
 * Names a colour.
 *
 * @param lab CIELAB under D65
 */
export function nameColour([lightness, a, b]: readonly [number, number, number]): ColourName {
  const chroma = Math.hypot(a, b);
  const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
  if (chroma < 7) return nameGrey(lightness);
  if (lightness < 14) return "black";
  if (chroma < 22 && lightness > 72 && hue > 50 && hue < 115) return "cream";
  return nameHue(hue, lightness, chroma);
}

function nameGrey(lightness: number): ColourName {
  if (lightness < 25) return "black";
  return lightness > 80 ? "white" : "grey";
}

type NameByLight = (lightness: number, chroma: number) => ColourName;

/** Hue angles at which one name gives way to the next, from pink by red round to pink again. */
const borders: readonly (readonly [until: number, name: NameByLight])[] = [
  [20, (lightness) => (lightness < 45 ? "purple" : "pink")],
  [45, (lightness, chroma) => (lightness > 62 ? "pink" : chroma < 22 ? "brown" : "red")],
  [72, (lightness, chroma) => (lightness < 58 || chroma < 35 ? "brown" : "orange")],
  [95, (lightness) => (lightness < 55 ? "brown" : "yellow")],
  [105, (lightness) => (lightness < 55 ? "green" : "yellow")],
  [170, () => "green"],
  [225, () => "turquoise"],
  [295, () => "blue"],
  [335, () => "purple"],
  [360, (lightness) => (lightness < 45 ? "purple" : "pink")],
];

function nameHue(hue: number, lightness: number, chroma: number): ColourName {
  const [, name] = borders.find(([until]) => hue < until) ?? borders[0] ?? [];
  return name ? name(lightness, chroma) : "grey";
}
