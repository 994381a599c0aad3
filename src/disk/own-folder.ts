/** The folder where programs keep what they can do without, out of the reach of archives and sites. */
import os from "node:os";
import path from "node:path";

/** Tilebook's folder there. It need not exist, and may be one that cannot be written. */
export function ownFolder(): string {
  const home = os.homedir();
  const { XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  if (process.platform === "win32")
    return path.join(LOCALAPPDATA || path.join(home, "AppData", "Local"), "tilebook");
  const caches = process.platform === "darwin" ? "Library/Caches" : ".cache";
  return path.join(XDG_CACHE_HOME || path.join(home, caches), "tilebook");
}
