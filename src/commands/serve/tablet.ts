/** The door that `serve --tablet` opens in the local network, beside the one on this computer. */
import { codePage } from "../../desk/tablet/code-page.tsx";
import type { TabletDoor } from "../../desk/tablet/tablet.ts";
import { tellChanged } from "../../desk/tablet/words.ts";
import { guestPass } from "../../local-server/guest-pass.ts";
import { guestServer } from "../../local-server/guest-server.ts";
import type { LocalServer, LocalWork } from "../../local-server/local-server.ts";
import { readDeskAssets } from "../../publish/assets.ts";
import { WrongUsage } from "../failure.ts";

export interface TabletPlace {
  readonly door: TabletDoor;
  /** Its addresses as numbers. */
  readonly hosts: readonly string[];
  readonly port: number;
}

/**
 * Where a tablet may come in: at the port behind the one on this computer.
 *
 * @param port the one on this computer
 * @param hosts its addresses in local networks
 * @throws WrongUsage where this computer is in no local network
 */
export function tabletPlace(port: number, hosts: readonly string[]): TabletPlace {
  if (hosts.length === 0)
    throw new WrongUsage(
      "This computer is in no local network, so no tablet can reach it. Join the network that the tablet is in, and start again. An address that the whole internet can reach is never used.",
    );
  const next = port < 65_535 ? port + 1 : port - 1;
  const addresses = hosts.map((host) => `http://${host}:${next}/`);
  return { door: { addresses, pass: guestPass(Date.now) }, hosts, port: next };
}

/**
 * The server at that place, which does not listen yet.
 *
 * @param work the site and the tablet's own desk
 * @param token of that desk
 */
export async function tabletServer(
  { door, hosts }: Pick<TabletPlace, "door" | "hosts">,
  work: LocalWork,
  token: string,
): Promise<LocalServer> {
  const styles = (await readDeskAssets()).get("let-in.css") ?? new Uint8Array();
  return guestServer(work, {
    ...{ pass: door.pass, addresses: hosts, token, home: "/desk/" },
    codePage: codePage(new TextDecoder().decode(styles)),
    changed(state, device) {
      const words = tellChanged(state, device);
      if (words !== undefined) console.error(words);
    },
  });
}
