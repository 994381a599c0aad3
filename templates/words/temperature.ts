/** Temperatures, rates and lengths of time as pages tell them. */

export type TemperatureUnit = "celsius" | "fahrenheit";

export function toUnit(celsius: number, unit: TemperatureUnit): number {
  return unit === "celsius" ? celsius : celsius * 1.8 + 32;
}

/** `1222 °C`, `2232 °F` */
export function formatTemperature(celsius: number, unit: TemperatureUnit): string {
  return `${whole(toUnit(celsius, unit))} ${signs[unit]}`;
}

/** Keeps a number and the unit behind it on one line. */
export function tied(words: string): string {
  return words.replace(/ (?=°[CF])/gu, "\u00a0");
}

/** `60 °C an hour (108 °F)`: a rate has no zero to shift. */
export function formatRates(celsiusPerHour: number, first: TemperatureUnit): string {
  const rate = (unit: TemperatureUnit) =>
    `${whole(unit === "celsius" ? celsiusPerHour : celsiusPerHour * 1.8)} ${signs[unit]}`;
  return `${rate(first)} an hour (${rate(otherUnit(first))})`;
}

/** `15 minutes`, `1 hour`, `2 hours 30 minutes` */
export function formatMinutes(minutes: number): string {
  const all = Math.round(minutes);
  const [hours, rest] = [Math.floor(all / 60), all % 60];
  const told = [
    hours > 0 && `${hours} ${hours === 1 ? "hour" : "hours"}`,
    (rest > 0 || hours === 0) && `${rest} ${rest === 1 ? "minute" : "minutes"}`,
  ];
  return told.filter(Boolean).join(" ");
}

const signs: Readonly<Record<TemperatureUnit, string>> = { celsius: "°C", fahrenheit: "°F" };

function otherUnit(unit: TemperatureUnit): TemperatureUnit {
  return unit === "celsius" ? "fahrenheit" : "celsius";
}

/** A whole number with a true minus sign. */
function whole(number: number): string {
  const rounded = Math.round(number);
  return rounded < 0 ? `−${-rounded}` : `${Math.abs(rounded)}`;
}
