/** Degrees Celsius and Fahrenheit. Everything in this room reckons in °C and °C an hour. */

export type TemperatureUnit = "celsius" | "fahrenheit";

export function celsiusToFahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}

export function fahrenheitToCelsius(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

/** A rate or a difference of temperature: °C (an hour) to °F (an hour). */
export function celsiusStepToFahrenheitStep(celsius: number): number {
  return celsius * 1.8;
}

/** A rate or a difference of temperature: °F (an hour) to °C (an hour). */
export function fahrenheitStepToCelsiusStep(fahrenheit: number): number {
  return fahrenheit / 1.8;
}

/** A temperature in °C as degrees of one unit. */
export function degreesIn(unit: TemperatureUnit, celsius: number): number {
  return unit === "celsius" ? celsius : celsiusToFahrenheit(celsius);
}

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
