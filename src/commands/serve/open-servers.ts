/** Where `serve` listens: on this computer alone, and where a tablet is asked for, in the local network too. */
import { networkInterfaces } from "node:os";
import type { TabletDoor } from "../../desk/tablet/tablet.ts";
import { localAddresses } from "../../local-server/local-addresses.ts";
import { readServeAssets } from "../../publish/assets.ts";
import { type SiteServer, siteServer } from "../../publish/site-server.tsx";
import { tellFailure } from "../failure.ts";
import { openDesk } from "./desk.ts";
import { untilListening } from "./listening.ts";
import { type TabletPlace, tabletPlace, tabletServer } from "./tablet.ts";

export interface ServersNeed {
  readonly archive: string;
  /** The folder of the site. */
  readonly site: string;
  readonly port: number;
  /** Whether a tablet of the local network may come in by a code. */
  readonly tablet: boolean;
}

export interface ServersOpened {
  /** Ends both. */
  readonly server: SiteServer;
  /** Something in the archive was changed. */
  readonly deskChanged: () => void;
  /** Removes the photographs that wait at the desk to be named. */
  readonly closeDesk: () => Promise<void>;
  /** The door for a tablet; undefined where none is asked for. */
  readonly door: TabletDoor | undefined;
}

/**
 * @param hosts the addresses at which a tablet is awaited
 * @throws WrongUsage where a port is taken, or no tablet could reach this computer
 */
export async function openServers(
  { archive, site, port, tablet }: ServersNeed,
  hosts: readonly string[] = localAddresses(networkInterfaces()),
): Promise<ServersOpened> {
  const place = tablet ? tabletPlace(port, hosts) : undefined;
  const { desk, onTablet, changed, close } = await openDesk(archive, undefined, place?.door);
  const assets = await readServeAssets();
  const server = siteServer(site, { assets, desk, failed: tellFailure });
  await untilListening(server.listen(port), port);
  const opened = { server, deskChanged: changed, closeDesk: close, door: place?.door };
  return place ? { ...opened, server: await besideTablet(server, place, onTablet()) } : opened;
}

/** Both as one, or neither. */
async function besideTablet(
  server: SiteServer,
  place: TabletPlace,
  desk: Parameters<SiteServer["workBeside"]>[0],
): Promise<SiteServer> {
  const guest = await tabletServer(place, server.workBeside(desk), desk.token);
  const close = () => {
    guest.close();
    server.close();
  };
  try {
    await untilListening(guest.listen(place.port), place.port);
    return { ...server, close };
  } catch (error) {
    close();
    throw error;
  }
}
