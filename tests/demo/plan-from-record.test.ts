import { beforeAll, describe, expect, it } from "vitest";
import { readArchive } from "../../src/archive/read-archive.ts";
import { planTile } from "../../src/demo/plan-from-record.ts";
import type { CoatStep, TilePlan } from "../../src/demo/tile-plan.ts";
import { type Archive, findById } from "../../src/records/archive.ts";
import { project } from "../house/files.ts";

let archive: Archive;

beforeAll(async () => {
  const read = await readArchive(project, { builtInMaterials: [] });
  if (!read.archive) throw new Error("The demo's studio.yaml cannot be read.");
  archive = read.archive;
});

function plan(code: string, firings?: number): TilePlan {
  const tile = findById(archive.tiles, code);
  if (!tile) throw new Error(`The demo has no tile ${code}.`);
  return planTile(archive, tile, firings);
}

function coatsOf({ steps }: TilePlan): CoatStep[] {
  return steps.filter((step) => step.does === "coat");
}

describe("a plan made from a demo tile's record", () => {
  it("can be made for every tile, so that every glaze has an appearance", () => {
    const plans = [...archive.tiles.values()].map((tile) => planTile(archive, tile));
    expect(plans).toHaveLength(archive.tiles.size);
  });

  it("finds the glaze behind a jar's number, and the set's clay", () => {
    const { clay } = plan("EV-110");
    expect(coatsOf(plan("EV-110"))[0]?.glaze.id).toBe("mussel");
    expect(clay).toEqual(plan("EV-109").clay);
  });

  it("looks otherwise where the kiln came down slowly", () => {
    const [quick, slow] = [coatsOf(plan("FS-03"))[0], coatsOf(plan("FS-04"))[0]];
    expect(quick?.glaze.id).toBe(slow?.glaze.id);
    expect(quick?.glaze.thick).not.toBe(slow?.glaze.thick);
  });

  it("looks otherwise in reduction, clay and glaze", () => {
    expect(plan("BL-03").clay.bare).not.toBe(plan("BL-04").clay.bare);
    const reds = ["BL-03", "BL-04"].map((code) => coatsOf(plan(code))[0]?.glaze.thick);
    expect(reds[0]).not.toBe(reds[1]);
  });

  it("ends with the first glaze firing where the picture is of that", () => {
    expect(plan("CT-04", 1).faults).toContain("underfired");
    expect(plan("CT-04").faults).not.toContain("underfired");
  });

  it("names what the maker says the motif is", () => {
    expect(plan("TH-201").motif).toBe("crow");
    expect(plan("EV-122").motif).toBe("reed");
  });
});
