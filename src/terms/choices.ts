/**
 * The lists of choices a record may draw on. They stand in alphabetical order unless the trade
 * orders them.
 */

export const kindsOfGlaze = ["glaze", "onglaze", "oxide-wash", "slip", "underglaze"] as const;
export type KindOfGlaze = (typeof kindsOfGlaze)[number];

/** In the order of a pot's life, as the trade orders them. */
export const kindsOfFiring = ["bisque", "glaze", "onglaze", "once", "raku"] as const;
export type KindOfFiring = (typeof kindsOfFiring)[number];

export const heatSources = [
  "electric",
  "gas",
  "oil",
  "pit",
  "salt",
  "saggar",
  "soda",
  "wood",
] as const;
export type HeatSource = (typeof heatSources)[number];

export const atmospheres = ["neutral", "oxidation", "reduction"] as const;
export type Atmosphere = (typeof atmospheres)[number];

export const textures = [
  "carved",
  "combed",
  "impressed",
  "pierced",
  "rolled",
  "slip-trailed",
  "smooth",
  "sprigged",
  "stamped",
] as const;

/** What a clay looks like fired, from light to dark. */
export const shades = ["white", "buff", "dark"] as const;
export type Shade = (typeof shades)[number];

export const shapes = ["channel", "flat", "l-shape", "pot", "ring", "upright"] as const;
export type Shape = (typeof shapes)[number];

export const ways = [
  "brush",
  "dip",
  "dot",
  "drip",
  "pen",
  "pour",
  "roll",
  "spatter",
  "sponge",
  "sponge-stamp",
  "spray",
  "stencil",
  "trail",
  "transfer",
] as const;
export type Way = (typeof ways)[number];

export const areas = [
  "all",
  "background",
  "bottom",
  "centre",
  "hollows",
  "left",
  "motif",
  "raised",
  "right",
  "rim",
  "top",
] as const;
export type Area = (typeof areas)[number];

export const resists = ["latex", "paper", "tape", "wax"] as const;
export type Resist = (typeof resists)[number];

export const removals = ["all", "peel", "scrape", "sgraffito", "wash-off", "wipe"] as const;
export type Removal = (typeof removals)[number];

/** From thin to thick, as the trade orders them. */
export const thicknesses = ["thin", "usual", "thick"] as const;

/** From little to much, as the eye orders them. */
export const covers = ["sparse", "medium", "dense"] as const;
export type Cover = (typeof covers)[number];

export const dryings = ["overnight", "touch-dry", "wet-on-wet"] as const;

/** How much of a kiln's shelf order the trade names; own words are allowed beside them. */
export const shelves = ["top", "middle", "bottom"] as const;

export const surfaces = ["dry", "gloss", "matte", "satin"] as const;
export type Surface = (typeof surfaces)[number];

export const effects = [
  "breaking",
  "crystals",
  "lustre",
  "metallic",
  "pooling",
  "speckled",
  "variegated",
] as const;
export type Effect = (typeof effects)[number];

export const faults = [
  "blistering",
  "bloating",
  "cloudy",
  "colour-lost",
  "crawling",
  "crazing",
  "dunting",
  "flaking",
  "kiln-crumbs",
  "overfired",
  "pinholing",
  "running",
  "shivering",
  "too-thick",
  "too-thin",
  "underfired",
  "warping",
] as const;
export type Fault = (typeof faults)[number];

/** From the happiest answer to the least. */
export const agains = ["yes", "changed", "no"] as const;
export type Again = (typeof agains)[number];

export const fates = ["broken", "cracked", "exploded", "lost", "stuck", "unreadable"] as const;
export type Fate = (typeof fates)[number];

export const opacities = ["clear", "milky", "opaque"] as const;
export type Opacity = (typeof opacities)[number];

export const movements = ["little", "none", "runs"] as const;
export type Movement = (typeof movements)[number];

export const tones = ["dark", "light", "medium"] as const;
export type Tone = (typeof tones)[number];

export const labelClaims = ["food-contact", "non-toxic", "not-for-food"] as const;
export type LabelClaim = (typeof labelClaims)[number];

/** Elements that laboratories look for in what comes off a glaze. */
export const leachElements = [
  "antimony",
  "arsenic",
  "barium",
  "cadmium",
  "chromium",
  "cobalt",
  "copper",
  "lead",
  "lithium",
  "manganese",
  "nickel",
  "selenium",
  "vanadium",
  "zinc",
] as const;

/** Published methods of testing what ceramic ware gives off; all are for lead and cadmium. */
export const leachMethods = ["ASTM C738", "EN 1388-1", "ISO 6486-1", "ISO 8391-1"] as const;

export const leachUnits = ["mg/article", "mg/dm²", "mg/L", "µg/L"] as const;

export const kindsOfSet = ["class", "series", "term"] as const;
export type KindOfSet = (typeof kindsOfSet)[number];

/** How the tile form ends: a zip to download, the repository's page for a new file, the phone's share sheet. */
export const waysOfHandingIn = ["download", "new-file", "share"] as const;
export type WayOfHandingIn = (typeof waysOfHandingIn)[number];

export const namesShown = ["initials", "no", "yes"] as const;

/** A tile's stage, in the order of its life; `lost` may come at any time. */
export const stages = ["waiting", "fired", "recorded", "lost"] as const;
export type Stage = (typeof stages)[number];
