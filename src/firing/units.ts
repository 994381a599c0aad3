/** Degrees Celsius and Fahrenheit, rates and lengths of time. Everything in this room reckons in °C and °C an hour. */

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

/** Minutes as words: `15 minutes`, `1 hour`, `2 hours 30 minutes`. */
export function minutesInWords(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  const parts = [
    hours > 0 ? `${hours} ${hours === 1 ? "hour" : "hours"}` : "",
    rest > 0 || hours === 0 ? `${rest} ${rest === 1 ? "minute" : "minutes"}` : "",
  ];
  return parts.filter((part) => part !== "").join(" ");
}
