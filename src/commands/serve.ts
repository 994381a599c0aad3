/** `tilebook serve`: builds the site, shows it on this computer, builds again when a file changes. */
import type { Trouble } from "../../templates/serve/trouble.ts";
import { readServeAssets } from "../publish/assets.ts";
import { siteServer } from "../publish/site-server.tsx";
import { tellMessage } from "../reporting/located-problem.ts";
import { type BuildOptions, type Built, buildSite } from "./build.ts";
import { describeFailure, exitCodes, tellFailure } from "./failure.ts";
import { siteFolderOf } from "./folders.ts";
import { untilListening, untilStopped } from "./listening.ts";
import { watchArchive } from "./watch-archive.ts";

export interface ServeOptions extends BuildOptions {
  readonly port: number;
}

/**
 * Serves until the process is told to stop. A fault in the archive leaves the last good site up, and
 * is shown on its pages; where there is no site yet, it is shown in its place.
 */
export async function serve(options: ServeOptions): Promise<number> {
  const folder = siteFolderOf(options);
  const server = siteServer(folder, { assets: await readServeAssets(), failed: tellFailure });
  await untilListening(server.listen(options.port), options.port);
  const stopped = untilStopped();
  let trouble: Trouble | null = null;
  const buildAndShow = async () => {
    const { shown, address } = await tryToBuild(options);
    trouble = shown;
    server.reload({ trouble, under: pathOf(address) });
  };
  const first = buildAndShow();
  const stopWatching = watchArchive(options.archive, () => first.then(buildAndShow), tellUnwatched);
  await first;
  console.error(`The catalogue is at http://localhost:${options.port}/ (stop with Ctrl-C).`);
  if (trouble) console.error("Mend the faults above: it is built again when you save.");
  await stopped;
  stopWatching();
  server.close();
  return exitCodes.done;
}

interface Tried {
  readonly shown: Trouble | null;
  readonly address: string | null;
}

/** Builds, and tells what kept the site from being built: in the window, and on the pages. */
async function tryToBuild(options: ServeOptions): Promise<Tried> {
  try {
    const { faults, address } = await buildSite(options);
    return { shown: faults.length > 0 ? tellFaults(faults) : null, address };
  } catch (error) {
    tellFailure(error);
    return { shown: { kind: "failed", words: describeFailure(error) }, address: null };
  }
}

function tellFaults(faults: Built["faults"]): Trouble {
  return {
    kind: "faults",
    faults: faults.map(({ file, line, hint, lineText, ...fault }) => {
      return {
        file,
        line,
        message: tellMessage({ file, line, hint, lineText, ...fault }),
        hint,
        lineText,
      };
    }),
  };
}

function pathOf(address: string | null): string {
  if (address === null) return "/";
  return new URL(address).pathname.replace(/\/*$/u, "/");
}

function tellUnwatched(path: string, error: unknown): void {
  console.error(
    `${path} is not watched any more, so what you save there is not shown: stop this command and start it again. ${describeFailure(error)}`,
  );
}
