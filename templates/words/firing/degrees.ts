/** Temperatures and rates of climbing in words. */
import {
  celsiusStepToFahrenheitStep,
  degreesIn,
  type TemperatureUnit,
} from "../../../src/firing/units.ts";

/** A temperature in °C as words in one unit, to the degree: `1222 °C`, `2232 °F`. */
export function temperatureInWords(celsius: number, unit: TemperatureUnit): string {
  return `${inWholeDegrees(degreesIn(unit, celsius))} ${unit === "celsius" ? "°C" : "°F"}`;
}

/** A temperature in °C in both units, the studio's choice first: `1222 °C (2232 °F)`. */
export function temperatureInBothUnits(celsius: number, first: TemperatureUnit): string {
  const second = first === "celsius" ? "fahrenheit" : "celsius";
  return `${temperatureInWords(celsius, first)} (${temperatureInWords(celsius, second)})`;
}

/** A rate in °C an hour in both units, the studio's choice first: `60 °C an hour (108 °F)`. */
export function rateInBothUnits(celsiusPerHour: number, first: TemperatureUnit): string {
  const celsius = `${inWholeDegrees(celsiusPerHour)} °C`;
  const fahrenheit = `${inWholeDegrees(celsiusStepToFahrenheitStep(celsiusPerHour))} °F`;
  return first === "celsius"
    ? `${celsius} an hour (${fahrenheit})`
    : `${fahrenheit} an hour (${celsius})`;
}

/** The nearest whole number, with a true minus sign and never a “−0”. */
function inWholeDegrees(degrees: number): string {
  const whole = Math.round(degrees);
  return whole < 0 ? `−${-whole}` : `${Math.abs(whole)}`;
}
