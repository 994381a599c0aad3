import { analyseMaterial } from "../../chemistry/materials.ts";
import type { Note } from "../../chemistry/notes.ts";
import type { Filed } from "../../records/archive.ts";
import type { MaterialRecord } from "../../records/material.ts";
import type { Finding, MaterialRule } from "../check.ts";

export const analysisDoubtful: MaterialRule = {
  of: "material",
  name: "analysis-doubtful",
  severity: "warning",
  explains: "The analysis of a material adds to about 100 with its loss, and leaves nothing out.",
  find: (_, material) => {
    const { id, record } = material;
    if (record.formula === undefined && record.analysis === undefined) return [];
    const found = analyseMaterial({ id, ...record });
    if (!found.ok) return [];
    const { notes, analysis } = found.material;
    return notes
      .filter(({ code }) => code !== "loss-taken-as-rest" || analysis.loss > slightLoss)
      .flatMap((note) => toFinding(note, material));
  },
};

/** Per cent left open that are no more than rounding. */
const slightLoss = 1;

/** What to do about each note that is worth a potter's while. */
const hints: Partial<Readonly<Record<Note["code"], string>>> = {
  "analysis-sum":
    "Compare it with the supplier's sheet: a line may be missing, be written twice, or hold a slipped point.",
  "charges-do-not-balance": "Compare it with the supplier's sheet.",
  "loss-taken-as-rest":
    "Write “loss:” as the sheet gives it; where it gives none, look whether a line is missing.",
  "oxide-not-counted":
    "Nothing is worked out from it. What its sheet warns of belongs under “cautions:”.",
};

function toFinding({ code, message }: Note, material: Filed<MaterialRecord>): readonly Finding[] {
  const hint = hints[code];
  if (hint === undefined) return [];
  return [{ path: placeOf(material), message: `${material.record.name}: ${message}`, hint }];
}

function placeOf({ record }: Filed<MaterialRecord>): Finding["path"] {
  return [record.formula === undefined ? "analysis" : "formula"];
}
