/** What one cell of a log can hold: a number, a clock's reading, a date, a moment. */

/** Longer than any number, date or time: such a cell is not looked at. */
const longestValue = 40;

/** Milliseconds from 1970 lie well below it. */
const largestNumber = 1e15;

/** How a column writes its numbers. */
export interface NumberStyle {
  readonly decimal: "." | ",";
  /** What parts thousands, where something does. */
  readonly thousands?: "." | ",";
}

const digits = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/iu;
const grouped = /^[-+]?\d[\d.,]*(?:e[-+]?\d+)?$/iu;
const unitBehind = /\s*(?:°|º|˚|\uFFFD)?\s*([CF])$/iu;

/** The number in a cell, or NaN; a unit behind it (`1222 °C`) is passed over. */
export function parseNumber(cell: string, style: NumberStyle): number {
  if (cell.length > longestValue) return Number.NaN;
  let text = cell;
  if (style.thousands) text = text.replaceAll(style.thousands, "");
  if (style.decimal === ",") text = text.replace(",", ".");
  if (!digits.test(text)) text = text.replace(unitBehind, "").replace("−", "-");
  const number = digits.test(text) ? Number(text) : Number.NaN;
  return Math.abs(number) <= largestNumber ? number : Number.NaN;
}

/** The letter of a unit that stands behind a cell's number. */
export function findUnitBehind(cell: string): "C" | "F" | undefined {
  if (cell.length > longestValue || !/\d/u.test(cell)) return undefined;
  const letter = unitBehind.exec(cell)?.[1];
  return letter?.toUpperCase() as "C" | "F" | undefined;
}

/** The largest number that a group of thousands may make in a log, in any unit. */
const largestGrouped = 3000;

/**
 * How a column writes its numbers, from all its cells: which sign is the decimal one, and whether
 * the other parts thousands. A lone sign followed by exactly three digits wherever it stands
 * parts thousands, unless that gave more than a kiln's pyrometer can read.
 */
export function findNumberStyle(cells: readonly string[]): NumberStyle {
  const marked = cells
    .filter((cell) => cell.length <= longestValue && /[.,]/u.test(cell))
    .map((cell) => cell.replace(unitBehind, ""))
    .filter((cell) => grouped.test(cell));
  const both = marked.find((cell) => cell.includes(",") && cell.includes("."));
  if (both) return both.lastIndexOf(",") > both.lastIndexOf(".") ? continental : british;
  const comma = marked.some((cell) => cell.includes(","));
  const point = marked.some((cell) => cell.includes("."));
  if (comma && point) return { decimal: "." };
  if (marked.length > 0 && marked.every(isGrouped)) return comma ? british : continental;
  return { decimal: comma ? "," : "." };
}

const british: NumberStyle = { decimal: ".", thousands: "," };
const continental: NumberStyle = { decimal: ",", thousands: "." };

function isGrouped(cell: string): boolean {
  if (!/^[-+]?[1-9]\d{0,2}[.,]\d{3}$/u.test(cell)) return false;
  return Number(cell.replace(/[.,]/u, "")) <= largestGrouped;
}

/** A clock's reading: two or three parts, in which the last may have decimals. */
export interface ClockReading {
  readonly parts: readonly number[];
}

const clock = /^(\d{1,5}):(\d{1,2})(?::(\d{1,2}))?(?:[.,](\d+))?\s*([ap])?\.?m?\.?$/iu;

/** Reads `9:40`, `0:09:40`, `14:03:22.5`, `2:03:22 PM`; undefined for anything else. */
export function parseClock(cell: string): ClockReading | undefined {
  const match = cell.length > longestValue ? undefined : clock.exec(cell);
  if (!match) return undefined;
  const [, first = "", second = "", third, decimals, half] = match;
  if (Number(second) > 59 || Number(third ?? 0) > 59) return undefined;
  const parts = [Number(first), Number(second), ...(third === undefined ? [] : [Number(third)])];
  if (decimals) parts[parts.length - 1] = (parts.at(-1) ?? 0) + Number(`0.${decimals}`);
  if (half) parts[0] = (Number(first) % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  return { parts };
}

/** A day, with its first two numbers in the order in which they were written. */
export interface DayReading {
  readonly numbers: readonly [number, number, number];
  readonly order: "year-first" | "year-last";
  /** Parted by full stops, as where the day always comes before the month. */
  readonly dotted: boolean;
  /** Undefined where the cell holds a date alone. */
  readonly clock: ClockReading | undefined;
  /** Minutes east of Greenwich, where it is said. */
  readonly offset: number | undefined;
}

const day = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?:[T,\s]\s*(.*?)\s*(Z|[-+]\d{2}:?\d{2})?)?$/iu;

/** Reads `2026-10-20T14:03:22Z`, `20.10.2026 14:03`, `10/20/26, 2:03 PM`, or the date alone. */
export function parseDay(cell: string): DayReading | undefined {
  const match = cell.length > longestValue ? undefined : day.exec(cell);
  if (!match) return undefined;
  const [, first = "", second = "", third = "", rest, zone] = match;
  const order = first.length === 4 ? "year-first" : "year-last";
  if (order === "year-first" ? third.length > 2 : third.length === 3 || first.length > 2)
    return undefined;
  const time = rest ? parseClock(rest) : undefined;
  if (rest && !time) return undefined;
  return {
    numbers: [Number(first), Number(second), Number(third)],
    order,
    dotted: /^\d+\./u.test(cell),
    clock: time,
    offset: zone ? parseOffset(zone) : undefined,
  };
}

function parseOffset(zone: string): number {
  if (zone.toUpperCase() === "Z") return 0;
  const minutes = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(-2));
  return zone.startsWith("-") ? -minutes : minutes;
}
