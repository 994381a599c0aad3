/** A desk that listens, on a small archive of its own, until the test is over. */
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { openDesk } from "../../src/commands/serve/desk.ts";
import type { DeskPage } from "../../src/desk/page.ts";
import { siteServer } from "../../src/publish/site-server.tsx";
import { type Files, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { type AskServer, askServer, asPage } from "../support/ask-server.ts";
import { removeFolder } from "../support/remove-folder.ts";

export interface OpenedDesk {
  readonly archive: string;
  readonly port: number;
  readonly ask: AskServer;
  /** Says that the archive was changed, as the watching of its folders does. */
  readonly changed: () => void;
  /** What failed and should not have. */
  readonly failures: readonly unknown[];
}

/**
 * Opens the desk of the small sound archive, beside a site that is not built.
 *
 * @param more files besides
 * @param pages all of the desk's where they are left out
 */
export async function openSmallDesk(
  more: Files = {},
  pages?: readonly DeskPage[],
): Promise<OpenedDesk> {
  const archive = await writeFolder({ ...(await soundFiles()), ...more });
  const { desk, changed, close } = await openDesk(archive, pages);
  const failures: unknown[] = [];
  const server = siteServer(join(archive, "no-site"), {
    assets: new Map(),
    desk,
    failed: (error) => failures.push(error),
  });
  onTestFinished(async () => {
    server.close();
    await close();
    await removeFolder(archive);
  });
  const port = await server.listen(0);
  const ask = asPage(port, await askServer(port, "GET", "/desk/", {}));
  return { archive, port, ask, changed, failures };
}
