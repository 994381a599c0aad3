/** The demonstration's logged firings, each of which was written to show one thing. */
import { beforeAll, describe, expect, it } from "vitest";
import { readArchive } from "../../src/archive/read-archive.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import type { FiringHeat } from "../../src/firing/of-record.ts";
import { project } from "../house/files.ts";

let heats: ReadonlyMap<string, FiringHeat>;

beforeAll(async () => {
  const { archive } = await readArchive(project, { builtInMaterials: [] });
  heats = archive ? heatOfFirings(archive) : new Map();
});

describe("the demonstration", () => {
  it.each([
    ["g-250928", "a good firing", "agrees", []],
    ["g-251012", "a dead element at the bottom", "differs", ["uneven"]],
    ["g-251116", "06 where 6 was meant", "differs", ["double-fired"]],
    ["g-260308", "a good firing by hand, in a gas kiln", "agrees", []],
    [
      "g-260517",
      "a thermocouple that read low",
      "differs",
      ["thermocouple-drifted", "cones-misread"],
    ],
  ])("%s is read as its author meant it: %s", (id, _, agreement, readings) => {
    const { story, heatFrom } = heats.get(id) as FiringHeat;
    expect(heatFrom).toBe("log");
    expect(story.agreement).toBe(agreement);
    expect(story.readings.map(({ code }) => code)).toEqual(readings);
  });

  it("has no other firing whose accounts differ", () => {
    const differ = [...heats].filter(([, { story }]) => story.agreement === "differs");
    expect(differ.map(([id]) => id)).toEqual(["g-251012", "g-251116", "g-260517"]);
  });

  it("has schedules that a kiln can follow, and logs that can be read", () => {
    for (const { schedule, log } of heats.values()) {
      expect(schedule?.faults ?? []).toEqual([]);
      expect((log?.notes ?? []).filter(({ severity }) => severity === "error")).toEqual([]);
    }
  });
});
