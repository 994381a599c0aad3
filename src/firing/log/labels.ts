/** What the label above a column says about it. */
import type { TemperatureUnit } from "../units.ts";

export type TimeUnit = "milliseconds" | "seconds" | "minutes" | "hours";

const timeWords = new Set(
  "clock date datetime duration elapsed heure hora t tiempo time timestamp uhrzeit zeit zeitpunkt zeitstempel datum".split(
    " ",
  ),
);

const timeUnits: readonly (readonly [TimeUnit, ReadonlySet<string>])[] = [
  ["milliseconds", new Set(["ms", "msec", "millis", "milliseconds"])],
  ["seconds", new Set(["s", "sec", "secs", "second", "seconds", "sek", "sekunden"])],
  ["minutes", new Set(["m", "min", "mins", "minute", "minutes", "minuten"])],
  ["hours", new Set(["h", "hr", "hrs", "hour", "hours", "std", "stunden"])],
];

const setPointWords = new Set(
  "consigne demand desired program programme schedule set setpoint setpt sp soll sollwert target".split(
    " ",
  ),
);

const temperatureWords = new Set(
  "actual celsius fahrenheit ist istwert kiln measured ofen oven probe pv pyrometer reading tc temp temperature temperatur température thermocouple".split(
    " ",
  ),
);

const otherWords = new Set(
  "ambient amps alarm board cj cjc cold energy error humidity id index internal junction kwh mv no nr number output percent power record relay room row sample segment seg status step volt volts watt".split(
    " ",
  ),
);

/** A label's words, in lower case, parted wherever it has a space, a sign or a change of case. */
function wordsOf(label: string): string[] {
  return label
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .toLowerCase()
    .split(/[^\p{L}°º]+/u)
    .filter((word) => word !== "");
}

const has = (label: string, words: ReadonlySet<string>) =>
  wordsOf(label).some((word) => words.has(word));

/** What a column may hold, as far as its label tells; "unknown" where it does not. */
export type LabelMeaning = "other" | "set-point" | "temperature" | "time" | "unknown";

/** Reads a label. A set point is one even where the label also speaks of temperature. */
export function meaningOf(label: string): LabelMeaning {
  if (has(label, setPointWords) || /set.?point/iu.test(label)) return "set-point";
  if (has(label, otherWords) || label.includes("%")) return "other";
  if (findSureUnit(label) || /^T(?:\d|\b)/u.test(label.trim())) return "temperature";
  if (has(label, timeWords)) return "time";
  if (has(label, temperatureWords) || findUnitIn(label)) return "temperature";
  return findTimeUnit(label) ? "time" : "unknown";
}

/** The unit of time that a label names; undefined where it names none, or a form as in h:mm:ss. */
export function findTimeUnit(label: string): TimeUnit | undefined {
  if (/[hms]:[ms]/iu.test(label)) return undefined;
  return timeUnits.find(([, words]) => has(label, words))?.[0];
}

/** Whether a label says that a clock of two parts is `h:mm` or `mm:ss`. */
export function findClockForm(label: string): "h:mm" | "mm:ss" | undefined {
  if (/\bm{1,2}:ss?\b/iu.test(label) && !/h:m/iu.test(label)) return "mm:ss";
  return /\bh{1,2}:mm?(?!:)/iu.test(label) ? "h:mm" : undefined;
}

const degreeSign = /(?:°|º|˚|\uFFFD|\bdeg(?:rees?)?\.?\s*)\s*([CF])(?![\p{L}])/iu;
const inWords = /\b(celsius|centigrade|fahrenheit)\b/iu;
const inBrackets = /[([/]\s*([CF])\s*[\])]?$/iu;
const alone = /^([CF])$/iu;
const behindTemperature =
  /(?:^|[\s_])(?:temp(?:erature)?[\s_,.-]*|(?:t|pv|actual|reading|value|kiln|measured)[\s_,.-]+)([CF])$/iu;

/** The unit of temperature in a text that surely speaks of one: `°C`, `deg F`, `Fahrenheit`. */
export function findSureUnit(text: string): TemperatureUnit | undefined {
  const found = new Set(
    [...text.matchAll(new RegExp(degreeSign, "giu"))].map((match) => unitOfLetter(match[1])),
  );
  for (const match of text.matchAll(new RegExp(inWords, "giu")))
    found.add(/^f/iu.test(match[0]) ? "fahrenheit" : "celsius");
  return found.size === 1 ? [...found][0] : undefined;
}

/** The unit of temperature in a column's label, where a lone letter will do: `Temp (C)`, `temp_f`. */
export function findUnitIn(label: string): TemperatureUnit | undefined {
  const sure = findSureUnit(label);
  if (sure) return sure;
  const text = label.trim();
  const match = inBrackets.exec(text) ?? alone.exec(text) ?? behindTemperature.exec(text);
  return match ? unitOfLetter(match[1]) : undefined;
}

function unitOfLetter(letter: string | undefined): TemperatureUnit {
  return letter?.toUpperCase() === "F" ? "fahrenheit" : "celsius";
}
