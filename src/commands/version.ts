/** Which Tilebook this is. */
import { readOwnPackage } from "../compiled/own-files.ts";

/** The version, as the program's own package says. */
export function ownVersion(): string {
  return readOwnPackage().version;
}
