/** Days as people write them, and the one way in which they are read. */

/** Whether a text is a day of the calendar as ISO 8601 writes it: `2026-10-14`. */
export function isDay(found: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(found)) return false;
  const date = new Date(`${found}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(found);
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** What is wrong with a text that is no day, and the day that was meant where that can be told. */
export function notADay(found: string) {
  const code = "not-a-day";
  if (/^\d{4}-\d{2}-\d{2}$/u.test(found))
    return {
      code,
      message: `There is no day ${found} in the calendar`,
      hint: "Write year, month and day, as in 2026-10-14.",
    };
  const [meant, other] = daysMeantBy(found);
  const hints = [
    "Write year, month and day, as in 2026-10-14.",
    `Write year, month and day: ${meant}.`,
    `Write year, month and day, the one that is meant: ${meant} or ${other}.`,
  ];
  return {
    code,
    message: `“${found}” is not written as a day is written here`,
    hint: hints[(meant ? 1 : 0) + (other ? 1 : 0)] ?? "",
  };
}

/** The days that a text may mean: two where day and month may be either way round. */
function daysMeantBy(found: string): readonly string[] {
  const numbers = /^(\d{1,4})\s*([./-])\s*(\d{1,2})\s*\2\s*(\d{1,4})$/u.exec(found);
  const [, first = "", sign, second = "", third = ""] = numbers ?? [];
  if (first.length === 4) return days([[first, second, third]]);
  if (third.length !== 4) return dayInWords(found);
  const dayFirst = [third, second, first] as const;
  const monthFirst = [third, first, second] as const;
  // With full stops the day comes first wherever days are written so.
  return days(sign === "." || first === second ? [dayFirst] : [dayFirst, monthFirst]);
}

/** `14 Oct 2026`, `14th October 2026`, `October 14, 2026`. */
function dayInWords(found: string): readonly string[] {
  const month = months.findIndex((name) => found.toLowerCase().includes(name)) + 1;
  const numbers = found.match(/\d+/gu) ?? [];
  const year = numbers.find((number) => number.length === 4);
  const day = numbers.find((number) => number.length <= 2);
  if (month === 0 || numbers.length !== 2 || year === undefined || day === undefined) return [];
  return days([[year, String(month), day]]);
}

function days(written: readonly (readonly [string, string, string])[]): readonly string[] {
  return written
    .map(([year, month, day]) => `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`)
    .filter(isDay);
}
