/** Small catalogues of mixed glazes. */
import type { Findings } from "../../../src/catalogue/findings.ts";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import type { Catalogue } from "../../../src/catalogue/types.ts";
import { chemistryOfGlazes } from "../../../src/chemistry/glazes.ts";
import { carriedMaterials } from "../../../src/chemistry/minerals/minerals.ts";
import type { Archive } from "../../../src/records/archive.ts";
import type { GlazeRecord } from "../../../src/records/glaze.ts";
import { archive, cones, glaze } from "../../checks/support.ts";

/** The catalogue of an archive, each tile with a result photographed. */
export function catalogueOf(parts: Parameters<typeof archive>[0]): Catalogue {
  const made: Archive = archive(parts);
  const findings: Findings = {
    pictures: new Map([...made.tiles.values()].map(({ id }) => [`tiles/${id}.jpg`, picture])),
    chemistry: chemistryOfGlazes(made),
    heats: new Map(),
    notes: new Map(),
    builtInMaterials: carriedMaterials,
  };
  return makeCatalogue(made, findings);
}

const picture = {
  width: 900,
  height: 1200,
  placeholder: "#888888",
  files: [{ url: "pictures/a-320.jpg", format: "jpeg", width: 320, height: 427 }],
  colour: null,
} as const;

export const parts = (of: Readonly<Record<string, number>>) =>
  Object.entries(of).map(([id, n]) => ({ material: id, parts: n }));

export const mixed = (
  id: string,
  of: Readonly<Record<string, number>>,
  about: Partial<GlazeRecord> = {},
) => glaze(id, { ingredients: parts(of), cones: cones("5-6"), ...about });

export const blend = (
  id: string,
  of: Readonly<Record<string, number>>,
  about: Partial<GlazeRecord> = {},
) => glaze(id, { blend: Object.entries(of).map(([g, n]) => ({ glaze: g, parts: n })), ...about });

// worked-recipes.csv, base-100 (derived): 40, 30, 20 and 10 of the theoretical materials.
export const clear = mixed("clear", { "potash-feldspar": 40, silica: 30, whiting: 20, kaolin: 10 });
