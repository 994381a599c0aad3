/** What the demonstration's records say of runs agrees with how its tiles are made. */
import { beforeAll, expect, it } from "vitest";
import { readArchive } from "../../src/archive/read-archive.ts";
import type { Archive } from "../../src/records/archive.ts";
import { project } from "../house/files.ts";

/** Millimetres from the glaze's lower edge to the shelf, by shape, as the tiles of the demonstration are made. */
const TO_THE_SHELF: Readonly<Record<string, number>> = {
  flat: 10,
  upright: 10,
  ring: 10,
  pot: 10,
  "l-shape": 20,
  channel: 64,
};

let archive: Archive;

beforeAll(async () => {
  const read = await readArchive(project, { builtInMaterials: [] });
  if (!read.archive) throw new Error("The demo's studio.yaml cannot be read.");
  archive = read.archive;
});

it("marks a tile as running where its glaze ran as far as the shelf", () => {
  const silent = [...archive.tiles.values()].filter(({ record: { result = [], shape } }) =>
    result.some(
      ({ run = 0, faults }) =>
        run >= (TO_THE_SHELF[shape ?? "flat"] ?? 0) && !faults?.includes("running"),
    ),
  );
  expect(silent.map(({ id }) => id)).toEqual([]);
});
