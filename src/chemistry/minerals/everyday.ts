/**
 * Everyday materials beside the reference table. Each formula was compared with a published
 * description of the mineral.
 */
import { ofRole, type TheoreticalMaterial } from "./mineral.ts";

function from(
  source: string,
  materials: readonly TheoreticalMaterial[],
): readonly TheoreticalMaterial[] {
  return materials.map((material) => ({ ...material, source }));
}

const webmineral = "formula from Webmineral, computed with the CIAAW 2021 atomic weights";
const handbook =
  "formula from the Handbook of Mineralogy (Mineral Data Publishing, 2001-2005), computed with the CIAAW 2021 atomic weights";
const britannica =
  "formula from Encyclopaedia Britannica, computed with the CIAAW 2021 atomic weights";

export const everyday = [
  ...from(webmineral, [
    ...ofRole("flux", [
      ["talc", "Talc", "", "Mg3Si4O10(OH)2", "ask for an assay: some deposits hold asbestos"],
    ]),
    ...ofRole("borate", [["borax", "Borax", "", "Na2B4O5(OH)4·8H2O", "dissolves in the slop"]]),
  ]),
  ...from(handbook, [
    ...ofRole("borate", [["ulexite", "Ulexite", "", "NaCaB5O6(OH)6·5H2O"]]),
    ...ofRole("lithium", [["petalite", "Petalite", "", "LiAlSi4O10"]]),
  ]),
  ...from(britannica, ofRole("colourant", [["ilmenite", "Ilmenite", "", "FeTiO3"]])),
  ...ofRole("colourant", [
    ["black-iron-oxide", "Black iron oxide", "magnetite", "Fe3O4", "gains weight as it oxidises"],
    ["black-cobalt-oxide", "Cobalt oxide, black", "cobalt(II,III) oxide", "Co3O4"],
  ]),
];
