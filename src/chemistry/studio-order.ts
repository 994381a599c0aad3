/**
 * Which materials studios have on the shelf. Common practice, no source: what suppliers to potters
 * sell by the kilogram, what does not dissolve, what harms least to weigh out.
 */
import { idKey } from "../terms/ids.ts";
import type { Oxide } from "../terms/oxides.ts";

/** For each oxide what a potter reaches for first to bring it. */
const usual: Readonly<Partial<Record<Oxide, readonly string[]>>> = {
  SiO2: ["silica", "kaolin", "wollastonite", "potash-feldspar"],
  Al2O3: ["kaolin", "calcined-kaolin", "ball-clay", "alumina-hydrate", "calcined-alumina"],
  B2O3: [
    ...["calcium-borosilicate-frit", "alumina-borosilicate-frit", "soft-borax-frit"],
    ...["colemanite", "ulexite"],
  ],
  Li2O: ["spodumene", "petalite", "lithium-carbonate", "lepidolite"],
  Na2O: ["soda-feldspar", "nepheline-syenite", "alkali-frit"],
  K2O: ["potash-feldspar", "nepheline-syenite"],
  MgO: ["dolomite", "talc", "magnesium-carbonate", "light-magnesium-carbonate"],
  CaO: ["whiting", "wollastonite", "dolomite", "bone-ash"],
  SrO: ["strontium-carbonate"],
  BaO: ["barium-carbonate"],
  ZnO: ["zinc-oxide"],
  P2O5: ["bone-ash"],
  TiO2: ["titanium-dioxide", "rutile", "ilmenite"],
  ZrO2: ["zircon", "zirconia"],
  SnO2: ["tin-oxide"],
  Fe2O3: ["red-iron-oxide", "black-iron-oxide", "yellow-ochre"],
  MnO: ["manganese-dioxide", "manganese-carbonate"],
  CoO: ["cobalt-carbonate", "cobalt-oxide", "black-cobalt-oxide"],
  NiO: ["nickel-oxide", "black-nickel-oxide"],
  CuO: ["copper-carbonate", "copper-oxide", "red-copper-oxide"],
  Cr2O3: ["chrome-oxide"],
};

/**
 * What few studios have, where another material brings the same: minerals that are carried for
 * reckoning, and what stands in old recipes alone.
 */
const rarelyKept: ReadonlySet<string> = new Set([
  ...["amblygonite", "barium-feldspar", "barium-sulphate", "boehmite", "celestite", "celestine"],
  ...["diopside", "dicalcium-phosphate", "eucryptite", "forsterite", "gypsum", "halloysite"],
  ...["hydrated-lime", "hydroboracite", "kyanite", "leucite", "light-magnesium-carbonate-old"],
  ...["lime-feldspar", "mica", "mullite", "nepheline", "plaster", "polylithionite", "probertite"],
  ...["simple-copper-carbonate", "soda-nepheline", "tetracalcium-phosphate", "trilithionite"],
  ...["zinc-carbonate"],
]);

const common: readonly string[] = [...new Set(Object.values(usual).flat())];

export function isRarelyKept(id: string): boolean {
  return rarelyKept.has(idKey(id));
}

/** Materials, those that studios have first; what nothing is known of comes before what is rare. */
export function inStudioOrder(ids: readonly string[]): readonly string[] {
  return [...ids].sort((a, b) => rankAmong(common, a) - rankAmong(common, b));
}

/** Where a material comes among the usual sources of an oxide, from 0; those not named come last. */
export function rankAsSource(oxide: Oxide, id: string): number {
  return rankAmong(usual[oxide] ?? [], id);
}

function rankAmong(order: readonly string[], id: string): number {
  const place = order.indexOf(idKey(id));
  if (place >= 0) return place;
  return order.length + (isRarelyKept(id) ? 1 : 0);
}
