/** The data files of everything but tiles. */
import type { CatalogueClay } from "../../catalogue/clays.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { CatalogueFiring } from "../../catalogue/kilns/firings.ts";
import type { CatalogueHeat } from "../../catalogue/kilns/heat.ts";
import type { CatalogueMaterial } from "../../catalogue/mixing/materials.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import type { Swap } from "../../catalogue/pairs-order.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import { toBeside } from "./beside.ts";
import { toLeachTests } from "./leach-tests.ts";
import { rounded } from "./numbers.ts";
import type { ClayRow, FiringRow, GlazeRow, MaterialRow, PairRow, SetRow } from "./rows.ts";

export function toGlazeRow(glaze: CatalogueGlaze): GlazeRow {
  const { id, url, name, kind, chemistry } = glaze;
  return {
    id,
    url,
    name,
    kind,
    tiles: [...glaze.tiles],
    over: glaze.over.map((pair) => pair.glaze.id),
    under: glaze.under.map((pair) => pair.glaze.id),
    alone: toAlone(glaze),
    leachTests: toLeachTests(glaze.leachTests),
    cautions: glaze.hazards.map(tellCaution),
    chemistry: chemistry && {
      weightPercent: roundedAmounts(chemistry.weightPercent),
      molePercent: roundedAmounts(chemistry.molePercent),
      unity: chemistry.unity && roundedAmounts(chemistry.unity),
      lossOnIgnition: rounded(chemistry.lossOnIgnition, 6),
      silicaToAlumina: orNull(chemistry.silicaToAlumina),
      alkaliShare: orNull(chemistry.alkaliShare),
      expansion: chemistry.expansion.map(toExpansion),
      typical: [...new Set(chemistry.notes.flatMap(({ material }) => material ?? []))].sort(),
    },
  };
}

function tellCaution({ message, hint }: CatalogueGlaze["hazards"][number]): string {
  return `${message}. ${hint}`.trim();
}

/** By code unit, as everything in data files. */
function toAlone({ onClays }: CatalogueGlaze): GlazeRow["alone"] {
  return onClays
    .flatMap(({ measured }) => measured)
    .map(({ tile, clay, cone, atmosphere, coats, colour }) => {
      const { hex, lab, name } = colour;
      const [l, a, b] = lab;
      const measured = { hex, lab: [l, a, b] as [number, number, number], name };
      return { tile: tile.id, clay: clay?.id ?? null, cone, atmosphere, coats, ...measured };
    })
    .sort((a, b) => (a.tile < b.tile ? -1 : 1));
}

type Expansion = NonNullable<CatalogueGlaze["chemistry"]>["expansion"][number];

/** To a millionth of a millionth: far beyond what such factors can tell. */
function toExpansion({ model, perKelvin, doubt, between, outside }: Expansion) {
  const [from, to] = between;
  return {
    model,
    perKelvin: perKelvin === null ? null : rounded(perKelvin, 12),
    doubt: doubt === null ? null : rounded(doubt, 12),
    between: [from, to] as [number, number],
    outside: [...outside],
  };
}

function roundedAmounts(amounts: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(amounts).map(([oxide, amount]) => [oxide, rounded(amount, 6)]),
  );
}

function orNull(value: number | null): number | null {
  return value === null ? null : rounded(value, 6);
}

export function toFiringRow(firing: CatalogueFiring): FiringRow {
  const { id, url, on, kind, cone, atmosphere } = firing;
  return {
    id,
    url,
    on,
    kind,
    kiln: firing.kilnName,
    cone,
    atmosphere,
    witness: { ...firing.witness },
    tiles: firing.shelves.flatMap((shelf) => shelf.tiles),
    heat: toHeat(firing),
  };
}

/** Temperatures, rates and minutes to a tenth, the part of a cone to a thousandth. */
function toHeat({ heat, story }: CatalogueFiring): FiringRow["heat"] {
  if (!heat) return null;
  const { low, high } = heat.rangeInCones;
  return {
    equivalentCone: toCone(heat.equivalentCone),
    equivalentConeRange: { low: toCone(low), high: high && toCone(high) },
    peak: rounded(heat.peak, 1),
    lastRate: heat.lastRate === null ? null : rounded(heat.lastRate, 1),
    hold: rounded(heat.hold, 1),
    coolingRate: heat.coolingRate === null ? null : rounded(heat.coolingRate, 1),
    agreement: story.agreement === "unknown" ? null : story.agreement,
  };
}

function toCone({ cone, next, fraction }: CatalogueHeat["equivalentCone"]) {
  return { cone, next, fraction: rounded(fraction, 3) };
}

export function toClayRow({ expansion, ...clay }: CatalogueClay): ClayRow {
  const { id, url, name, cones, colour, absorption, reclaim, tiles } = clay;
  return {
    id,
    url,
    name,
    cones: cones && { from: cones.from, to: cones.to },
    colour,
    expansion: expansion && Number(`${expansion.mean}e-6`),
    between: expansion?.between ? [...expansion.between] : null,
    absorption,
    reclaim,
    tiles: [...tiles],
  };
}

export function toMaterialRow(material: CatalogueMaterial): MaterialRow {
  return {
    id: material.id,
    url: material.url,
    name: material.name,
    formula: material.formula,
    analysis: material.stated,
    builtIn: material.carried !== null,
    basis: material.basis,
    glazes: material.glazes.map((glaze) => glaze.id),
    cautions: [...material.warnings, ...material.hazards.map(tellCaution)],
  };
}

export function toSetRow(set: CatalogueSet): SetRow {
  const { id, url, name, kind, begins, ends, control, tiles } = set;
  return { id, url, name, kind, begins, ends, control, tiles: [...tiles] };
}

/** @param swaps its tiles, each beside one that differs in the order alone */
export function toPairRow(pair: CataloguePair, swaps: readonly Swap[]): PairRow {
  const [over, under] = [pair.over.id, pair.under.id];
  return {
    id: pairId(over, under),
    url: pair.url,
    over,
    under,
    tiles: [...pair.tiles],
    reverse: pair.reverse === null ? null : pairId(under, over),
    swaps: swaps.map(({ tile, other, beside }) => ({
      tile: tile.id,
      other: other.id,
      ...toBeside(beside),
    })),
  };
}

/** Hyphens in a row, which would read as the joint, become `~`, which is in no id: no two pairs have one id. */
function pairId(over: string, under: string): string {
  const [top, beneath] = [over, under].map((id) =>
    id.replace(/-{2,}/gu, (run) => "~".repeat(run.length - 1)),
  );
  return `${top}--over--${beneath}`;
}
