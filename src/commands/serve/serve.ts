/** `tilebook serve`: builds the site, shows it on this computer, builds again when a file changes. */
import { removeLeftTrays } from "../../desk/photographs/tray.ts";
import { tellDoor } from "../../desk/tablet/words.ts";
import { readSiteAssets } from "../../publish/assets.ts";
import type { BuildOptions } from "../build/build.ts";
import { describeFailure, exitCodes } from "../failure.ts";
import { siteFolderOf } from "../folders.ts";
import { keepShowing } from "./keep-showing.ts";
import { latestAlone } from "./latest-alone.ts";
import { untilStopped } from "./listening.ts";
import { openServers } from "./open-servers.ts";
import { watchArchive } from "./watch-archive.ts";

export interface ServeOptions extends BuildOptions {
  readonly port: number;
  /** Whether a tablet of the local network may come in by a code. */
  readonly tablet?: boolean;
}

/**
 * Serves until the process is told to stop. A fault in the archive leaves the last good site up, and
 * is shown on its pages; where there is no site yet, it is shown in its place.
 */
export async function serve(options: ServeOptions): Promise<number> {
  const site = siteFolderOf(options);
  const { server, deskChanged, closeDesk, door } = await openServers({
    tablet: false,
    ...options,
    site,
  });
  void removeLeftTrays();
  const stopped = untilStopped();
  const rounds = latestAlone();
  const showing = keepShowing(options, {
    server,
    assets: await readSiteAssets(),
    isStale: () => watching.isUntold() || rounds.isAwaited(),
  });
  const again = async () => void (await showing.again());
  const changed = () => {
    deskChanged();
    rounds.next(again);
  };
  const watching = watchArchive(options.archive, changed, tellUnwatched);
  rounds.next(async () => {
    const isWell = await showing.again();
    console.error(`The catalogue is at http://localhost:${options.port}/ (stop with Ctrl-C).`);
    console.error(`The desk, for the teacher alone, is at http://localhost:${options.port}/desk/.`);
    if (door) for (const words of tellDoor(door)) console.error(words);
    if (!isWell) console.error("Mend the faults above: it is built again when you save.");
  });
  await stopped;
  watching.end();
  server.close();
  await closeDesk();
  return exitCodes.done;
}

function tellUnwatched(path: string, error: unknown): void {
  console.error(
    `${path} is not watched any more, so what you save there is not shown: stop this command and start it again. ${describeFailure(error)}`,
  );
}
