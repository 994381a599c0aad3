import { findMaterialOf } from "../../chemistry/from-records.ts";
import type { Archive } from "../../records/archive.ts";
import type { ArchiveRule, Finding } from "../check.ts";

export const typicalAnalysis: ArchiveRule = {
  of: "archive",
  name: "typical-analysis",
  severity: "warning",
  explains:
    "Recipes are worked out from the supplier's own analysis, not from a typical one; told once for the whole archive.",
  find: (archive) => {
    const uses = findTypical(archive);
    const [first] = uses.values();
    if (!first) return [];
    const names = [...uses.values()].map(({ name }) => name);
    const records = [...uses.keys()].map((id) => `recipes/materials/${id}.md`);
    return [
      {
        file: first.file,
        path: first.path,
        message: `Worked out from a typical analysis, not that of your bag: ${names.join(", ")}`,
        hint: `The chemistry of these glazes says so. Where you have the supplier's figures, write them into ${records.join(", ")} with “name:” and “analysis:”.`,
      },
    ];
  },
};

interface Use {
  readonly file: string;
  readonly path: Finding["path"];
  readonly name: string;
}

/** The first use of each, by the material's id. */
function findTypical(archive: Archive): ReadonlyMap<string, Use> {
  const findMaterial = findMaterialOf(archive);
  const uses = new Map<string, Use>();
  for (const { written, ...place } of namedMaterials(archive)) {
    const found = findMaterial(written);
    if (!found.ok || found.material.basis !== "typical") continue;
    const { id, name } = found.material;
    if (!uses.has(id)) uses.set(id, { ...place, name });
  }
  return uses;
}

function namedMaterials({ glazes }: Archive) {
  return [...glazes.values()].flatMap(({ file, record }) =>
    (["ingredients", "additions"] as const).flatMap((field) =>
      (record[field] ?? []).map(({ material: written }, i) => ({
        file,
        path: [field, i, "material"],
        written,
      })),
    ),
  );
}
