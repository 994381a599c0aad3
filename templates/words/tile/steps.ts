/** A coat stack in words: what the list beside a drawing says, and what is read aloud of it. */
import type { CoatStep, RemoveStep, ResistStep, TileStep } from "../../../src/records/archive.ts";
import type { Area, KindOfFiring, Removal, Way } from "../../../src/terms/choices.ts";
import { count, listed } from "../english/numbers.ts";

const howItWentOn: Readonly<Record<Way, string>> = {
  brush: "brushed",
  dip: "dipped",
  dot: "dotted",
  drip: "dripped",
  pen: "drawn with a pen",
  pour: "poured",
  roll: "rolled",
  spatter: "spattered",
  sponge: "sponged",
  "sponge-stamp": "stamped with a sponge",
  spray: "sprayed",
  stencil: "stencilled",
  trail: "trailed",
  transfer: "from a transfer",
};

const whereItWent: Readonly<Record<Area, string>> = {
  all: "all over",
  background: "on the background",
  bottom: "at the bottom",
  centre: "in the centre",
  hollows: "in the hollows",
  left: "on the left",
  motif: "on the motif",
  raised: "on the raised parts",
  right: "on the right",
  rim: "at the rim",
  top: "at the top",
};

const whatWasTaken: Readonly<Record<Removal, string>> = {
  all: "Everything washed off, and begun again",
  peel: "Peeled off",
  scrape: "Scraped off",
  sgraffito: "Scratched through",
  "wash-off": "Washed off",
  wipe: "Wiped",
};

const firingNames: Readonly<Record<KindOfFiring, string>> = {
  bisque: "Bisque firing",
  glaze: "Glaze firing",
  onglaze: "Onglaze firing",
  once: "Raw glaze firing",
  raku: "Raku firing",
};

export function firingName(kind: KindOfFiring): string {
  return firingNames[kind];
}

export function wayWords(way: Way): string {
  return howItWentOn[way];
}

/** `on the left and at the rim`; nothing for all over, which goes without saying. */
export function whereWords(areas: readonly Area[]): string {
  return areas[0] === "all" ? "" : listed(areas.map((area) => whereItWent[area]));
}

/** How a layer went on, without its glaze: `2 coats, brushed, thin`. */
export function coatWords(step: CoatStep): string {
  const told = [
    step.touchUp && "a touch-up",
    step.coats !== null && count(step.coats, "coat"),
    step.cover !== null && `${step.cover} cover`,
    step.by !== null && howItWentOn[step.by],
    whereWords(step.where),
    step.thickness !== "usual" && step.thickness,
    step.seconds !== null && `${step.seconds} seconds`,
    step.gravity !== null && `at SG ${step.gravity.toFixed(2)}`,
    step.dried === "overnight" && "dried overnight first",
    step.dried === "wet-on-wet" && "wet on wet",
    step.along !== null && `from ${step.along.replace(/^from /u, "")}`,
    step.detail,
  ];
  return told.filter(Boolean).join(", ");
}

/** What was done with a resist or a tool: a heading of a few words. */
export function markWords(step: ResistStep | RemoveStep): string {
  return step.step === "resist" ? `${capitalResist(step)} resist` : whatWasTaken[step.remove];
}

function capitalResist({ resist }: ResistStep): string {
  return resist.charAt(0).toUpperCase() + resist.slice(1);
}

/** Where it was, and the maker's own words. */
export function markPlace(step: ResistStep | RemoveStep): string {
  const where = step.step === "remove" && step.remove === "all" ? "" : whereWords(step.where);
  return [where, step.detail].filter(Boolean).join(", ");
}

/** A whole step as one phrase: `Tidewrack: 2 coats, brushed`. */
export function stepWords(step: TileStep, nameOf: (glaze: string) => string): string {
  if (step.step === "fired") {
    const told = [firingNames[step.kind], step.firing, step.shelf && shelfWords(step.shelf)];
    return told.filter(Boolean).join(", ");
  }
  if (step.step !== "coat") return [markWords(step), markPlace(step)].filter(Boolean).join(", ");
  const name = step.glazes.map(nameOf).join(" fading to ");
  const how = coatWords(step);
  return how ? `${name}: ${how}` : name;
}

/** `top` as `top shelf`; a potter's own words stand as they are. */
export function shelfWords(shelf: string): string {
  return ["top", "middle", "bottom"].includes(shelf) ? `${shelf} shelf` : shelf;
}
