/** The door through which one tablet of the local network comes to the desk. */
import type { GuestPass } from "../../local-server/guest-pass.ts";

export interface TabletDoor {
  /** What is typed on the tablet: `http://192.168.1.20:8081/`. */
  readonly addresses: readonly string[];
  readonly pass: GuestPass;
}

/** Where else a desk is shown: it has a door for a tablet, or it is the one that the tablet shows. */
export type Elsewhere = TabletDoor | "on the tablet";

/** Where the desk's first page asks for a new code; the tablet's desk has no such address. */
export const newCodeAddress = "/desk/tablet/new-code";
