/** The colour of a glaze alone, in words. */
import type { ColourFinding } from "../../../src/catalogue/colours/colour-findings.ts";
import type { GlazeOnClay } from "../../../src/catalogue/colours/glaze-colours.ts";
import type { MeasuredAlone } from "../../../src/catalogue/colours/measured-alone.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import { capital, count, listed, spoken } from "../english/numbers.ts";
import { unwrittenWords } from "../tile/likeness.ts";
import { wayWords, whereWords } from "../tile/steps.ts";

const airs = {
  neutral: "in a neutral atmosphere",
  oxidation: "in oxidation",
  reduction: "in reduction",
} as const;

const fires = {
  pit: "pit fired",
  raku: "raku fired",
  saggar: "in a saggar",
  salt: "salt fired",
  soda: "soda fired",
  wood: "wood fired",
} as const;

/** `in reduction, wood fired`; nothing where neither is known. */
export function fireWords({ atmosphere, fire }: Pick<GlazeOnClay, "atmosphere" | "fire">): string {
  return [atmosphere && airs[atmosphere], fire && fires[fire]].filter(Boolean).join(", ");
}

/** What stands under a swatch beside its colour's name: `brushed; too thin`. */
export function aloneWords(measured: MeasuredAlone, varying: Varying): string {
  const { ways, texture, faults, firedAgain } = measured;
  const told = [
    whyUncounted(measured),
    varying.ways && listed(ways.map(wayWords)),
    texture !== "smooth" && `${spoken(texture)} clay`,
    listed(faults.map(spoken)),
    firedAgain && "fired again",
  ];
  return told.filter(Boolean).join("; ");
}

/** Why it stands under no number of coats: `dense cover`, `at the top`, `coats not recorded`. */
function whyUncounted({ coats, lie, cover, where }: MeasuredAlone): string {
  if (coats !== null) return "";
  if (lie === "even") return "coats not recorded";
  if (lie === "uneven") return "thicker in places";
  const told = [cover && `${cover} cover`, whereWords(where)].filter(Boolean).join(", ");
  return told || "not all over";
}

/** What differs among the measurements of one glaze, and so has to be told of each finding. */
export interface Varying {
  readonly ways: boolean;
  readonly texture: boolean;
  readonly fire: boolean;
  readonly cooling: boolean;
}

export function whatVaries(onClays: readonly GlazeOnClay[]): Varying {
  const all = onClays.flatMap(({ measured }) => measured);
  const several = (of: (one: MeasuredAlone) => string) => new Set(all.map(of)).size > 1;
  return {
    ways: several(({ ways }) => ways.join()),
    texture: several(({ texture }) => texture),
    fire: several(fireWords),
    cooling: several(({ cooling }) => cooling),
  };
}

/** `Mist as each tile measured, all brushed: cones across, coats down.` */
export function tableCaption(
  name: string,
  onClays: readonly GlazeOnClay[],
  varying: Varying,
): string {
  const ways = varying.ways ? [] : (onClays[0]?.measured[0]?.ways ?? []);
  const all = ways.length > 0 ? `, all ${listed(ways.map(wayWords))}` : "";
  return `${name} as each tile measured${all}: cones across, coats down.`;
}

/** `From 1 to 3 coats on Buff stoneware at cone 6 it goes from brown to blue; 21 apart.` */
export function findingSentence(finding: ColourFinding, varying: Varying): string {
  const { difference, pairs } = finding;
  const many = pairs > 1 ? `, the widest of ${pairs} such pairs` : "";
  const apart = `${roundDifference(difference)} apart${many}`;
  const where = whereCompared(finding, varying);
  const open = capital(unwrittenWords(finding.unknown));
  return [`${findingWords(finding, where, apart)}.`, open && `${open}.`].filter(Boolean).join(" ");
}

function findingWords(finding: ColourFinding, where: string, apart: string): string {
  const { along, verdict } = finding;
  if (along === "nothing")
    return `${where} it ${cameOut(finding)}; ${apart}. Something not in this table made the difference`;
  if (verdict === "alike") return `${where}: no more than tiles made alike differ (${apart})`;
  if (verdict === "scattered")
    return `${where}: ${apart}, but tiles in one cell of the table differ as much`;
  return `${where} it ${goesTo(finding)}; ${apart}`;
}

function whereCompared(finding: ColourFinding, varying: Varying): string {
  const { along, from } = finding;
  const made = [
    varying.ways && listed(from.ways.map(wayWords)),
    texturedClay(from, varying),
    varying.cooling && along !== "cooling" && coolingWords[from.cooling],
  ];
  const around: Readonly<Record<string, string>> = {
    clay: `on ${from.clay?.name ?? "one clay"}`,
    cone: `at cone ${from.cone}`,
    atmosphere: varying.fire ? fireWords(from) : "",
  };
  const rest = Object.entries(around).flatMap(([what, words]) => (what === along ? [] : [words]));
  return told(whatDiffers(finding), made, ...rest);
}

function whatDiffers({ along, from, to }: ColourFinding): string {
  const coats = from.coats === null ? "" : count(from.coats, "coat");
  switch (along) {
    case "coats":
      return `From ${from.coats} to ${count(to.coats ?? 0, "coat")}`;
    case "cone":
      return `From cone ${from.cone} to cone ${to.cone} with ${coats}`;
    case "clay":
      return `On ${to.clay?.name} instead of ${from.clay?.name}, with ${coats}`;
    case "atmosphere":
      return `${fireOf(to)} instead of ${fireOf(from).toLowerCase()}, with ${coats}`;
    case "cooling":
      return `Cooled slowly instead of left to cool, with ${coats}`;
    case "nothing":
      return `With ${coats}`;
  }
}

const coolingWords = { natural: "left to cool", slowed: "cooled slowly", unknown: "" } as const;

/** The asides between commas, the rest after them. */
function told(first: string, asides: readonly (string | false)[], ...rest: string[]): string {
  const between = asides.filter(Boolean);
  const head = between.length > 0 ? `${[first, ...between].join(", ")},` : first;
  return [head, ...rest].filter(Boolean).join(" ");
}

function texturedClay({ texture }: MeasuredAlone, varying: Varying): string | false {
  return varying.texture && `over ${spoken(texture)} clay`;
}

function fireOf({ atmosphere }: MeasuredAlone): string {
  return capital(atmosphere ? airs[atmosphere] : "in an unrecorded atmosphere");
}

function cameOut({ from, to, change }: ColourFinding): string {
  const [one, other] = [from.colour.name, to.colour.name];
  if (one !== other) return `came out ${one} on ${from.tile.id} and ${other} on ${to.tile.id}`;
  return `came out ${one} both times, and ${changes[change]} on ${to.tile.id} than on ${from.tile.id}`;
}

function goesTo({ along, from, to, change }: ColourFinding): string {
  const [one, other] = [from.colour.name, to.colour.name];
  const steps = along === "coats" || along === "cone";
  if (one === other) return `${steps ? "stays" : "is"} ${one}, but ${changes[change]}`;
  return steps ? `goes from ${one} to ${other}` : `is ${other}, not ${one}`;
}

const changes = {
  darker: "darker",
  greyer: "greyer",
  hue: "of another hue",
  lighter: "lighter",
  stronger: "stronger in colour",
} as const;
