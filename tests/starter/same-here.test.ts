/** What this repository and a new archive share is the same in both. `npm test -- tests/starter -u` writes it anew. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { listFiles, project } from "../house/files.ts";
import { read } from "./workflow-files.ts";

const shared = listFiles("src/starter").filter((file) =>
  /^src\/starter\/git(hub|lab)\//u.test(file),
);

/** A checkout starts Tilebook otherwise than a package that was installed. */
const asTypedHere = (text: string) =>
  text.replaceAll("npx tilebook", "npm run --silent tilebook --");

test("each file for a forge is here as it is in a new archive, but for how Tilebook is started", async () => {
  expect(shared.length).toBeGreaterThan(5);
  for (const file of shared)
    await expect(asTypedHere(read(file))).toMatchFileSnapshot(
      join(project, file.replace("src/starter/", ".")),
    );
});

const ownPart = "\n# The program itself.\n";

test("so is the one file of the forge that has one for all, which also tests the program here", async () => {
  const own = existsSync(join(project, ".gitlab-ci.yml"))
    ? read(".gitlab-ci.yml").split(ownPart)[1]
    : undefined;
  expect(own).toMatch(/\.ci\/run/u);
  await expect(asTypedHere(read("src/starter/gitlab-ci.yml")) + ownPart + own).toMatchFileSnapshot(
    join(project, ".gitlab-ci.yml"),
  );
});
