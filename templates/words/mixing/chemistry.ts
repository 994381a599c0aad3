/** Figures and sentences of chemistry, to as many places as can be trusted. */
import type { ClayFit, FitFault, SeenFault } from "../../../src/catalogue/mixing/fits.ts";
import type { Fit } from "../../../src/chemistry/fit.ts";
import { withPlaces } from "../../../src/terms/figures.ts";
import { count, formatDay, listedInShort } from "../english/numbers.ts";

export {
  asAnalysed,
  asPerCent,
  asPrice,
  roughly,
  withPlaces as fixed,
} from "../../../src/terms/figures.ts";

/** Moles of a unity formula: three figures, and never more than three decimals. */
export function formatMoles(moles: number): string {
  return withPlaces(moles, moles >= 1 ? 2 : 3);
}

/** 6.1e-6 per kelvin as `6.1`. */
export function perMillion(perKelvin: number): string {
  return withPlaces(perKelvin * 1e6, 1);
}

/** `6.4 × 10⁻⁶ per kelvin between 20 and 500 °C`. */
export function clayExpansion({ mean, between }: Pick<ClayFit, "between" | "mean">): string {
  const range = between
    ? `between ${between.join(" and ")} °C`
    : "between temperatures not recorded";
  return `${mean} × 10⁻⁶ per kelvin, ${range}`;
}

const tendencies: Readonly<Record<Fit["tendency"], string>> = {
  compression: "under compression; a great deal of it tends towards shivering",
  tension: "under tension; tends towards crazing",
  undecided: "less than twice the error of the figure, so it may be either",
};

/** `0.8 less: under compression; …`. */
export function fitWords({ difference, tendency }: Fit): string {
  const amount = withPlaces(Math.abs(difference) * 1e6, 1);
  return `${amount} ${difference < 0 ? "less" : "more"}: ${tendencies[tendency]}`;
}

/** What to believe where tiles and figure disagree; null where they do not. */
export function contradictionWords({ fits, seen }: ClayFit): string | null {
  const says = (tendency: Fit["tendency"]) => fits.some((fit) => fit.tendency === tendency);
  const saw = (fault: FitFault) => seen.faults.some((entry) => entry.fault === fault);
  const against =
    (saw("crazing") && says("compression")) ||
    (saw("shivering") && says("tension")) ||
    (seen.faults.length === 0 && seen.without.length > 0 && says("tension"));
  return against
    ? "The tiles contradict a figure below: believe the tiles. They are this very glaze on this clay; the figure is worked out from other glasses."
    : null;
}

const did = { crazing: "crazed", dunting: "dunted", shivering: "shivered" } as const;

/** What tiles of a glaze alone on a clay did, in sentences; never what others will do. */
export function seenWords({ seen }: ClayFit): string {
  if (seen.tiles.length === 0)
    return "No tile with this glaze alone on this clay has a result yet.";
  const sentences = seen.faults.map(({ fault, tiles }) => {
    const atOnce = tiles.filter(({ later }) => later === null).map(({ tile }) => tile);
    const later = tiles.flatMap(toLaterWords);
    const lateWords = later.length > 7 ? [listedInShort(later)] : later;
    const told = [...(atOnce.length > 0 ? [listedInShort(atOnce)] : []), ...lateWords];
    return `${told.join("; ")} ${did[fault]}.`;
  });
  const without =
    seen.without.length > 0
      ? [
          `${count(seen.without.length, "tile")} (${listedInShort(seen.without)}) ${seen.without.length === 1 ? "was" : "were"} looked at and showed no crazing, dunting or shivering.`,
        ]
      : [];
  const all = `Of ${count(seen.tiles.length, "tile")} with this glaze alone on it:`;
  return [all, ...sentences, ...without].join(" ");
}

function toLaterWords({ tile, later }: SeenFault): readonly string[] {
  return later === null ? [] : [`${tile} (seen on ${formatDay(later)})`];
}

/** Shares of a blend as whole per cents: `80 : 20`. */
export function sharesWords(shares: readonly number[]): string {
  return shares.map((share) => (share * 100).toFixed(0)).join(" : ");
}
