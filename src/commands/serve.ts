/** `tilebook serve`: builds the site, shows it on this computer, builds again when a file changes. */
import { type FSWatcher, watch } from "node:fs";
import { join } from "node:path";
import { siteServer } from "../publish/site-server.ts";
import { type BuildOptions, build } from "./build.ts";
import { exitCodes, tellFailure } from "./failure.ts";
import { siteFolderOf } from "./folders.ts";
import { untilListening, untilStopped } from "./listening.ts";

export interface ServeOptions extends BuildOptions {
  readonly port: number;
}

/** Serves until the process is told to stop. A fault in the archive leaves the last good site up. */
export async function serve(options: ServeOptions): Promise<number> {
  const first = await build(options);
  const folder = siteFolderOf(options);
  const server = siteServer(folder);
  await untilListening(server.listen(options.port), options.port);
  const stopped = untilStopped();
  console.error(`The catalogue stands at http://localhost:${options.port}/ (stop with Ctrl-C).`);
  if (first !== exitCodes.done)
    console.error("Mend the faults above: it is built again when you save.");
  const watchers = watchArchive(options.archive, async () => {
    await build(options).catch(tellFailure);
    server.reload();
  });
  await stopped;
  for (const watcher of watchers) watcher.close();
  server.close();
  return exitCodes.done;
}

const quietMs = 150;

/** Calls back once for a burst of changes, and never while the last call still runs. */
function watchArchive(archive: string, changed: () => Promise<void>): FSWatcher[] {
  let timer: NodeJS.Timeout | undefined;
  let running = Promise.resolve();
  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      running = running.then(changed);
    }, quietMs);
  };
  return ["tiles", "recipes", "studio.yaml"].flatMap((name) => {
    try {
      return [watch(join(archive, name), { recursive: true }, soon)];
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
      throw error;
    }
  });
}
