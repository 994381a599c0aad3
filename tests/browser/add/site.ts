/** What the form may know of a small site. */
import type { FormSite } from "../../../src/publish/add-file.ts";

export const eveningSite: FormSite = {
  studio: "Eelgate Pottery",
  sets: [
    {
      id: "evening",
      name: "Evening",
      jars: [
        ["1", "chalk"],
        ["2", "soot"],
      ],
      codes: ["EV-101..EV-106"],
      control: "EV-106",
      gives: { clay: "buff", maker: true },
    },
    { id: "thursday", name: "Thursday", jars: [], codes: ["TH-201..TH-203"], gives: {} },
  ],
  glazes: [
    {
      id: "chalk",
      name: "Chalk",
      url: "glazes/chalk.html",
      kind: "glaze",
      tone: "light",
      cover: "opaque",
    },
    {
      id: "old-soot",
      name: "Old Soot",
      url: "glazes/old-soot.html",
      kind: "glaze",
      stocked: false,
    },
    {
      id: "soot",
      name: "Soot",
      url: "glazes/soot.html",
      kind: "glaze",
      tone: "dark",
      moves: "runs",
    },
  ],
  clays: [{ id: "buff", name: "Levels Buff", cones: "5–6" }],
  firings: [{ id: "b-1", kind: "bisque", cone: "06" as never, on: "2026-10-01" }],
  taken: ["EV-101..EV-102", "TB-014"],
  handingIn: { by: "download" },
  layerFiles: 1,
};
