/** A copy stand that listens, on a small archive of its own, until the test is over. */
import { onTestFinished, vi } from "vitest";
import { openCopyStand } from "../../src/commands/crop/crop.ts";
import { type Files, photograph, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { type AskServer, askServer, asPage } from "../support/ask-server.ts";
import { removeFolder } from "../support/remove-folder.ts";

export interface Stand {
  readonly archive: string;
  readonly port: number;
  /** Asks with these headers, besides those that the page sends. */
  readonly ask: AskServer;
}

/** Opens the copy stand of the small sound archive, with these files besides. */
export async function openStand(more: Files = {}, names: readonly string[] = []): Promise<Stand> {
  const archive = await writeFolder({
    ...(await soundFiles()),
    "tiles/evening/EV-2.jpg": await photograph("#4b4644", 800, 600),
    ...more,
  });
  const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
  const stand = await openCopyStand(names, { archive });
  if (!stand) throw new Error("The archive has errors.");
  onTestFinished(async () => {
    await stand.close();
    await removeFolder(archive);
    said.mockRestore();
  });
  const port = await stand.server.listen(0);
  const page = await askServer(port, "GET", "/", {});
  return { archive, port, ask: asPage(port, page) };
}
