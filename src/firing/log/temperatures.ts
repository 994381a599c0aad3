/** The column of temperature, turned into °C, with what the probe gave when it dropped out. */
import { fahrenheitToCelsius, type TemperatureUnit } from "../units.ts";
import { findNumberStyle, findUnitBehind, parseNumber } from "./cells.ts";
import { findSureUnit, findUnitIn } from "./labels.ts";
import { countOf, LogFault, type LogNote } from "./note.ts";

export interface Temperatures {
  /** °C, a row each; NaN where the row has none. */
  readonly celsius: readonly number[];
  /** What they were taken for, in words. */
  readonly words: string;
  readonly notes: readonly LogNote[];
}

/** What the temperatures of a log are read from. */
export interface TemperatureSource {
  readonly cells: readonly string[];
  readonly label: string;
  /** The first row of readings: a unit may have a column of its own. */
  readonly beside: readonly string[];
  /** Everything that stands above the readings. */
  readonly above: string;
  /** The unit that the firing's record gives. */
  readonly unit: TemperatureUnit | undefined;
  readonly lines: readonly number[];
}

/** What a thermocouple in a kiln can read, in °C; all else is a probe that has dropped out. */
const [coldest, hottest] = [-40, 1500];

/** A pottery kiln does not stay above this, in °C. */
const hottestLikely = 1400;

/** A reading of exactly 0 after one above this, in °C, is a probe that has dropped out. */
const warm = 60;

/**
 * Reads the temperatures of a log.
 *
 * @throws LogFault where their unit cannot be known, or contradicts what they say
 */
export function readTemperatures(source: TemperatureSource): Temperatures {
  const style = findNumberStyle(source.cells);
  const numbers = source.cells.map((cell) => parseNumber(cell, style));
  const { unit, why } = findUnit(source, numbers);
  const celsius = unit === "celsius" ? numbers : numbers.map(fahrenheitToCelsius);
  refuseLikelyFahrenheit(celsius, unit, why);
  const { kept, dropped } = leaveOutDropouts(celsius, numbers);
  const decimals = style.decimal === "," ? ", decimal commas" : "";
  return {
    celsius: kept,
    words: `${unit === "celsius" ? "°C" : "°F"}, ${why}${decimals}`,
    notes: dropped.length > 0 ? [dropoutNote(source, dropped)] : [],
  };
}

interface SaidUnit {
  readonly unit: TemperatureUnit;
  readonly why: string;
}

function findUnit(source: TemperatureSource, numbers: readonly number[]): SaidUnit {
  const said = findSaidUnit(source);
  const { unit } = source;
  if (said && unit && said.unit !== unit) throw contradicted(said);
  if (said) return said;
  if (unit) return { unit, why: "as the firing's record says" };
  throw unknownUnit(numbers);
}

const unitAlone = /^(?:°|º|˚|\uFFFD)?\s*([CF])$/iu;

/** What the log itself says of its unit, the nearest word first. */
function findSaidUnit({ cells, label, beside, above }: TemperatureSource): SaidUnit | undefined {
  const byLabel = findUnitIn(label);
  if (byLabel) return { unit: byLabel, why: "as its label says" };
  const behind = new Set(cells.slice(0, 1000).flatMap((cell) => findUnitBehind(cell) ?? []));
  const [letter] = behind;
  if (letter && behind.size === 1) return { unit: unitOf(letter), why: "as written behind it" };
  const columns = beside.flatMap((cell) => unitAlone.exec(cell.trim())?.[1] ?? []);
  if (columns[0]) return { unit: unitOf(columns[0]), why: "as written beside it" };
  const byHead = findSureUnit(above);
  return byHead && { unit: byHead, why: "as the head of the log says" };
}

const unitOf = (letter: string): TemperatureUnit =>
  letter.toUpperCase() === "F" ? "fahrenheit" : "celsius";
const signOf = (unit: TemperatureUnit) => (unit === "celsius" ? "°C" : "°F");

function contradicted({ unit, why }: SaidUnit): LogFault {
  const other = unit === "celsius" ? "fahrenheit" : "celsius";
  return new LogFault(
    "log-unit-contradicted",
    `The log is in ${signOf(unit)}, ${why}, but the firing's record says ${signOf(other)}.`,
    "Take “log-unit” out of the record, or put the log's own heading right.",
  );
}

function unknownUnit(numbers: readonly number[]): LogFault {
  const likely = numbers.filter((number) => number > 0 && number <= 2732);
  const top = Math.round(likely.reduce((most, number) => Math.max(most, number), 0));
  const remark =
    top > hottestLikely
      ? `Its hottest reading is ${top}, which a pottery kiln reaches in °F alone.`
      : `Its hottest reading is ${top}.`;
  return new LogFault(
    "log-unit-unknown",
    `Nothing says whether the log is in °C or °F. ${remark}`,
    "Write “log-unit: C” or “log-unit: F” in the firing's record, or label the column °C or °F.",
  );
}

/** More than a few readings between what a kiln reaches in °C and what it reaches in °F. */
function refuseLikelyFahrenheit(
  celsius: readonly number[],
  unit: TemperatureUnit,
  why: string,
): void {
  if (unit === "fahrenheit") return;
  const over = celsius.filter((degrees) => degrees > hottestLikely && degrees <= 2732);
  const read = celsius.filter((degrees) => !Number.isNaN(degrees));
  if (over.length < 3 || over.length < read.length / 100) return;
  const top = Math.round(over.reduce((most, degrees) => Math.max(most, degrees), 0));
  throw new LogFault(
    "log-maybe-fahrenheit",
    `The log is in °C, ${why}, but goes to ${top}, which no pottery kiln reaches in °C. Is it in °F?`,
    "Put the unit right in the log's heading or in “log-unit”.",
  );
}

function leaveOutDropouts(celsius: readonly number[], numbers: readonly number[]) {
  const kept: number[] = [];
  const dropped: number[] = [];
  let last = Number.NaN;
  celsius.forEach((degrees, i) => {
    const isZero = numbers[i] === 0 && last > warm;
    const isReal = degrees >= coldest && degrees <= hottest && !isZero;
    kept.push(isReal ? degrees : Number.NaN);
    if (isReal) last = degrees;
    else dropped.push(i);
  });
  return { kept, dropped };
}

function dropoutNote({ cells, lines }: TemperatureSource, dropped: readonly number[]): LogNote {
  const counts = new Map<string, number>();
  for (const i of dropped) {
    const shown = cells[i] ? `“${cells[i].slice(0, 20)}”` : "an empty cell";
    counts.set(shown, (counts.get(shown) ?? 0) + 1);
  }
  const commonest = [...counts].sort((a, b) => b[1] - a[1]).slice(0, 3);
  const what = commonest.map(([shown]) => shown).join(", ");
  const line = lines[dropped[0] ?? 0];
  const share = Math.round((dropped.length / cells.length) * 100);
  return {
    severity: share >= 10 ? "warning" : "note",
    code: "log-dropouts",
    ...(line === undefined ? {} : { line }),
    message: `The probe dropped out: ${countOf(dropped.length, "row")} of ${cells.length.toLocaleString("en-GB")} ${dropped.length === 1 ? "holds" : "hold"} no temperature (${what}${counts.size > 3 ? " and others" : ""}) and ${dropped.length === 1 ? "was" : "were"} left out.`,
  };
}
