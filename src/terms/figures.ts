/** Figures for people: as many as matter, and no more. Data files keep theirs. */

/** A number with so many decimals, a true minus, and never a minus before nothing. */
export function withPlaces(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "−");
}

const thousands = new Intl.NumberFormat("en");

/** `1204` as `1,204`; decimals are left alone. */
export function groupThousands(digits: string): string {
  const [whole = "", part] = digits.split(".");
  const grouped = thousands.format(Number(whole));
  return part === undefined ? grouped : `${grouped}.${part}`;
}

/**
 * Decimals of grams as a studio's scale reads them: none from 100 on, one below. Below 1 g there are
 * two, since half a tenth of a strong colourant is another glaze.
 */
export function placesOnScale(grams: number): number {
  if (grams < 0.995) return 2;
  return grams < 99.95 ? 1 : 0;
}

/** An amount in the studio's currency: two decimals, none from a thousand on. */
export function asPrice(amount: number): string {
  return groupThousands(amount.toFixed(amount < 999.995 ? 2 : 0));
}

/** Per cent of an oxide to one decimal; what is there and would read as nothing says so. */
export function asPerCent(value: number): string {
  return value > 0 && value < 0.05 ? "< 0.1" : withPlaces(value, 1);
}

/**
 * Per cent of an oxide in a raw material: below 1 to two decimals, as analyses are printed, since a
 * tenth of iron is what makes one kaolin grey and the other white.
 */
export function asAnalysed(value: number): string {
  if (value >= 0.995) return asPerCent(value);
  return value > 0 && value < 0.005 ? "< 0.01" : withPlaces(value, 2);
}

/** Grams or millilitres that are known to a few per cent at best: to two or three figures. */
export function roughly(amount: number): string {
  if (!(amount > 0)) return "0";
  const step = 10 ** Math.max(0, Math.floor(Math.log10(amount)) - 1);
  const fine = amount / step >= 50 ? step : step / 2;
  return groupThousands(String(Math.round(amount / Math.max(1, fine)) * Math.max(1, fine)));
}
