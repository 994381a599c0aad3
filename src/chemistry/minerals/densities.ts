/**
 * What raw materials weigh for the room that they take, grain by grain and without the air
 * between: g/cm³, from the least to the most that tables give for them.
 */

import type { Tag } from "../../terms/atomic-weights.ts";
import { idKey } from "../../terms/ids.ts";

export interface MineralDensity {
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly tag: Tag;
}

type Row = readonly [id: string, low: number, high: number];

const compared =
  "tables of minerals that lie within the range: E. R. Crain, Crain's Petrophysical Handbook (mineral properties for log analysis), Carmichael, Practical Handbook of Physical Properties of Rocks and Minerals (1989) as reprinted, and charts of specific gravity for lapidaries";

const remembered =
  "Anthony and others, Handbook of Mineralogy, and the CRC Handbook of Chemistry and Physics";

const clayRange =
  "kaolinite and quartz, of which it is made, and a little more each way: common practice, no source";

const glassRange =
  "glasses of such make-up, from window glass (2.5) down to soft boron glass and up to lead glass: common practice, no source";

const checkedRows: readonly Row[] = [
  ["kaolin", 2.58, 2.68],
  ["pyrophyllite", 2.65, 2.9],
  ["mica", 2.76, 2.88],
  ["kyanite", 3.1, 3.68],
  ["alumina-hydrate", 2.38, 2.49],
  ["potash-feldspar", 2.52, 2.57],
  ["soda-feldspar", 2.59, 2.63],
  ["lime-feldspar", 2.73, 2.77],
  ["soda-nepheline", 2.55, 2.67],
  ["nepheline", 2.55, 2.67],
  ["leucite", 2.45, 2.5],
  ["silica", 2.64, 2.66],
  ["whiting", 2.7, 2.72],
  ["dolomite", 2.84, 2.88],
  ["magnesium-carbonate", 2.95, 3.05],
  ["forsterite", 3.2, 3.4],
  ["diopside", 3.2, 3.56],
  ["wollastonite", 2.8, 3.1],
  ["talc", 2.7, 2.83],
  ["barium-sulphate", 4.3, 4.7],
  ["gypsum", 2.3, 2.34],
  ["fluorspar", 3.17, 3.19],
  ["salt", 2.16, 2.17],
  ["spodumene", 3.1, 3.2],
  ["amblygonite", 2.98, 3.11],
  ["borax", 1.7, 1.9],
  ["ulexite", 1.95, 1.97],
  ["colemanite", 2.41, 2.43],
  ["zircon", 4.4, 4.7],
  ["red-iron-oxide", 5.1, 5.28],
  ["yellow-ochre", 3.6, 4.34],
  ["siderite", 3.87, 3.96],
  ["black-iron-oxide", 5.08, 5.2],
  ["galena", 6.39, 7.6],
];

const rememberedRows: readonly Row[] = [
  ["calcined-kaolin", 2.5, 2.65],
  ["halloysite", 2, 2.6],
  ["bentonite", 2.2, 2.8],
  ["mullite", 3.1, 3.2],
  ["calcined-alumina", 3.6, 4.02],
  ["boehmite", 3, 3.07],
  ["barium-feldspar", 3.3, 3.4],
  ["light-magnesium-carbonate", 2.15, 2.28],
  ["light-magnesium-carbonate-old", 2.1, 2.28],
  ["zinc-oxide", 5.6, 5.68],
  ["zinc-carbonate", 4.3, 4.45],
  ["barium-carbonate", 4.2, 4.33],
  ["strontium-carbonate", 3.7, 3.79],
  ["bone-ash", 3, 3.2],
  ["tetracalcium-phosphate", 3, 3.1],
  ["dicalcium-phosphate", 2.3, 2.33],
  ["plaster", 2.6, 2.75],
  ["hydrated-lime", 2.2, 2.26],
  ["soda-ash", 2.5, 2.54],
  ["washing-soda", 1.44, 1.48],
  ["sodium-bicarbonate", 2.16, 2.24],
  ["pearl-ash", 2.27, 2.43],
  ["nitre", 2.08, 2.11],
  ["eucryptite", 2.3, 2.7],
  ["polylithionite", 2.58, 2.82],
  ["trilithionite", 2.75, 2.9],
  ["lepidolite", 2.75, 2.9],
  ["petalite", 2.3, 2.42],
  ["lithium-carbonate", 2.09, 2.13],
  ["anhydrous-borax", 2.27, 2.4],
  ["boric-acid", 1.43, 1.52],
  ["boric-oxide", 1.8, 2.55],
  ["hydroboracite", 2.15, 2.19],
  ["probertite", 2.12, 2.15],
  ["tin-oxide", 6.8, 7.1],
  ["titanium-dioxide", 3.8, 4.3],
  ["rutile", 4.2, 4.3],
  ["zirconia", 5.4, 6.02],
  ["antimony-oxide", 5.2, 5.8],
  ["cerium-oxide", 7.1, 7.3],
  ["iron-sulphate", 1.88, 1.9],
  ["iron-chromate", 4.5, 5.1],
  ["cobalt-oxide", 6.4, 6.5],
  ["black-cobalt-oxide", 6, 6.12],
  ["cobalt-carbonate", 4, 4.2],
  ["copper-carbonate", 3.6, 4.05],
  ["azurite", 3.7, 3.9],
  ["simple-copper-carbonate", 3.6, 4.05],
  ["copper-oxide", 6.3, 6.5],
  ["red-copper-oxide", 5.9, 6.15],
  ["manganese-dioxide", 4.7, 5.1],
  ["manganese-carbonate", 3.1, 3.7],
  ["chrome-oxide", 5.1, 5.25],
  ["potassium-dichromate", 2.65, 2.7],
  ["nickel-oxide", 6.6, 6.85],
  ["black-nickel-oxide", 4.8, 6.7],
  ["nickel-carbonate", 3.7, 4.4],
  ["vanadium-pentoxide", 3.3, 3.4],
  ["ammonium-metavanadate", 2.3, 2.35],
  ["praseodymium-oxide", 6.5, 7.1],
  ["neodymium-oxide", 7.1, 7.3],
  ["erbium-oxide", 8.6, 8.7],
  ["molybdic-oxide", 4.6, 4.75],
  ["silver-nitrate", 4.3, 4.4],
  ["cadmium-sulphide", 4.7, 4.9],
  ["bismuth-subnitrate", 4.9, 5],
  ["litharge", 9.1, 9.7],
  ["red-lead", 8.2, 9.2],
  ["lead-monosilicate", 5.9, 6.6],
  ["lead-bisilicate", 4.4, 4.9],
  ["lead-sesquisilicate", 5, 5.9],
  ["ilmenite", 4.6, 4.8],
];

const clayRows: readonly Row[] = [
  ["kaolin-as-sold", 2.55, 2.68],
  ["ball-clay", 2.5, 2.68],
  ["fireclay", 2.5, 2.75],
  ["flint-clay", 2.5, 2.75],
  ["stoneware-clay", 2.5, 2.75],
  ["red-clay", 2.5, 2.85],
  ["potash-feldspar-as-sold", 2.54, 2.62],
  ["soda-feldspar-as-sold", 2.58, 2.66],
  ["mixed-feldspar", 2.54, 2.68],
  ["nepheline-syenite", 2.55, 2.66],
  ["cornish-stone", 2.55, 2.68],
];

const glassRows: readonly Row[] = [
  ["soda-lime-glass", 2.44, 2.56],
  ["alkali-frit", 2.35, 2.65],
  ["calcium-borosilicate-frit", 2.4, 2.75],
  ["alumina-borosilicate-frit", 2.35, 2.7],
  ["soft-borax-frit", 2.2, 2.65],
  ["lead-borosilicate-frit", 2.6, 3.6],
];

function tabulate(rows: readonly Row[], source: string, tag: Tag) {
  return rows.map(([id, low, high]): readonly [string, MineralDensity] => [
    idKey(id),
    { low, high, source, tag },
  ]);
}

/** By `idKey` of a carried material. */
export const mineralDensities: ReadonlyMap<string, MineralDensity> = new Map([
  ...tabulate(checkedRows, compared, "checked"),
  ...tabulate(rememberedRows, remembered, "from memory"),
  ...tabulate(clayRows, clayRange, "from memory"),
  ...tabulate(glassRows, glassRange, "from memory"),
]);
