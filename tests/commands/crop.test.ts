/** `tilebook crop` as a command: what it says, how it stops, and that it writes nothing by itself. */
import { rm } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";
import { expect, test } from "vitest";
import { archiveWith } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { spawnTilebook, tilebook } from "./tilebook.ts";

/** Below the ports that systems hand out by themselves, which other tests may have. */
const port = 25_000 + (process.pid % 6_000);

test("tells where it is, and stops when it is told to, with nothing written", async () => {
  const archive = await archiveWith({ "tiles/evening/EV-9.md": "---\nlayers: []\n---\n" });
  const records = async () =>
    Object.entries(await sumsOf(archive)).filter(([file]) => !file.startsWith(".cache"));
  const before = await records();
  const { code, out, err } = await spawnTilebook(
    ["crop", "evening", "--archive", archive, "--port", String(port)],
    { onSaid: (said, child) => said.includes("Nothing is written") && child.kill("SIGINT") },
  );
  expect({ code, out }).toEqual({ code: 0, out: "" });
  expect(err.trim().split("\n")).toEqual([
    `One tile is left out, for there are errors: “npm run --silent tilebook -- check --archive ${archive}” tells them.`,
    `The copy stand is at http://localhost:${port}/ (stop with Ctrl-C).`,
    "Nothing is written unless you ask for it there.",
  ]);
  expect(await records()).toEqual(before);
});

test("says that its port is taken", async () => {
  const archive = await archiveWith({});
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(port + 1, "localhost", resolve));
  const { code, err } = await tilebook(
    ...["crop", "--archive", archive, "--port", String(port + 1)],
  );
  other.close();
  expect(code).toBe(2);
  expect(err).toBe(
    `Port ${port + 1} is taken by another program. Name another with --port, such as --port ${port + 2}.`,
  );
});

test("tells what is wrong with what was named, and shows nothing", async () => {
  const archive = await archiveWith({ "tiles/evening/EV-9.md": "---\nlayers: []\n---\n" });
  const faulty = await tilebook("crop", "EV-9", "--archive", archive);
  expect(faulty.code).toBe(1);
  expect(faulty.err).toContain("tiles/evening/EV-9.md:2:9 error: “layers” is an empty list");
  const unknown = await tilebook("crop", "EV-7", "--archive", archive);
  expect(unknown.code).toBe(2);
  expect(unknown.err).toMatch(/^There is no set or tile “EV-7” in this archive/u);
});

test("says that there is nothing to look at before a result was photographed", async () => {
  const archive = await archiveWith({});
  for (const file of ["evening/EV-1.jpg", "evening/EV-2.jpg", "hidden/HID-1.jpg"])
    await rm(join(archive, "tiles", file));
  const { code, err } = await tilebook("crop", "--archive", archive);
  expect({ code, err }).toEqual({ code: 2, err: "There is no photograph of a result yet." });
});
